import type { Practised } from '../../core/dictation/home-practice.ts';
import { canRead } from '../../core/learners/can-read.ts';
import type { Child } from '../../core/log/class-state.ts';
import { knowledge, modelDay } from './knowledge.ts';
import { cellsOf, placeOfChild } from './of-child.ts';
import { thresholds } from './thresholds.ts';

/** What a child can practise at home: only what it reads rightly, what is growing in most of it. */
export function practisedBy(child: Child): Practised {
  const cells = cellsOf(child, 'read').taught;
  const growing = cells.filter(({ word }) => word === 'growing').map(({ card }) => card);
  const { taught: all } = placeOfChild(child);
  const { read } = knowledge.value;
  const alone = canRead(all, read, child.id, modelDay(), thresholds.value.secure);
  return {
    cards: growing,
    alone,
    together: { ...alone, irregularWords: all.irregularWords },
    newest: growing
      .filter((id) => alone.correspondences.has(id))
      .map((id) => ({ kind: 'card', id })),
  };
}

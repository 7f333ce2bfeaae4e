import type { Practiced } from '../../core/dictation/home-practice.ts';
import { missedLatelyOf } from '../../core/facts/missed-lately.ts';
import { placeFacts } from '../../core/facts/place-facts.ts';
import { type CardId, makeSightId } from '../../core/language/card-id.ts';
import type { Taught } from '../../core/language/taught.ts';
import { canRead } from '../../core/learners/can-read.ts';
import type { Child } from '../../core/log/class-state.ts';
import { knowledge, modelDay } from './knowledge.ts';
import { cellsOf, neediestFirst, placeOfChild } from './of-child.ts';
import { thresholds } from './thresholds.ts';

/**
 * What a child can practice at home: what was missed lately and what is growing, the neediest first,
 * and words of what it reads correctly, with nothing in them that was missed lately. Words are made of
 * cards and habits that the child has been seen to read, or also of those that it is expected to.
 */
export function practicedBy(child: Child, made: 'seen' | 'expected' = 'expected'): Practiced {
  const cells = cellsOf(child, 'read').taught;
  const missed = missedLatelyOf(cells);
  const wanted = neediestFirst(cells).filter(({ word }) => word !== 'secure');
  const growing = wanted.filter(({ word }) => word === 'growing').map(({ card }) => card);
  const { taught: all } = placeOfChild(child);
  const { read } = knowledge.value;
  const seen = new Set(cells.filter(({ word }) => word !== 'not yet seen').map(({ card }) => card));
  const habits = new Set(placeFacts(cells).flatMap(({ of, right }) => (right > 0 ? of : [])));
  const known = canRead(all, read, child.id, modelDay(), thresholds.value.secure);
  const isGiven = (card: CardId) =>
    (made === 'expected' || seen.has(card)) && !missed.cards.includes(card);
  const alone: Taught = {
    correspondences: new Set([...known.correspondences].filter(isGiven)),
    irregularWords: new Set([...known.irregularWords].filter((word) => isGiven(makeSightId(word)))),
    habits: new Set(
      [...known.habits].filter(
        (habit) => (made === 'expected' || habits.has(habit)) && !missed.habits.has(habit),
      ),
    ),
  };
  return {
    cards: wanted.map(({ card }) => card),
    alone,
    together: { ...alone, irregularWords: all.irregularWords },
    newest: growing
      .filter((id) => alone.correspondences.has(id))
      .map((id) => ({ kind: 'card', id })),
    avoid: missed.cards,
  };
}

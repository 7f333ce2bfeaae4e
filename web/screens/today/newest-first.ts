import type { CardId } from '../../../core/language/card-id.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';

/** Card ids, those taught last first; what no step teaches goes last. */
export function newestFirst(ids: readonly CardId[], sequence: Sequence): readonly CardId[] {
  const step = (id: CardId) => stepOf(sequence, { kind: 'card', id }) ?? 0;
  return ids.toSorted((left, right) => step(right) - step(left));
}

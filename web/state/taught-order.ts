import type { CardId } from '../../core/language/card-id.ts';
import { itemOfCard } from '../../core/sequence/item.ts';
import type { Progress } from '../../core/sequence/progress.ts';
import { stepOf } from '../../core/sequence/step-of.ts';

/** Cards in the order in which they are taught; what no step teaches goes first. */
export function inOrder(
  ids: Iterable<CardId>,
  { sequence }: Pick<Progress, 'sequence'>,
): readonly CardId[] {
  const step = (id: CardId) => stepOf(sequence, itemOfCard(id)) ?? 0;
  return [...ids].sort((one, other) => step(one) - step(other));
}

import { cardsInPiles } from '../boards/shapes/board.ts';
import type { Moment } from './moments.ts';

/**
 * The order in which the first flip still to come that differs from the row only
 * in one pile's card is next; the others keep their order. Null where there is
 * none. Only words of the plan are shown: each was checked with its run, and the
 * log knows its place. Any other word of the board would have none.
 */
export function turnedTo(
  { order, at }: { readonly order: readonly number[]; readonly at: number },
  pile: number,
  moments: readonly Moment[],
): readonly number[] | null {
  const row = moments[order[at] ?? -1];
  if (row?.part !== 'blending') return null;
  const lying = cardsInPiles(row.flip);
  // Of a word in syllables a whole syllable turns, whichever of its cards was pointed at.
  const turns = row.flip.joints?.filter((joint) => joint <= pile).length ?? pile;
  const found = order.findIndex((number, place) => {
    const other = moments[number];
    if (place <= at || other?.part !== 'blending') return false;
    const cards = cardsInPiles(other.flip);
    if (cards.length !== lying.length) return false;
    return cards.every((id, card) => (id === lying[card]) === (card !== turns));
  });
  if (found < 0) return null;
  return order.toSpliced(found, 1).toSpliced(at + 1, 0, order[found] as number);
}

import type { CardId } from '../../language/card-id.ts';

/**
 * Parts of some piles, so that judging all their rows can be done in turns: the
 * tables of the parts, one after the other, are the table of the whole. No part
 * has more than `most` rows, as long as `most` is at least 1.
 */
export function splitPiles(
  piles: readonly (readonly CardId[])[],
  most: number,
): readonly (readonly (readonly CardId[])[])[] {
  const [first = [], ...rest] = piles;
  const rows = rest.reduce((product, pile) => product * pile.length, 1);
  if (piles.length === 0 || first.length * rows <= most) return [piles];
  if (rows > most) {
    const parts = splitPiles(rest, most);
    return first.flatMap((id) => parts.map((part) => [[id], ...part]));
  }
  const cards = Math.max(1, Math.floor(most / rows));
  return Array.from({ length: Math.ceil(first.length / cards) }, (_, part) => [
    first.slice(part * cards, (part + 1) * cards),
    ...rest,
  ]);
}

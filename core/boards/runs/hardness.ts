/**
 * How hard the words of one board are to each other, for a run that rises: fewer
 * sounds first; among equals real words before nonsense, and then words of
 * likely sounds with many real neighbors first (core/boards/judge/nonsense.ts). The
 * order of the three is common practice, no source.
 */

/** Ranks from 0, the easiest word, to nearly 1. `ease` is from 0, the hardest, to 1. */
export function hardnessRanks(
  words: readonly { readonly sounds: readonly unknown[] }[],
  isReal: ArrayLike<number>,
  ease: ArrayLike<number>,
): Float64Array {
  const hard = words.map(
    ({ sounds }, at) => 4 * sounds.length + (isReal[at] ? 0 : 2) - (ease[at] as number),
  );
  const order = words.map((_, at) => at);
  order.sort((one, other) => (hard[one] as number) - (hard[other] as number));
  const ranks = new Float64Array(words.length);
  order.forEach((at, place) => {
    ranks[at] = place / words.length;
  });
  return ranks;
}

/** How far a word's rank is from what its place among so many flips asks, 0 to 1. */
export function offRise(rank: number, place: number, flips: number): number {
  return Math.abs(rank - place / flips);
}

/** A word so far off is not counted as risen; ours. */
export const RISE_SLACK = 0.2;

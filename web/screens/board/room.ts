import type { Shape } from '../../../core/boards/shapes/shapes.ts';

/**
 * The most cards of each pile, unless she sets it otherwise. The more piles, the
 * fewer cards: the words of a board are the product of its piles.
 */
export function usualRoom({ piles, form }: Shape): readonly number[] {
  if (form === 'beats') return piles.map(() => SYLLABLES);
  const [consonants, vowels] = ROOM[piles.length] ?? [3, 3];
  return piles.map(({ role }) => (role === 'vowel' ? vowels : consonants));
}

/** Two syllables are seldom a word: many of them make a run's worth. */
const SYLLABLES = 12;

/** For so many piles: consonants, vowels. */
const ROOM: Readonly<Record<number, readonly [number, number]>> = {
  2: [12, 8],
  3: [8, 5],
  4: [6, 4],
  5: [4, 3],
};

/** What room she can choose from. */
export const ROOMS: readonly number[] = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 20, 24];

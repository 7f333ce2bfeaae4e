import type { CardId } from './card-id.ts';

/**
 * Spelling habits: what a child must have met, besides its cards, to read a
 * word. `schwa`: the vowel of an unstressed syllable may fade. `long-words`:
 * words of two or more syllables are read syllable by syllable. The cluster
 * habits: several consonants in a row, each keeping its own sound. `flex`: in a
 * word of two beats whose last vowel fades, the child tries the short vowel and
 * lets it fade (*basket*); it comes with longer words unless it is taken out.
 */
export const HABITS = [
  'ending-clusters',
  's-clusters',
  'l-clusters',
  'r-clusters',
  'three-clusters',
  'long-words',
  'schwa',
  'flex',
] as const;
export type Habit = (typeof HABITS)[number];

/**
 * What a group has been taught: correspondence ids (cluster and welded cards
 * among them), habits, and irregular words known by heart. Everything shown to
 * children is checked against it.
 */
export interface Taught {
  readonly correspondences: ReadonlySet<CardId>;
  readonly habits: ReadonlySet<Habit>;
  readonly irregularWords: ReadonlySet<string>;
}

/** Whether a string names a habit. */
export function isHabit(text: string): text is Habit {
  return (HABITS as readonly string[]).includes(text);
}

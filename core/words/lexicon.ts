import type { CardId } from '../language/card-id.ts';
import type { Reading } from '../language/reading.ts';

/**
 * How common a word is, in coarse bands: 1 the commonest few hundred words to
 * 7 the rarest in the list. Bands only order and filter; they are no norm.
 */
export type Band = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/**
 * The word list in memory. Words are addressed by index, 0 to `size - 1`,
 * commonest first. Whole readings are made on demand; `cardIds`, `isRegular`
 * and `syllableCount` are stored for the ordinary one, so that all words can be
 * filtered without making any.
 */
export interface Lexicon {
  readonly size: number;
  /** The spelling of word `index`, lower case. */
  word(index: number): string;
  band(index: number): Band;
  /** The index of a word as spelled, or -1. Safe for any string. */
  indexOf(word: string): number;
  /** All readings, ordinary one first. Never empty. */
  readings(index: number): readonly Reading[];
  /** Card ids of the ordinary reading, in order. */
  cardIds(index: number): readonly CardId[];
  /** Whether every card of the ordinary reading is regular where it stands. */
  isRegular(index: number): boolean;
  /** How many syllables the ordinary reading has. */
  syllableCount(index: number): number;
  /** Words with a reading of these sounds (phonemes joined by a space, AX for schwa). */
  saidAs(sounds: string): readonly number[];
}

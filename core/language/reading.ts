import type { CardId } from './card-id.ts';
import type { Phoneme } from './phonemes.ts';

/** The six syllable types as taught, and what fits none of them. */
export const SYLLABLE_TYPES = ['closed', 'open', 'vce', 'team', 'r', 'cle', 'other'] as const;
export type SyllableType = (typeof SYLLABLE_TYPES)[number];

/**
 * One card of a word: the letters it covers (0-based positions, ascending; a
 * split a_e lists both), the sounds they stand for (none when silent) and the
 * id of the correspondence. `regular` is false where no rule gives this sound.
 */
export interface CardReading {
  readonly grapheme: string;
  readonly letters: readonly number[];
  readonly phonemes: readonly Phoneme[];
  readonly id: CardId;
  readonly regular: boolean;
}

/** A stretch of letters, `from` inclusive, `to` exclusive. A card may straddle the edge. */
export interface Syllable {
  readonly from: number;
  readonly to: number;
  readonly type: SyllableType;
}

/** How one pronunciation of a word falls into cards and syllables. */
export interface Reading {
  readonly word: string;
  readonly sounds: readonly Phoneme[];
  readonly cards: readonly CardReading[];
  readonly syllables: readonly Syllable[];
  /** True when some letters could be matched by no row of the table. */
  readonly fallback: boolean;
}

import type { CardId } from '../../language/card-id.ts';
import type { Phoneme } from '../../language/phonemes.ts';
import type { Screened } from '../../words/screen.ts';

/**
 * A blending board: piles of card ids from left to right. With three piles
 * they are beginnings, vowels and endings. `shape` names the rules by which
 * a row of cards makes a word.
 */
export interface Board {
  readonly shape: string;
  readonly piles: readonly (readonly CardId[])[];
}

/** Why a combination is not shown; `detail` is a teacher's sentence. */
export type StopReason =
  | {
      readonly code: 'untaught' | 'rule' | 'sound-alike' | 'said-differently' | 'name';
      readonly detail: string;
    }
  | {
      readonly code: 'screened';
      readonly detail: string;
      /** What the screen said of the word, or of the syllable that it is hidden for. */
      readonly screened: Screened;
    };

/** What one row of cards says. */
export type BuiltWord = {
  readonly cards: readonly CardId[];
  readonly word: string;
  readonly sounds: readonly Phoneme[];
} & (
  | { readonly kind: 'real' }
  | { readonly kind: 'nonsense' }
  | { readonly kind: 'stopped'; readonly reason: StopReason }
);

/** One position of a run: the cards that lie uppermost and what they say. */
export interface Flip {
  readonly cards: readonly CardId[];
  readonly word: string;
  readonly sounds: readonly Phoneme[];
  readonly kind: 'real' | 'nonsense';
}

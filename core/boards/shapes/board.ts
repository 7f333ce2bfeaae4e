import type { CardId } from '../../language/card-id.ts';
import type { Phoneme } from '../../language/phonemes.ts';
import { makeSyllableId } from '../../language/syllable-card.ts';
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

/** The cards of a flip as they lie in the piles: of a word laid in syllables its syllables. */
export function cardsInPiles({ cards, joints }: Pick<Flip, 'cards' | 'joints'>): readonly CardId[] {
  if (!joints) return cards;
  return [0, ...joints].map((from, at) => makeSyllableId(cards.slice(from, joints[at])));
}

/** One position of a run: the cards that lie uppermost and what they say. */
export interface Flip {
  readonly cards: readonly CardId[];
  readonly word: string;
  readonly sounds: readonly Phoneme[];
  readonly kind: 'real' | 'nonsense';
  /**
   * Of a word laid in syllables, before which of its cards each syllable after the first begins: 3 for
   * nap·kin. `cards` are then all that the syllables carry.
   */
  readonly joints?: readonly number[];
}

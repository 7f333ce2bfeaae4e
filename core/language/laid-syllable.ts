import { type Correspondence, isVowelCard } from './correspondence.ts';
import { correspondenceById } from './correspondences.ts';
import type { Phoneme } from './phonemes.ts';

/**
 * A syllable as its cards lie on the table: consonants, one vowel, consonants.
 * Cluster and welded cards are opened into the correspondences they carry.
 * `opens` and `closes` say whether it begins and whether it ends the word.
 */
export interface LaidSyllable {
  readonly onset: readonly Correspondence[];
  readonly vowel: Correspondence;
  readonly coda: readonly Correspondence[];
  readonly opens: boolean;
  readonly closes: boolean;
}

/** A card's correspondences: its parts if it is a cluster or welded, else itself. */
export function partsOf(card: Correspondence): readonly Correspondence[] {
  if (card.parts.length === 0) return [card];
  return card.parts.map((id) => correspondenceById.get(id) as Correspondence);
}

/** Lays cards as a one-syllable word; null unless exactly one of them is its vowel. */
export function laySyllable(cards: readonly Correspondence[]): LaidSyllable | null {
  const at = cards.findIndex(isNucleusCard);
  if (at < 0 || cards.slice(at + 1).some(isNucleusCard)) return null;
  return {
    onset: cards.slice(0, at).flatMap(partsOf),
    vowel: cards[at] as Correspondence,
    coda: cards.slice(at + 1).flatMap(partsOf),
    opens: true,
    closes: true,
  };
}

/** The letters as read on the board: the e of a split card stands after the ending. */
export function spellingOf({ onset, vowel, coda }: LaidSyllable): string {
  const [head, tail] = splitVowel(vowel);
  return lettersOf(onset) + head + lettersOf(coda) + tail;
}

/** The sounds of the cards in order. */
export function soundsOf({ onset, vowel, coda }: LaidSyllable): readonly Phoneme[] {
  return [...onset, vowel, ...coda].flatMap((card) => card.phonemes);
}

/** The letters of cards side by side. */
export function lettersOf(cards: readonly Correspondence[]): string {
  return cards.map((card) => card.grapheme).join('');
}

/** A vowel card's letters before and after the ending: `a_e` gives `a` and `e`. */
export function splitVowel(vowel: Correspondence): readonly [head: string, tail: string] {
  const at = vowel.grapheme.indexOf('_');
  return at < 0
    ? [vowel.grapheme, '']
    : [vowel.grapheme.slice(0, at), vowel.grapheme.slice(at + 1)];
}

/** The letters that follow card `index` of the beginning. */
export function afterOnset({ onset, vowel }: LaidSyllable, index: number): string {
  return lettersOf(onset.slice(index + 1)) + splitVowel(vowel)[0];
}

/** The letters that follow card `index` of the ending, a split card's e among them. */
export function afterCoda({ vowel, coda }: LaidSyllable, index: number): string {
  return lettersOf(coda.slice(index + 1)) + splitVowel(vowel)[1];
}

function isNucleusCard(card: Correspondence): boolean {
  return isVowelCard(card) || card.kind === 'consonant-le';
}

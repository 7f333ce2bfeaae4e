import type { CardId } from './card-id.ts';
import type { Phoneme } from './phonemes.ts';

/** What kind of card a correspondence is; shapes and colors follow from it. */
export const KINDS = [
  'consonant',
  'digraph',
  'trigraph',
  'double',
  'short-vowel',
  'long-vowel',
  'silent-e',
  'vowel-team',
  'diphthong',
  'r-vowel',
  'other-vowel',
  'consonant-le',
  'ending',
  'consonant-e',
  'silent',
  'cluster',
  'welded',
] as const;
export type Kind = (typeof KINDS)[number];

/** Where in a word or base a card may stand. */
export const PLACES = ['beginning', 'middle', 'ending'] as const;
export type Place = (typeof PLACES)[number];

/** How early a correspondence is usually met: 1 early, 2 later, 3 advanced, 4 irregular. */
export type Tier = 1 | 2 | 3 | 4;

/**
 * One grapheme–phoneme correspondence: these letters, read with these sounds.
 * A split grapheme is written with a low line (`a_e`). `phonemes` is empty for
 * a silent letter. A cluster or welded card carries several correspondences in
 * `parts` (`st` = `s=S`, `t=T`); for all others `parts` is empty. Tier 4 marks
 * what no rule gives: a reading that uses it is irregular there.
 */
export interface Correspondence {
  readonly id: CardId;
  readonly grapheme: string;
  readonly phonemes: readonly Phoneme[];
  readonly kind: Kind;
  readonly tier: Tier;
  readonly places: readonly Place[];
  readonly keyword: string | null;
  readonly parts: readonly CardId[];
}

const vowelKinds: ReadonlySet<Kind> = new Set([
  'short-vowel',
  'long-vowel',
  'silent-e',
  'vowel-team',
  'diphthong',
  'r-vowel',
  'other-vowel',
]);

/** Whether a card stands in the vowel pile (and so in an arch). */
export function isVowelCard(card: Correspondence): boolean {
  return vowelKinds.has(card.kind);
}

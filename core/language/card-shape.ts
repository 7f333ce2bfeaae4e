import { type Correspondence, isVowelCard } from './correspondence.ts';

/**
 * The shape that a card has on screen, on paper and in slides, so that kinds are
 * told apart without colour: `arch` for vowels, `tile` for consonants, `split`
 * for an arch with a silent e, and one for each other kind of card.
 */
export type CardShape =
  | 'tile'
  | 'arch'
  | 'split'
  | 'cluster'
  | 'welded'
  | 'cle'
  | 'ending'
  | 'carrier';

/** The shape of a card; an unknown one is a plain tile. */
export function cardShape(card: Correspondence | undefined): CardShape {
  if (!card) return 'tile';
  if (card.grapheme.includes('_')) return 'split';
  if (isVowelCard(card)) return 'arch';
  if (card.kind === 'cluster') return 'cluster';
  if (card.kind === 'welded') return 'welded';
  if (card.kind === 'consonant-le') return 'cle';
  if (card.kind === 'ending') return 'ending';
  if (card.kind === 'consonant-e') return 'carrier';
  return 'tile';
}

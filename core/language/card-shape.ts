import { type CardId, isSightId } from './card-id.ts';
import { type Correspondence, isVowelCard } from './correspondence.ts';
import { correspondenceById } from './correspondences.ts';

/**
 * The shape that a card has on screen, on paper and in slides, so that kinds are
 * told apart without color: `arch` for vowels, `tile` for consonants, `split`
 * for an arch with a silent e, `slip` for a whole word known by sight, and one for each other kind of
 * card.
 */
export type CardShape =
  | 'tile'
  | 'arch'
  | 'split'
  | 'cluster'
  | 'welded'
  | 'cle'
  | 'ending'
  | 'carrier'
  | 'slip';

/** The shape of a card by its id: of a correspondence as `cardShape` says, of a word known by sight a slip. */
export function shapeOfCard(id: CardId): CardShape {
  return isSightId(id) ? 'slip' : cardShape(correspondenceById.get(id));
}

/** The shape of a correspondence; of an unknown one a plain tile. */
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

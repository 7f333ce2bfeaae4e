/**
 * A syllable on one card, by its name: its letters, a sign, and the cards it carries, `nap=n=N.a=AE.p=P`.
 * It is a name like that of any other card; what lies on it is read here and nowhere else.
 */
import { type CardId, graphemeOf, soundsOf } from './card-id.ts';
import type { Phoneme } from './phonemes.ts';

/** The name of a syllable that carries these cards, left to right. */
export function makeSyllableId(cards: readonly CardId[]): CardId {
  return `${lettersOfCards(cards)}=${cards.join('.')}`;
}

/** The letters of cards as a syllable has them: a silent e stands at its end, `place` for p l a_e c. */
function lettersOfCards(cards: readonly CardId[]): string {
  const letters = cards.map((id) => graphemeOf(id).replace('_e', '')).join('');
  return cards.some((id) => graphemeOf(id).includes('_')) ? `${letters}e` : letters;
}

/** Whether a card is a syllable. */
export function isSyllableId(id: string): boolean {
  return id.indexOf('=', id.indexOf('=') + 1) > 0;
}

/** The cards that a syllable carries; of any other card the card itself. */
export function cardsOnCard(id: CardId): readonly CardId[] {
  if (!isSyllableId(id)) return [id];
  return id.slice(id.indexOf('=') + 1).split('.') as CardId[];
}

/** The sounds of a card, or of all that a syllable carries. */
export function soundsOnCard(id: CardId): readonly Phoneme[] {
  return cardsOnCard(id).flatMap(soundsOf);
}

import type { CardId } from '../../core/language/card-id.ts';
import { cardShort } from './card-short.ts';

/** Look-alikes as one text, the same for the same cards in the same order. */
export function contrastKey(cards: readonly CardId[]): string {
  return cards.join(' ');
}

/** Look-alikes in a sentence: `b and d`; `i, e and a`. */
export function contrastName(cards: readonly CardId[]): string {
  const names = cards.map(cardShort);
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

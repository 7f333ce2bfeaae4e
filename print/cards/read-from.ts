/** From how far away the letters of a set can be read by a whole group. */
import type { Paper } from '../paper.ts';
import type { Typeface } from '../typeface.ts';
import { letterRoom } from './front.ts';
import { type CardKind, frameAt, gridOf } from './grid.ts';
import { letterSizes } from './letter-size.ts';
import type { PaperCard } from './paper-card.ts';

/** How high an x must look to be read with ease, in minutes of arc (common practice, no source). */
const MINUTES = 25;

/** Distances in m: of the cards with the largest letters, and of those with the smallest. */
export interface ReadFrom {
  readonly largest: number;
  readonly smallest: number;
}

/** From where the cards of a set can be read; null for blank cards alone. */
export function readFrom(
  cards: readonly PaperCard[],
  place: { readonly kind: CardKind; readonly paper: Paper; readonly pictured: boolean },
  typeface: Typeface,
): ReadFrom | null {
  const lettered = cards.filter(({ parts }) => parts.length > 0);
  if (lettered.length === 0) return null;
  const room = letterRoom(frameAt(gridOf(place.kind, place.paper), 0), place.pictured);
  const sizes = letterSizes(cards, room, typeface);
  const distances = lettered.map(
    (card) =>
      typeface.ink('x', sizes.of(card)).top / 1000 / Math.tan((MINUTES / 60) * (Math.PI / 180)),
  );
  return { largest: Math.max(...distances), smallest: Math.min(...distances) };
}

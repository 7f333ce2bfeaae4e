import type { Paper } from '../paper.ts';
import { points } from '../paper.ts';
import type { Typeface } from '../typeface.ts';
import { letterRoom } from './front.ts';
import { type CardKind, frameAt, gridOf } from './grid.ts';
import { leastWidth } from './letter-room.ts';

/** The smallest letters that children are given to read on a card, in mm (24 pt; common practice, no source). */
export const LEAST_LETTERS = points(24);

/** Where her own text is to stand. */
export interface OwnPlace {
  readonly kind: CardKind;
  readonly paper: Paper;
  /** Whether the cards of the set leave room for pictures. */
  readonly pictured: boolean;
}

/**
 * How many of a text's characters fit a card at a size that children can read; null when all do. What does not
 * fit is for her to shorten, and is never set smaller.
 */
export function charactersThatFit(
  text: string,
  { kind, paper, pictured }: OwnPlace,
  typeface: Typeface,
): number | null {
  const { width } = letterRoom(frameAt(gridOf(kind, paper), 0), pictured);
  const characters = [...text];
  const fits = (count: number) =>
    leastWidth({ shape: 'tile', parts: [characters.slice(0, count).join('')] }, typeface) *
      LEAST_LETTERS <=
    width;
  if (fits(characters.length)) return null;
  let count = characters.length - 1;
  while (count > 1 && !fits(count)) count -= 1;
  return count;
}

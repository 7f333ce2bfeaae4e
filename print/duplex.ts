/**
 * Printing both sides. Turned along the long edge, an upright sheet turns like the page of a book, so
 * what stands behind a card lies mirrored along the row. Turned along the short edge it turns over its
 * top: then the whole back is upside down as well. A sheet that lies on its side has its long edge on
 * top, so there the two change places.
 */
import type { Box } from './box.ts';

/** Along which edge of the paper a sheet is turned for its back. */
export const TURNS = ['long', 'short'] as const;
export type SheetTurn = (typeof TURNS)[number];

/** Whether a sheet that is turned along this edge turns over the top of what is printed on it. */
export function turnsOverTop(turn: SheetTurn, landscape: boolean): boolean {
  return (turn === 'short') !== landscape;
}

/** Where on the back of a page `width` mm wide a box lies that is behind one on its front. */
export function behind(box: Box, width: number): Box {
  return { ...box, x: width - box.x - box.width };
}

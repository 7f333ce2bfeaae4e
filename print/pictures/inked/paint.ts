import type { PicturePart } from '../../picture.ts';

/** The one thickness of line of all inked pictures, in a square of 100 units. */
const LINE = 3.6;

/**
 * One small palette, warm, each color as light as no other that it stands beside, so that a gray
 * printer keeps every shape apart; the ink line holds them even where it does not.
 */
export const ink = '#1d2740';
export const white = '#fffdf9';
export const cream = '#ffe9bd';
export const yellow = '#ffcf40';
export const orange = '#f28c33';
export const red = '#d9483b';
export const rose = '#f6a9a4';
export const green = '#6db04a';
export const fir = '#2f7d4f';
export const sky = '#a9d8f0';
export const blue = '#3f86c6';
export const violet = '#8a67b3';
export const tan = '#d9a566';
export const brown = '#955f38';
export const bark = '#5f3d2a';
export const coal = '#434a5e';
export const stone = '#a4abb8';
export const mist = '#dde3ea';

/** A filled shape with the ink line round it. */
export function inked(path: string, fill: string): PicturePart {
  return { path, fill, stroke: ink, line: LINE };
}

/** A filled shape without a line: a patch of light, a spot, a stripe. */
export function flat(path: string, fill: string): PicturePart {
  return { path, fill };
}

/** A line alone, of ink unless another color is named. */
export function drawn(path: string, stroke = ink, line = LINE): PicturePart {
  return { path, stroke, line };
}

/** A line of `fill` with ink on both its sides: a rope, a stalk, a leg. */
export function band(path: string, fill: string, wide: number): readonly PicturePart[] {
  return [drawn(path, ink, wide + 2 * LINE), drawn(path, fill, wide)];
}

/** A body and its limbs, lines `wide` thick, as one shape with one ink line round it. */
export function merged(
  body: string,
  limbs: string,
  fill: string,
  wide: number,
): readonly PicturePart[] {
  return [drawn(limbs, ink, wide + 2 * LINE), inked(body, fill), drawn(limbs, fill, wide)];
}

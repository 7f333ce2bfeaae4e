import type { SoundStyle } from '../../core/language/phonemes.ts';
import type { Inks } from '../ink.ts';
import { type Paper, points } from '../paper.ts';
import type { Typeface } from '../typeface.ts';

/** What every sheet is drawn with. */
export interface SheetLook {
  readonly paper: Paper;
  readonly inks: Inks;
  readonly typeface: Typeface;
  /** How sounds are written. */
  readonly style: SoundStyle;
  /** How many times larger all is printed than it is laid out; 1 when left out (fit.ts). */
  readonly zoom?: number;
}

/**
 * Sizes of letters, em in mm. What children read is 24 pt, and never less than 18 pt however long the
 * words are (common practice, no source); the rest is for the teacher.
 */
export const CHILD = points(24);
const CHILD_LEAST = points(18);
export const TITLE = points(20);
export const HEADING = points(13);
export const BODY = points(10.5);
export const SMALL = points(8.5);

/** The least size of what children read, as it is laid out on this sheet. */
export function childLeast({ zoom = 1 }: SheetLook): number {
  return CHILD_LEAST / zoom;
}

import type { OutlineStep } from './glyphs.ts';

/**
 * One slide as a value: painted outlines from back to front, and what the
 * teacher reads in her notes. There is no text on it: letters are outlines, so
 * that a slide looks the same where the typeface is missing.
 */
export interface Slide {
  readonly shapes: readonly SlideShape[];
  readonly notes: string;
}

/** One painted outline; lengths in mm from the slide's top left corner, y down, colors `#rrggbb`. */
export interface SlideShape {
  /** What the list of objects calls it, and what a screen reader says. */
  readonly name: string;
  readonly steps: readonly OutlineStep[];
  readonly fill?: string;
  readonly stroke?: string;
  /** Width of the stroke. */
  readonly line?: number;
  readonly dashed?: boolean;
}

/** A wide slide of 16 : 9 in mm: 13⅓ by 7½ inches, as presentation programs have it. */
export const SLIDE = { width: 338.667, height: 190.5 } as const;

/** The ground behind everything: the app's paper. */
export const SLIDE_GROUND = '#faf6ee';

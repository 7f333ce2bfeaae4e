import type { OutlineStep } from './glyphs.ts';
import type { Size } from './paper.ts';

/** The screens that slides are made for, width to height. */
export const SLIDE_FORMATS = ['16:9', '4:3'] as const;
export type SlideFormat = (typeof SLIDE_FORMATS)[number];

/** Slides in mm as presentation programs have them: 13⅓ by 7½ inches, and 10 by 7½. */
export const slideSize: Readonly<Record<SlideFormat, Size>> = {
  '16:9': { width: 338.667, height: 190.5 },
  '4:3': { width: 254, height: 190.5 },
};

/** The ground behind everything: the app's paper. */
export const SLIDE_GROUND = '#faf6ee';

/** Slides in their order, all of one format. `title` is what programs show as the file's own name. */
export interface Deck {
  readonly title: string;
  readonly format: SlideFormat;
  readonly slides: readonly Slide[];
}

/**
 * One slide as a value: things from back to front, what each click moves before the next slide comes, and
 * what the teacher reads in her notes. No text is seen on it: letters are outlines, so that a slide looks
 * the same where the typeface is missing. Its title is for screen readers and for lists of slides.
 */
export interface Slide {
  readonly title: string;
  readonly things: readonly SlideThing[];
  readonly clicks: readonly (readonly Move[])[];
  readonly notes: string;
}

/** Outlines that belong together: a card, the line. */
export interface SlideThing {
  /** What the list of objects calls it. */
  readonly name: string;
  /** What a screen reader says of it; null for what only decorates. */
  readonly says: string | null;
  readonly shapes: readonly SlideShape[];
}

/** One painted outline; lengths in mm from the slide's top left corner, y down, colors `#rrggbb`. */
export interface SlideShape {
  readonly steps: readonly OutlineStep[];
  readonly fill?: string;
  readonly stroke?: string;
  /** Width of the stroke. */
  readonly line?: number;
  readonly dashed?: boolean;
}

/** What a click does to a thing, named by its place on the slide: the line sweeps from left to right. */
export interface Move {
  readonly thing: number;
  readonly how: 'sweep' | 'appear' | 'vanish';
}

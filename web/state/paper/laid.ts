import type { ReadFrom } from '../../../print/cards/read-from.ts';
import type { Page } from '../../../print/page.ts';
import type { Deck } from '../../../print/slide.ts';

/** What will be printed or shown, before there is a file of it. */
export interface LaidPaper {
  readonly pages: readonly Page[];
  /** Of slides there are no pages, and of pages no slides. */
  readonly deck: Deck | null;
  /** How many cards, strips, words and so on. */
  readonly count: number;
  /** What she should know before, in whole sentences. */
  readonly notes: readonly string[];
  /** From where cards for a group can be read; left out of all else. */
  readonly readFrom?: ReadFrom | null;
}

/** Pages as they were laid out. */
export function laidPages(
  pages: readonly Page[],
  count: number,
  notes: readonly string[] = [],
): LaidPaper {
  return { pages, deck: null, count, notes };
}

/** Nothing to print, and why. */
export function nothingLaid(...notes: readonly string[]): LaidPaper {
  return laidPages([], 0, notes);
}

import type { Book } from './belief/book.ts';
import { fitClass } from './belief/fit.ts';
import type { Marking } from './belief/marking.ts';
import type { Fit } from './belief/usual.ts';
import type { Day } from './day.ts';

/** What a class knows of one skill: figures are asked of it by estimate.ts. */
export interface Known {
  /** How the readings were marked; where only mistakes were, figures say less. */
  readonly marking: Marking;
  readonly book: Book;
  /** What is usual in the class, by all that was read: fitted when it is first asked for. */
  readonly fit: () => Fit;
}

/** Known, and what must be called when something is read and when a day begins. */
export interface OpenKnown {
  readonly known: Known;
  readonly changed: (day: Day) => void;
}

/** What is known by a book, of which nothing was fitted yet. */
export function openKnown(book: Book, marking: Marking): OpenKnown {
  let fitted: Fit | null = null;
  let today: Day = 0;
  return {
    known: {
      marking,
      book,
      fit() {
        fitted ??= fitClass(book, marking, today);
        return fitted;
      },
    },
    changed(day) {
      fitted = null;
      today = day;
    },
  };
}

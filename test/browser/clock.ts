import type { BrowserContext, Page } from 'playwright-core';

declare global {
  /** Moves the page's clock by so many milliseconds, forward or back. */
  var moveClock: (by: number) => void;
  /** Ends all long waits of the page that are under way. */
  var endWaits: () => void;
}

/** A day in milliseconds. */
export const DAY = 86_400_000;

/** How far it is to noon of today, in milliseconds, which may be behind us. */
export function untilNoon(): number {
  return new Date().setHours(12, 0, 0, 0) - Date.now();
}

/**
 * Sets the clocks of pages so many milliseconds off what they were, from their next load on, and lets
 * a page move its own: `moveClock`.
 */
export async function setClocks(pages: Page | BrowserContext, off: number): Promise<void> {
  await pages.addInitScript((first) => {
    const True = Date;
    let off = first;
    globalThis.moveClock = (by) => {
      off += by;
    };
    globalThis.Date = new Proxy(True, {
      construct: (_, parts) =>
        parts.length === 0 ? new True(True.now() + off) : Reflect.construct(True, parts),
      get: (_, name) => (name === 'now' ? () => True.now() + off : Reflect.get(True, name)),
    });
  }, off);
}

/** A wait of so many milliseconds is a long one: the app gives up on something, or tries it again. */
const LONG = 3000;

/** Lets a page, from its next load on, have its long waits over at once: `endWaits`. Short ones go on as ever. */
export async function holdLongWaits(pages: Page | BrowserContext): Promise<void> {
  await pages.addInitScript((long) => {
    const { setTimeout: begin, clearTimeout: end } = globalThis;
    const waits = new Map<unknown, () => void>();
    globalThis.setTimeout = new Proxy(begin, {
      apply(_, __, [what, after = 0, ...given]) {
        if (after < long) return begin(what, after, ...given);
        const wait = begin(over, after);
        waits.set(wait, over);
        return wait;
        function over() {
          waits.delete(wait);
          end(wait);
          what(...given);
        }
      },
    });
    globalThis.clearTimeout = new Proxy(end, {
      apply(_, __, [wait]) {
        waits.delete(wait);
        end(wait);
      },
    });
    globalThis.endWaits = () => {
      for (const over of [...waits.values()]) over();
    };
  }, LONG);
}

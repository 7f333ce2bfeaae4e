import type { BrowserContext, Page } from 'playwright-core';

declare global {
  /** Moves the page's clock by so many milliseconds, forward or back. */
  var moveClock: (by: number) => void;
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

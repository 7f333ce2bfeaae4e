import type { Page } from 'playwright-core';

declare global {
  /** Moves the page's clock by so many milliseconds, forward or back. */
  var moveClock: (by: number) => void;
}

/**
 * Gives a page a clock that can be moved, from its next load on: `moveClock` in the page. It begins
 * `days` ahead, at noon of that day, so that no test runs into midnight.
 */
export async function giveClock(page: Page, days = 0): Promise<void> {
  await page.addInitScript((ahead) => {
    const True = Date;
    const noon = new True();
    noon.setHours(12, 0, 0, 0);
    let off = noon.getTime() - True.now() + ahead * 86_400_000;
    globalThis.moveClock = (by) => {
      off += by;
    };
    globalThis.Date = new Proxy(True, {
      construct: (_, parts) =>
        parts.length === 0 ? new True(True.now() + off) : Reflect.construct(True, parts),
      get: (_, name) => (name === 'now' ? () => True.now() + off : Reflect.get(True, name)),
    });
  }, days);
}

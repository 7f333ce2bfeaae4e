import type { Locator, Page } from 'playwright-core';
import { EDITION } from '../../core/sequence/earlier-orders.ts';
import { flips } from './today-page.ts';

/** Where the app keeps how far its first class has come. */
export const STANDING = 'sweepline.standing';

/** What is kept there when the class was taught up to a step. */
export function standingAt(upTo: number): string {
  return JSON.stringify({ own: null, edition: EDITION, upTo, added: [], dropped: [], told: true });
}

/** Makes the class of an open page one that was taught up to a step; the page is loaded again. */
export async function taughtUpTo(page: Page, upTo: number): Promise<void> {
  await page.evaluate(([name, text]) => localStorage.setItem(name, text), [
    STANDING,
    standingAt(upTo),
  ] as const);
  await page.reload({ waitUntil: 'load' });
}

/** Goes to a screen by its address and waits until something of it is there. */
export async function openScreen(page: Page, screen: string, shows: Locator): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#/${screen}`);
  await shows.first().waitFor();
}

/** Today's plan as this device remembers it, changed by hand to one that was never run, and the page loaded again. */
export async function putRows(page: Page, rows: readonly (readonly string[])[]): Promise<void> {
  await flips(page).first().waitFor();
  await page.evaluate((all) => {
    const plan = JSON.parse(localStorage.getItem('sweepline.plan') ?? '{}');
    plan.made.drill.run = all.map((cards) => ({
      cards,
      word: cards.map((id) => id.slice(0, id.indexOf('='))).join(''),
      sounds: [],
      kind: 'nonsense',
    }));
    plan.made.drill.seed += 1;
    plan.made.drill.visual = [];
    plan.made.drill.auditory = [];
    localStorage.setItem('sweepline.plan', JSON.stringify(plan));
  }, rows);
  await page.reload({ waitUntil: 'load' });
}

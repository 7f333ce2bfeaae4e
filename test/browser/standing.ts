import type { Page } from 'playwright-core';

/** A class that has been taught up to a step, as this device remembers it; then the page is loaded anew. */
export async function taughtUpTo(page: Page, upTo: number): Promise<void> {
  const standing = { own: null, upTo, added: [], dropped: [], told: true };
  await page.evaluate(
    (text) => localStorage.setItem('sweepline.standing', text),
    JSON.stringify(standing),
  );
  await page.reload({ waitUntil: 'load' });
}

/** Goes to a screen by its address and waits until something of it is there. */
export async function openScreen(page: Page, screen: string, shows: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#/${screen}`);
  await page.locator(shows).first().waitFor();
}

/** Today's plan as this device remembers it, changed by hand, and the page loaded anew. */
export async function putRows(page: Page, rows: readonly (readonly string[])[]): Promise<void> {
  await page.locator('.flip').first().waitFor();
  await page.evaluate((all) => {
    const plan = JSON.parse(localStorage.getItem('sweepline.plan') ?? '{}');
    plan.made.drill.run = all.map((cards) => ({
      cards,
      word: cards.map((id) => id.slice(0, id.indexOf('='))).join(''),
      sounds: [],
      kind: 'nonsense',
    }));
    plan.made.drill.visual = [];
    plan.made.drill.auditory = [];
    localStorage.setItem('sweepline.plan', JSON.stringify(plan));
  }, rows);
  await page.reload({ waitUntil: 'load' });
}

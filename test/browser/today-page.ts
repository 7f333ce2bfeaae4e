import type { Locator, Page } from 'playwright-core';

/** Today's warm-up as she sees it: its three parts, and what opens from them. */
export const partOf = (page: Page, name: 'Visual' | 'Auditory' | 'Blending'): Locator =>
  page.getByRole('region', { name: `${name} drill` });

/** The flips of the blending drill, in order. */
export const flips = (page: Page): Locator =>
  page.getByRole('list', { name: 'Words to blend' }).getByRole('button');

/** The real words among them. */
export const realFlips = (page: Page): Locator => flips(page).and(page.getByLabel(', a real word'));

/** The flips of which this is said: read, broke, where it stopped. */
export const flipsSaid = (page: Page, said: 'read' | 'broke' | 'where you stopped'): Locator =>
  flips(page).and(page.getByLabel(new RegExp(`,.*\\b${said}\\b`)));

/** The words of the flips as they are read. */
export const words = (page: Page): Promise<string[]> => flips(page).allTextContents();

/** The cards or sounds of a part that can be swapped. */
export const swappable = (page: Page, part: 'Visual' | 'Auditory'): Locator =>
  partOf(page, part).getByRole('button', { name: /Swap$/ });

/** The sheet that a thing to swap opens. */
export const swapSheet = (page: Page): Locator => page.getByRole('dialog', { name: /^Swap / });

/** What can take the place of the thing whose sheet is open. */
export const choices = (page: Page): Locator =>
  swapSheet(page).getByRole('button', {
    name: /^(?!Leave it out today|Never in my class|Every day)/,
  });

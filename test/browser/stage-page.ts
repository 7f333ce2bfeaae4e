import type { Locator, Page } from 'playwright-core';

/** The stage, on the screen that the children see. */
const stage = (page: Page): Locator => page.getByRole('main', { name: 'The stage' });

/*
 * Cards, the sweep under them and the ticks are drawn for eyes alone, and a screen reader hears the moment's
 * name in their stead: here alone is known how they are drawn.
 */

/** The cards on the stage, from left to right. */
export const stageCards = (page: Page): Locator => stage(page).locator('.row .card');

/** The letters of all of them in a row. */
export const stageLetters = async (page: Page): Promise<string> =>
  (await stageCards(page).allTextContents()).join('');

/** The row that they stand in; `untold` while what is known by heart is not shown yet. */
export const stageRow = (page: Page, how = ''): Locator =>
  stage(page).locator(`.row${how && `.${how}`}`);

/** Their places, each as it is: `waiting` to be opened, `lit` as the one to say, `nudged` as one that cannot turn. */
export const stagePlaces = (page: Page, how: 'waiting' | 'lit' | 'nudged'): Locator =>
  stage(page).locator(`.place.${how}`);

/** The line under the row; while it glides by itself, or as it was drawn by a finger. */
export const sweepLine = (page: Page, how?: 'gliding' | 'drawn'): Locator =>
  stage(page).locator(`.sweep path${how === undefined ? '' : `.${how}`}`);

/** The ticks of the part: where it stands, and what was skipped. */
export const ticks = (page: Page, how: 'current' | 'skipped'): Locator =>
  stage(page).locator(`.ticks .${how}`);

/** The day's cards at the end: their heaps, and the line on which they rest. */
export const atRest = (page: Page, what: 'heap' | 'card' | 'line'): Locator =>
  stage(page).locator(what === 'line' ? '.rest-line' : `.at-rest .${what}`);

/** What the children see in place of a card: a line to write on. */
export const writingLine = (page: Page): Locator =>
  stage(page).getByRole('img', { name: 'A line to write on' });

/** Whether the word is real: a thumb, or a wave. */
export const answer = (page: Page): Locator =>
  stage(page).getByRole('img', { name: /^a (real|nonsense) word$/ });

/** Whose turn it is, as a picture. */
export const turnPicture = (page: Page): Locator =>
  stage(page).getByRole('img', { name: / turn$/ });

/** Her narrow edge of the stage. */
export const edge = (page: Page): Locator => page.getByRole('complementary', { name: 'Your edge' });

/** The end of a warm-up: how many there were. */
export const stageEnd = (page: Page): Locator => page.getByText(/^That was /);

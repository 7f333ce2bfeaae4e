import type { Locator, Page } from 'playwright-core';

/** The things to read in a check under way, each a group of cards, named by what it is and what was said of it. */
export const items = (page: Page): Locator =>
  page.getByRole('group', { name: 'What the child reads' }).getByRole('group');

/** Those of which this is said. */
export const itemsSaid = (page: Page, said: 'wrong' | 'left out'): Locator =>
  items(page).and(page.getByLabel(`, ${said}`));

/** A card of an item, counted from 1. */
export const cardOf = (item: Locator, place: number): Locator =>
  item.getByRole('button').nth(place - 1);

/** What was missed, in the score. */
export const whatWasMissed = (page: Page): Locator =>
  page.getByRole('list', { name: 'What was missed' }).getByRole('listitem');

/*
 * What a child reads is bare text, without a role or a name that would be heard: on the child's side of the
 * screen, and on paper, which no screen shows.
 */

/** What the child's side shows to read. */
export const itemsRead = (page: Page): Promise<string[]> =>
  page.getByRole('main').locator('p span').allTextContents();

/** What the child's printed page has to read. */
export const printedItems = (page: Page): Promise<string[]> =>
  page.locator('.child-row span').allTextContents();

import type { Locator, Page } from 'playwright-core';

/** The words that a page for the family gives to read at home. */
export const wordsForHome = (page: Page): Locator =>
  page.getByRole('list', { name: 'Words to read' }).getByRole('listitem');

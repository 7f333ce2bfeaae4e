import type { Locator, Page } from 'playwright-core';

/** The desk as she works at it: the cards that can be marked, of now and of the word before. */
export const markCards = (page: Page): Locator =>
  page.getByRole('group', { name: 'Touch the card that broke' }).getByRole('button');

/** The cards of the word before, each of which can be marked late. */
export const cardsBefore = (page: Page): Locator =>
  page.getByRole('group', { name: 'The word before' }).getByRole('button');

/** The marks on How it went, each a button that puts it right. */
export const marksMade = (page: Page): Locator =>
  page.getByRole('button', { name: /\. Put right$/ });

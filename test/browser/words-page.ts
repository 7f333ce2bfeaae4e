import type { Locator, Page } from 'playwright-core';

const found = (page: Page): Locator => page.getByRole('list', { name: /^(Words|Pairs)$/ });

/** The words found, each a button that opens it. */
export const entries = (page: Page): Locator => found(page).getByRole('button');

/** The lines of the list: a word each, or a pair. */
export const lines = (page: Page, of: 'Words' | 'Pairs'): Locator =>
  page.getByRole('list', { name: of, exact: true }).getByRole('listitem');

/** The words as they are read. */
export const words = (page: Page): Promise<string[]> => entries(page).allTextContents();

/** The letters of each card of an opened word; of the irregular ones alone when that is asked. */
export async function cardsOf(sheet: Locator, only: RegExp = /./): Promise<readonly string[]> {
  const cards = await sheet.getByRole('listitem').filter({ hasText: only }).allTextContents();
  return cards.map((said) => said.split(',', 1)[0] as string);
}

/** A word opened to its cards. */
export const wordSheet = (page: Page, word?: string): Locator =>
  page.getByRole('dialog', word === undefined ? {} : { name: word, exact: true });

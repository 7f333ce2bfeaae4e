import type { Locator, Page } from 'playwright-core';

/** What is dictated, words first; or the words or the sentences alone. */
export const dictated = (page: Page, kind?: 'Words' | 'Sentences'): Locator => {
  const parts = page.getByRole('region', { name: kind ?? /^(Words|Sentences)$/, exact: true });
  return parts.getByRole('button', { name: / Swap$/ });
};

/** The lines to write on: on paper only. */
export const writingLines = (page: Page, kind: 'words' | 'sentences'): Locator =>
  page.getByRole('list', { name: `Lines for ${kind}` }).getByRole('listitem');

/** The texts as they are said. */
export const said = (page: Page): Promise<string[]> => dictated(page).allTextContents();

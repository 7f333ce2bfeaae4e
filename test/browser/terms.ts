import type { Locator, Page } from 'playwright-core';

/** What a list of terms and their values says for one of its terms. */
export async function figureOf(of: Page | Locator, term: string): Promise<string> {
  const terms = await of.getByRole('term').allTextContents();
  const at = terms.findIndex((text) => text.trim() === term);
  return (await of.getByRole('definition').nth(at).textContent()) ?? '';
}

import type { Locator, Page } from 'playwright-core';

/** A group's own part of the class page. */
export const panel = (page: Page, name: string): Locator =>
  page.getByRole('region', { name, exact: true });

/** The children in a part of the page, or on all of it, each a name that can be moved. */
export const children = (of: Page | Locator): Locator =>
  of.getByRole('list', { name: 'Children' }).getByRole('button');

/** What came of a file that was brought in. */
export const brought = (page: Page): Locator =>
  page.getByRole('region', { name: 'What was brought in' });

/** Where a file with everything in it is saved. */
export const saveCopyButton = (page: Page): Locator =>
  page.getByRole('form', { name: 'Save a copy' }).getByRole('button', { name: 'Save a copy' });

/** Where a file is chosen to be brought in. */
export const bringCopy = (page: Page): Locator => page.getByLabel('Choose a file', { exact: true });

/** The bar that says that something cannot be kept, and offers a copy. */
export const copyOffered = (page: Page): Locator =>
  page
    .getByRole('status')
    .filter({ has: page.getByRole('button', { name: 'Save a copy', exact: true }) });

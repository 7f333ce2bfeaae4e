import type { Locator, Page } from 'playwright-core';

/**
 * The cards on the stage, from left to right. They are drawn for eyes alone, and a screen reader hears the
 * moment's name in their stead: this is the one place that knows how they are drawn.
 */
export const stageCards = (page: Page): Locator =>
  page.getByRole('main', { name: 'The stage' }).locator('.row .card');

/** The end of a warm-up: how many there were. */
export const stageEnd = (page: Page): Locator => page.getByText(/^That was /);

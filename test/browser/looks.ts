import { AxeBuilder } from '@axe-core/playwright';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** From her desk to a small phone: width and height of the window in CSS pixels. */
export const SIZES = [
  [1366, 768],
  [390, 844],
  [320, 640],
] as const;

/** Whether a page of that width is looked through: what holds at both ends holds between them. */
export const isEnd = (width: number): boolean => width === 1366 || width === 320;

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/**
 * What axe finds in the page, one line for each rule that is broken: its name and where. The rules
 * are those of WCAG 2.2, levels A and AA, that a machine can check, or `all` that axe knows.
 */
export async function barriersIn(
  page: Page,
  rules: 'wcag' | 'all' = 'wcag',
): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page });
  const { violations } = await withFewRows(page, () =>
    (rules === 'all' ? axe : axe.withTags(WCAG)).analyze(),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

/** The looks of the app beside the one that most see, and colors that the device forces upon every page. */
const LOOKS = ['dark', 'contrast', 'forced'] as const;

/**
 * Where letters stand out too little from their ground in any of these looks, one line for each. Left out are
 * the cards of the order that are not taught yet: they have no ground of their own, and axe takes the white of
 * another card for it where no element is white.
 */
export function faintIn(page: Page): Promise<readonly string[]> {
  return withFewRows(page, () => faintInRows(page));
}

async function faintInRows(page: Page): Promise<readonly string[]> {
  const faint: string[] = [];
  await page.evaluate(axe.source);
  for (const look of LOOKS) {
    if (look === 'forced') await page.emulateMedia({ forcedColors: 'active' });
    const found = await page.evaluate(async (name) => {
      if (name !== 'forced') document.documentElement.dataset.look = name;
      const here = globalThis as unknown as { readonly axe: typeof import('axe-core') };
      const { violations } = await here.axe.run(
        { exclude: ['.step-list .untaught'] },
        { runOnly: ['color-contrast'], resultTypes: ['violations'] },
      );
      return violations.flatMap(({ nodes }) => nodes.map(({ html }) => html));
    }, look);
    faint.push(...found.map((html) => `${look}: ${html}`));
  }
  await page.emulateMedia({ forcedColors: 'none' });
  return faint;
}

/** So many rows of a class map are looked through. */
const FEW = 3;

/**
 * Looks at a page while its class map has but a few rows: all are drawn alike, and axe takes half a minute
 * for the eighteen thousand elements of a whole class.
 */
async function withFewRows<Seen>(page: Page, look: () => Promise<Seen>): Promise<Seen> {
  const whole = await page.evaluateHandle((few) => {
    const rows = [...document.querySelectorAll('.map-table tbody tr')].slice(few);
    const places = rows.map((row) => {
      const place = document.createComment('');
      row.replaceWith(place);
      return { row, place };
    });
    return () => {
      for (const { row, place } of places) place.replaceWith(row);
    };
  }, FEW);
  try {
    return await look();
  } finally {
    await whole.evaluate((putBack) => putBack());
  }
}

/**
 * Makes the window so large, in CSS pixels, and holds that the page does not scroll sideways there.
 * A browser lays a page out some time after its window has changed, so it is asked until it fits.
 */
export async function fitsAcross(page: Page, width: number, height: number): Promise<void> {
  await page.setViewportSize({ width, height });
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  await expect.poll(wide, { message: `${width} wide` }).toBeLessThanOrEqual(0);
}

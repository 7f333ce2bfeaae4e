import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { cardOf, items, itemsRead, itemsSaid, printedItems, whatWasMissed } from './check-page.ts';
import { barriersIn, fitsAcross, SIZES } from './looks.ts';
import { allKept } from './recorded.ts';
import { openScreen, taughtUpTo } from './standing.ts';
import { figureOf } from './terms.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterAll(() => current?.end());

const long = 'Maximiliana-Theodora Fitzgerald-Oyelaran';

/** The page holds nothing that axe finds, and fits. */
async function looksWell(page: Page): Promise<void> {
  for (const [width, height] of SIZES.toReversed()) await fitsAcross(page, width, height);
  await page.waitForFunction(() => document.getAnimations().length === 0);
  expect(await barriersIn(page)).toEqual([]);
}

describe('a short check', () => {
  it('is marked by tap and key, outlives a reload, stops at a minute, and is scored', async () => {
    current = await visit({ path: '#/check' });
    const { page, url, errors } = current;
    await taughtUpTo(page, 60);
    await page.getByRole('link', { name: 'Add children' }).click();
    await page.getByLabel('Add children').fill(`Wren\n${long}`);
    await page.getByRole('button', { name: 'Add 2 children' }).click();
    await openScreen(page, 'check', page.getByLabel('Who reads'));
    await page.getByLabel('Who reads').selectOption(long);
    await page.getByLabel('Nonsense words').check();
    await looksWell(page);
    const printed = await printedItems(page);
    expect(printed).toHaveLength(40);
    const paper = await page.pdf({ format: 'Letter' });
    expect(paper.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(2);

    await page.getByRole('button', { name: 'Begin' }).click();
    await page.evaluate(() => moveClock(60_000));
    await page.getByRole('button', { name: /start the clock$/ }).click();
    expect(await page.getByRole('timer').textContent()).toMatch(/(60|59|58)$/);
    const card = (item: number, place: number) => cardOf(items(page).nth(item), place);
    const said = (item: number) => items(page).nth(item).getAttribute('aria-label');
    await card(1, 2).click();
    await card(1, 2).click();
    await page.getByRole('button', { name: 'something else' }).click();
    await expect.poll(() => said(1)).toMatch(/, wrong, heard something else$/);
    await page.keyboard.press('ArrowRight');
    await card(3, 1).focus();
    await page.keyboard.press('c');
    expect(await page.getByRole('button', { name: /^Fixed/ }).getAttribute('aria-pressed')).toBe(
      'true',
    );
    await page.keyboard.press('Enter');
    await page.keyboard.press('h');
    await card(4, 1).click();
    await page.keyboard.press('l');
    await page.keyboard.press('l');
    await card(5, 1).click();
    await page.keyboard.press('z');
    await looksWell(page);
    await allKept(page);
    await page.reload();
    await expect.poll(() => said(3)).toMatch(/, fixed alone$/);
    expect(await said(4)).toMatch(/, helped$/);
    expect(await itemsSaid(page, 'wrong').count()).toBe(1);

    const child = await page.context().newPage();
    await child.goto(new URL('#/reader', url).href);
    await expect.poll(() => itemsRead(child)).toEqual(printed);
    await child.close();

    await page.evaluate(() => moveClock(10 * 60_000));
    await page.getByText('That was a minute.').waitFor();
    await card(11, 1).click();
    const figure = (name: string) => figureOf(page, name);
    expect(await figure('words read right')).toBe('10 of 12');
    expect(await figure('accuracy')).toBe('83%');
    expect(await figure('words a minute')).toBe('10');
    expect(await figure('time')).toBe('60 s');
    expect(await whatWasMissed(page).count()).toBe(2);
    await page.getByText('not a diagnosis').waitFor();
    await looksWell(page);

    await page.getByRole('button', { name: 'Fix a mark' }).click();
    await card(5, 1).focus();
    await page.keyboard.press('r');
    await expect.poll(() => itemsSaid(page, 'left out').count()).toBe(5);
    await page.keyboard.press('z');
    await expect.poll(() => itemsSaid(page, 'left out').count()).toBe(0);
    await page.getByRole('button', { name: 'Row 2 was skipped' }).click();
    await expect.poll(() => itemsSaid(page, 'left out').count()).toBe(5);
    await looksWell(page);
    await page.getByRole('button', { name: 'Back to the score' }).click();
    await page.getByText('Row 2 was skipped. Every item in it counts as wrong.').waitFor();
    expect(await figure('words read right')).toBe('5 of 12');
    await page.getByRole('button', { name: 'Count a skipped row as one' }).click();
    expect(await figure('words read right')).toBe('5 of 8');
    await looksWell(page);
    await page.getByRole('button', { name: 'Count every item' }).click();
    await page.getByRole('button', { name: 'Fix a mark' }).click();
    await page.getByRole('button', { name: 'Row 2 was skipped' }).click();
    await page.getByRole('button', { name: 'Back to the score' }).click();

    await page.getByRole('button', { name: 'Check another child' }).click();
    await page.getByRole('cell', { name: '10 of 12' }).waitFor();
    const next = await printedItems(page);
    expect(next.filter((word) => printed.includes(word))).toEqual([]);
    expect(errors).toEqual([]);
  });
});

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { renderPdf } from '../pdf-pixels.ts';
import { barriersIn, fitsAcross, SIZES } from './looks.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

/** The pages that will be printed, as they are shown. */
const papers = (page: Page) => page.getByRole('img', { name: /^Page \d+ of \d+$/ });

describe('cards and sheets on paper', () => {
  it('shows what will be printed, makes the file without a network and remembers the choices', async () => {
    current = await visit({ path: '#/print', upTo: 20 });
    const { page, errors } = current;
    await papers(page).first().waitFor();
    await page.getByRole('radio', { name: 'Small, for a desk', exact: true }).check();
    await page.getByLabel('Keyword with its picture').check();
    await page.getByLabel(/^On the back/).check();
    await page.getByText('on 2 sheets').waitFor();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the PDF' }).press('Enter');
    const file = await saved;
    expect(file.suggestedFilename()).toBe('cards-desk-letter.pdf');
    expect(await renderPdf(await readFile(await file.path()), 20)).toHaveLength(4);
    await page.getByRole('radio', { name: 'Home practice', exact: true }).check();
    await page.getByRole('img', { name: 'Page 1 of 1' }).waitFor();
    const before = await papers(page).allTextContents();
    await page.getByRole('button', { name: 'Other words' }).press('Enter');
    await expect.poll(() => papers(page).allTextContents()).not.toEqual(before);
    await page.getByRole('radio', { name: 'Small, for a desk', exact: true }).check();
    await current.stopServer();
    await page.getByRole('radio', { name: 'A4', exact: true }).check();
    const again = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the PDF' }).click();
    const [first] = await renderPdf(await readFile(await (await again).path()), 20);
    expect(first!.height).toBeCloseTo(297, 0);
    await page.getByRole('radio', { name: 'Slides for a projector', exact: true }).check();
    await page.getByRole('img', { name: 'Slide 1 of 32' }).waitFor();
    await page.getByRole('radio', { name: 'A short check', exact: true }).check();
    await page.getByText('on 2 sheets').waitFor();
    expect(await barriersIn(page)).toEqual([]);
    for (const [width, height] of SIZES) await fitsAcross(page, width, height);
    const check = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the PDF' }).press('Enter');
    expect((await check).suggestedFilename()).toBe('check-a4.pdf');
    expect(await page.evaluate(() => localStorage.getItem('sweepline.print'))).toMatch(
      /"check".*"a4"/,
    );
    expect(errors).toEqual([]);
  });

  it('keeps choices under a name, and chooses them again with one press', async () => {
    current = await visit({ path: '#/print', upTo: 20 });
    const { page, errors } = current;
    const kind = (name: string) => page.getByRole('radio', { name, exact: true });
    await kind('Small, for a desk').check();
    await page.getByRole('button', { name: 'Keep these choices' }).click();
    await page.getByLabel('Name', { exact: true }).fill('My Friday cards');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await kind('Words to read').check();
    await page.reload();
    await page.getByRole('button', { name: 'My Friday cards', exact: true }).click();
    expect(await kind('Small, for a desk').isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Change My Friday cards' }).click();
    expect(await barriersIn(page)).toEqual([]);
    await page.getByRole('button', { name: 'Delete' }).click();
    expect(await page.getByText('My Friday cards', { exact: true }).count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'My Friday cards', exact: true }).waitFor();
    expect(errors).toEqual([]);
  });

  it('writes sounds as she sets it in another window', async () => {
    current = await visit({ path: '#/print', upTo: 20 });
    const { page, errors } = current;
    await page.getByRole('radio', { name: 'Today’s plan', exact: true }).check();
    const sounds = papers(page).getByText('/ĭ/');
    await sounds.first().waitFor();
    const other = await page.context().newPage();
    await other.goto(new URL('#/settings', page.url()).href);
    await other.getByLabel('in phonetic letters').check();
    await papers(page).getByText('/ɪ/').first().waitFor();
    expect(await sounds.count()).toBe(0);
    expect(errors).toEqual([]);
  });
});

import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { renderPdf } from '../pdf-pixels.ts';
import { dictated } from './dictation-page.ts';
import { barriersIn, fitsAcross, SIZES } from './looks.ts';
import { openScreen } from './standing.ts';
import { type Visit, visit } from './visit.ts';
import { entries } from './words-page.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

/** Presses a button by key; the file that is saved then. */
async function saved(page: Page, button: string) {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).press('Enter');
  const file = await download;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

describe('sheets and slides from their screens', () => {
  it('are made in the browser, and again without a network', async () => {
    current = await visit({ path: '#/plan', upTo: 40 });
    const { page, errors, requests, url } = current;
    await page.getByRole('list', { name: 'Words to blend' }).waitFor();
    const slides = await saved(page, 'Slides');
    expect(slides.name).toBe('slides.pptx');
    const parts = Object.keys(unzipSync(slides.bytes));
    expect(parts.filter((name) => /^ppt\/slides\/slide\d+\.xml$/.test(name))).toHaveLength(32);
    const plan = await saved(page, 'Plan on paper');
    expect(plan.name).toBe('plan-letter.pdf');
    expect((await renderPdf(plan.bytes, 20)).length).toBeLessThanOrEqual(2);
    for (const [width, height] of SIZES) await fitsAcross(page, width, height);
    expect(await barriersIn(page)).toEqual([]);
    await openScreen(page, 'words', entries(page));
    expect((await saved(page, 'Print sheet')).name).toBe('words-letter.pdf');
    await openScreen(page, 'dictation', dictated(page));
    const outside = requests.filter((address) => !address.startsWith(url));
    expect(outside.filter((address) => !address.startsWith('blob:'))).toEqual([]);
    await current.stopServer();
    const dictation = await saved(page, 'Print sheet');
    expect(await renderPdf(dictation.bytes, 20)).toHaveLength(2);
    expect(errors).toEqual([]);
  });
});

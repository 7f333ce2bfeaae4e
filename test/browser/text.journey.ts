import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { stepOf } from '../../core/sequence/step-of.ts';
import { barriersIn, fitsAcross, isEnd, SIZES } from './looks.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

async function atText(upTo: number): Promise<Page> {
  current = await visit({ path: '#/text', upTo });
  return current.page;
}

const share = (page: Page) => page.getByRole('status').filter({ hasText: 'can be read:' });
const marked = (page: Page) =>
  page.getByRole('region', { name: 'The text' }).getByRole('button', { name: /^(?!Show more)/ });

const field = (page: Page) => page.getByLabel('Your text');

describe('a text that is put in', () => {
  it('is judged at once, its blocked words marked, and each says why on focus and hover', async () => {
    const step = stepOf(SEQUENCE, { kind: 'card', id: 'sh=SH' }) ?? Number.NaN;
    const page = await atText(step - 1);
    await field(page).fill('The cat sat on a mat. The cat had a ship.');
    await page.getByText('10 of 11 words').waitFor();
    await share(page).getByText('90%', { exact: true }).waitFor();
    expect(await marked(page).allTextContents()).toEqual(['ship']);
    await marked(page).focus();
    await page.getByRole('tooltip').getByText(`sh comes at step ${step}`).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('tooltip').waitFor({ state: 'detached' });
    await marked(page).hover();
    await page.getByRole('tooltip').waitFor();
    await page.getByText(`Step ${step} (sh) makes it 95% decodable.`).waitFor();
  });

  it('is remembered, and comes back when it was emptied by mistake', async () => {
    const page = await atText(30);
    await field(page).fill('A cat sat.');
    await page.reload({ waitUntil: 'load' });
    expect(await field(page).inputValue()).toBe('A cat sat.');
    await page.getByRole('button', { name: 'Empty it' }).click();
    await expect.poll(() => field(page).inputValue()).toBe('');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => field(page).inputValue()).toBe('A cat sat.');
  });

  it('is read from a file; a file that is no text is refused and nothing is lost', async () => {
    const page = await atText(30);
    const file = page.getByLabel('Open a text file');
    await file.setInputFiles({
      name: 'story.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from([0x93, 0x41, 0x20, 0x63, 0x61, 0x74, 0x2e, 0x94]),
    });
    await share(page).waitFor();
    // 0x93 and 0x94 are the curly quotes of windows-1252 (Encoding Standard, WHATWG).
    expect(await field(page).inputValue()).toBe('“A cat.”');
    await file.setInputFiles({
      name: 'book.pdf',
      mimeType: 'application/pdf',
      buffer: Buffer.from('%PDF-1.7'),
    });
    await page.getByText('This file holds no plain text.').waitFor();
    expect(await field(page).inputValue()).toBe('“A cat.”');
  });

  it('of 100,000 words is judged quickly and shown a part at a time', async () => {
    const page = await atText(60);
    await page.getByRole('button', { name: 'Try it with a short text' }).click();
    await share(page).waitFor();
    const sample = await field(page).inputValue();
    const words = sample.match(/[A-Za-z]+/g)?.length ?? 1;
    await page.getByLabel('Open a text file').setInputFiles({
      name: 'book.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from(`${sample}\n`.repeat(Math.ceil(100_000 / words))),
    });
    await share(page)
      .filter({ hasText: /of 100,\d\d\d words/ })
      .waitFor();
    await page.getByText('the first 400 of').waitFor();
    const before = await marked(page).count();
    await page.getByRole('button', { name: 'Show more' }).first().click();
    expect(await marked(page).count()).toBeGreaterThan(before);
  });

  it('passes the accessibility checks and fits, from a desk to a small phone', async () => {
    const page = await atText(30);
    await page.getByRole('button', { name: 'Try it with a short text' }).click();
    await share(page).waitFor();
    await page.getByText('All steps as a table').click();
    await marked(page).first().focus();
    for (const [width, height] of SIZES) {
      await fitsAcross(page, width, height);
      if (isEnd(width)) expect(await barriersIn(page, 'all'), `${width} wide`).toEqual([]);
    }
    expect(current?.errors).toEqual([]);
  });
});

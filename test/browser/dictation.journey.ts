import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { isWritable, sentenceWords } from '../../core/dictation/needs.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { taughtUpTo as taughtAt } from '../../core/sequence/teach.ts';
import { builtLexicon } from '../built-lexicon.ts';
import { dictated, said, writingLines } from './dictation-page.ts';
import { barriersIn, fitsAcross, isEnd, SIZES } from './looks.ts';
import { choices, swapSheet } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

async function atDictation(upTo: number): Promise<Page> {
  current = await visit({ path: '#/dictation', upTo });
  return current.page;
}

describe('a dictation', () => {
  it('asks only for what was taught, and is the same after a reload', async () => {
    const page = await atDictation(45);
    await dictated(page).first().waitFor();
    const before = await said(page);
    expect(before).toHaveLength(8);
    const taught = taughtAt(SEQUENCE, 45);
    for (const word of before.flatMap((text) => sentenceWords(text, builtLexicon))) {
      expect(isWritable(word, taught), word.word).toBe(true);
    }
    await page.reload({ waitUntil: 'load' });
    await dictated(page).first().waitFor();
    expect(await said(page)).toEqual(before);
  });

  it('lets her swap one by the keyboard, take one out, and undo it', async () => {
    const page = await atDictation(45);
    await dictated(page).first().waitFor();
    const before = await said(page);
    await dictated(page).nth(1).focus();
    await page.keyboard.press('Enter');
    await choices(page).first().waitFor();
    await page.keyboard.press('Enter');
    const after = await said(page);
    expect(after[1]).not.toBe(before[1]);
    expect(after.toSpliced(1, 1)).toEqual(before.toSpliced(1, 1));
    await page.keyboard.press('Control+z');
    expect(await said(page)).toEqual(before);
    await dictated(page, 'Sentences').first().click();
    await page.getByRole('button', { name: 'Leave it out today' }).click();
    expect(await said(page)).toEqual(before.toSpliced(6, 1));
  });

  it('is as long as she sets, and another one after a reshuffle', async () => {
    const page = await atDictation(60);
    await page.getByLabel('How many words').selectOption('10');
    await page.getByLabel('How many sentences').selectOption('4');
    expect(await dictated(page, 'Words').count()).toBe(10);
    expect(await dictated(page, 'Sentences').count()).toBe(4);
    const before = await said(page);
    await page.getByRole('button', { name: 'Reshuffle' }).click();
    expect(await said(page)).not.toEqual(before);
  });

  it('says kindly that too little was taught', async () => {
    const page = await atDictation(1);
    await page.getByText('Too little was taught for a dictation yet').waitFor();
    expect(await dictated(page).count()).toBe(0);
  });

  it('prints a teacher’s list and a line to write on for each word and sentence', async () => {
    const page = await atDictation(45);
    await dictated(page).first().waitFor();
    expect(await writingLines(page, 'words').count()).toBe(0);
    expect(await page.getByRole('banner').count()).toBe(1);
    await page.emulateMedia({ media: 'print' });
    expect(await writingLines(page, 'words').count()).toBe(6);
    expect(await writingLines(page, 'sentences').count()).toBe(2);
    expect(await page.getByRole('banner').count()).toBe(0);
  });

  it('is reached from the auditory part of today’s warm-up', async () => {
    const page = await atDictation(45);
    await page.getByRole('link', { name: 'Today', exact: true }).click();
    await page.getByRole('link', { name: 'Words and sentences to dictate' }).click();
    await dictated(page).first().waitFor();
  });

  it('passes the accessibility checks and fits, from a desk to a small phone', async () => {
    const page = await atDictation(60);
    await dictated(page).first().waitFor();
    for (const [width, height] of SIZES) {
      await fitsAcross(page, width, height);
      await dictated(page, 'Sentences').first().click();
      await choices(page).first().waitFor();
      if (isEnd(width)) expect(await barriersIn(page, 'all'), `${width} wide`).toEqual([]);
      await page.keyboard.press('Escape');
      await swapSheet(page).waitFor({ state: 'detached' });
    }
    expect(current?.errors).toEqual([]);
  });
});

import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { SCREEN_DATA } from '../../core/words/screen-data.ts';
import { createWordScreen } from '../../core/words/word-screen.ts';
import { builtLexicon } from '../built-lexicon.ts';
import { barriersIn, fitsAcross, isEnd, SIZES } from './looks.ts';
import { type Visit, visit } from './visit.ts';
import { cardsOf, entries, lines, wordSheet, words } from './words-page.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

async function atWords(upTo: number): Promise<Page> {
  current = await visit({ path: '#/words', upTo });
  const { page } = current;
  await page
    .getByRole('region', { name: 'Words found' })
    .or(page.getByRole('button', { name: 'Look among all words' }))
    .waitFor();
  return page;
}

describe('the word finder', () => {
  it('shows only words that the class can read and that are fit for it', async () => {
    const page = await atWords(33);
    const screen = createWordScreen(SCREEN_DATA);
    await page.getByRole('button', { name: 'Show more' }).click();
    const shown = await words(page);
    expect(shown.length).toBeGreaterThan(200);
    expect(shown).not.toContain('chip');
    for (const word of shown) {
      for (const { sounds } of builtLexicon.readings(builtLexicon.indexOf(word))) {
        expect(screen.judge(word, sounds).verdict, word).toBe('clear');
      }
    }
  });

  it('finds by shape, by a card in a position and by contrast, and remembers what was asked', async () => {
    const page = await atWords(60);
    await page.getByLabel('Shape').selectOption('cvce');
    await page.getByText('make', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Begin again' }).click();
    await page.getByRole('button', { name: /^With the card/ }).click();
    await page.getByLabel('Letters of the card').fill('sh');
    await page.keyboard.press('Enter');
    await page.getByLabel('Where the card stands').selectOption('ending');
    await page.getByText('ship', { exact: true }).waitFor({ state: 'detached' });
    await page.getByText('fish', { exact: true }).waitFor();
    for (const word of await words(page)) expect(word).toMatch(/sh$/);
    await page.getByRole('button', { name: 'Begin again' }).click();
    for (const [side, letter] of [
      ['First', 'i'],
      ['Second', 'e'],
    ]) {
      await page.getByRole('button', { name: `${side} card of the pair` }).click();
      await page.getByLabel('Letters of the card').fill(letter as string);
      await page.keyboard.press('Enter');
    }
    await lines(page, 'Pairs').first().waitFor();
    const pairs = await lines(page, 'Pairs').allTextContents();
    expect(pairs).toContain('pin/pen');
    await page.reload({ waitUntil: 'load' });
    await lines(page, 'Pairs').first().waitFor();
    expect(await lines(page, 'Pairs').allTextContents()).toEqual(pairs);
  });

  it('opens a word to its cards, syllables and meaning by the keyboard', async () => {
    const page = await atWords(60);
    await page.getByLabel('Syllables').selectOption('2');
    await page.getByRole('button', { name: /^With the card/ }).click();
    await page.getByLabel('Letters of the card').fill('bb');
    await page.keyboard.press('Enter');
    const rabbit = page.getByRole('button', { name: 'rabbit', exact: true });
    await rabbit.focus();
    await page.keyboard.press('Enter');
    const sheet = wordSheet(page, 'rabbit');
    await sheet.getByText('rab·bit').waitFor();
    expect(await cardsOf(sheet)).toEqual(['r', 'a', 'bb', 'i', 't']);
    await sheet.getByText('rab closed, bit closed').waitFor();
    await page.keyboard.press('Escape');
    await wordSheet(page).waitFor({ state: 'detached' });
    expect(await rabbit.evaluate((button) => button === document.activeElement)).toBe(true);
  });

  it('marks the irregular part of a word', async () => {
    const page = await atWords(60);
    await page.getByLabel('Irregular words too').check();
    await page.getByRole('button', { name: 'was', exact: true }).click();
    await page.getByText('Irregular: a says /ŭ/.').waitFor();
    expect(await cardsOf(wordSheet(page, 'was'), /, irregular/)).toEqual(['a']);
  });

  it('copies the list, one word a line', async () => {
    const page = await atWords(33);
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy the list' }).click();
    await page.getByText('120 words copied.').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split('\n')).toEqual(await words(page));
  });

  it('says what to do where nothing was taught, and where nothing is found', async () => {
    const page = await atWords(0);
    await page.getByRole('button', { name: 'Look among all words' }).click();
    await entries(page).first().waitFor();
    await page.getByLabel('Shape').selectOption('vc');
    await page.getByLabel('Syllables').selectOption('5');
    await page.getByText('There is no such word.').waitFor();
    await page.getByRole('button', { name: 'Begin again' }).last().click();
    await entries(page).first().waitFor();
  });

  it('passes the accessibility checks and fits, from a desk to a small phone', async () => {
    const page = await atWords(10);
    for (const [width, height] of SIZES) {
      await fitsAcross(page, width, height);
      await entries(page).first().click();
      await wordSheet(page).waitFor();
      if (isEnd(width)) expect(await barriersIn(page, 'all'), `${width} wide`).toEqual([]);
      await page.keyboard.press('Escape');
      await wordSheet(page).waitFor({ state: 'detached' });
    }
    expect(current?.errors).toEqual([]);
  });
});

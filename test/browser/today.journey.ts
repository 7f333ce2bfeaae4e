import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { stepOf } from '../../core/sequence/step-of.ts';
import { stageCards } from './stage-page.ts';
import { openScreen } from './standing.ts';
import { choices, flips, partOf, realFlips, swappable, swapSheet, words } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

async function atToday(upTo: number): Promise<Page> {
  current = await visit({ path: '#/today', upTo });
  await partOf(current.page, 'Visual').waitFor();
  return current.page;
}

describe('today’s warm-up', () => {
  it('lets her swap a flip by the keyboard, one card still turning at a time, and undo it', async () => {
    const page = await atToday(40);
    const before = await words(page);
    expect(before).toHaveLength(30);
    for (let place = 3; place < 27; place += 1) {
      await flips(page).nth(place).focus();
      await page.keyboard.press('Enter');
      await swapSheet(page).waitFor();
      if ((await choices(page).count()) > 0) {
        const chosen = await choices(page).first().textContent();
        await page.keyboard.press('Enter');
        const after = await words(page);
        expect(after[place]).toBe(chosen);
        expect(before).not.toContain(chosen);
        expect(after.toSpliced(place, 1)).toEqual(before.toSpliced(place, 1));
        await page.keyboard.press('Control+z');
        expect(await words(page)).toEqual(before);
        return;
      }
      await page.keyboard.press('Escape');
    }
    throw new Error('no flip could be swapped');
  });

  it('says what a real word means when its flip is reached', async () => {
    const page = await atToday(40);
    const real = realFlips(page).first();
    await real.focus();
    const word = (await real.textContent()) ?? '';
    await partOf(page, 'Blending').getByRole('status').getByText(word, { exact: true }).waitFor();
  });

  it('swaps a card and a sound, none of them twice', async () => {
    const page = await atToday(40);
    await swappable(page, 'Visual').nth(2).click();
    await choices(page).first().click();
    const cards = await swappable(page, 'Visual').allTextContents();
    expect(new Set(cards).size).toBe(cards.length);
    await swappable(page, 'Auditory').nth(1).click();
    const sound = await choices(page).first().textContent();
    await choices(page).first().click();
    expect(await swappable(page, 'Auditory').nth(1).textContent()).toBe(sound);
  });

  it('keeps to her sizes for each group, and takes a card and a sound more', async () => {
    const page = await atToday(40);
    const cards = swappable(page, 'Visual').and(page.getByLabel(/^(?!the word )/));
    const sounds = swappable(page, 'Auditory').and(page.getByLabel(/^(?!the word )/));
    await page.getByRole('combobox', { name: /^Cards/ }).selectOption('8');
    await expect.poll(() => cards.count()).toBe(8);
    await page.getByRole('combobox', { name: /^Sounds/ }).selectOption('4');
    await expect.poll(() => sounds.count()).toBe(4);
    await page.getByRole('button', { name: 'Add a card' }).click();
    await page.getByRole('dialog').getByRole('button').first().click();
    await page.getByRole('button', { name: 'Add a sound' }).click();
    await page.getByRole('dialog').getByRole('button').first().click();
    await page.reload({ waitUntil: 'load' });
    await expect.poll(() => cards.count()).toBe(9);
    expect(await sounds.count()).toBe(5);
    await openScreen(page, 'class', page.getByLabel('Add a small group'));
    await page.getByLabel('Add a small group').fill('Maple');
    await page.getByRole('button', { name: 'Add the group' }).click();
    await openScreen(page, 'today', flips(page));
    await page.getByRole('button', { name: /^Maple/ }).click();
    await page.getByRole('heading', { name: /^Maple/ }).waitFor();
    await page.getByRole('combobox', { name: /^Cards/ }).selectOption('6');
    await expect.poll(() => cards.count()).toBe(6);
    await page
      .getByRole('button', { name: /^Whole class/ })
      .first()
      .click();
    await expect.poll(() => cards.count()).toBe(9);
    expect(await page.getByRole('combobox', { name: /^Cards/ }).inputValue()).toBe('8');
  });

  it('keeps to the number of flips and the share of real words that she sets', async () => {
    const page = await atToday(40);
    await page.getByLabel('Flips').selectOption('20');
    expect(await flips(page).count()).toBe(20);
    await page.getByLabel('Real words').selectOption('0.75');
    expect(await realFlips(page).count()).toBe(15);
    await page.getByText('More wishes').click();
    await page.getByLabel('Side by side').selectOption({ label: 'b and d' });
    const run = (await words(page)).map((word) => word.replaceAll(/[bd]/g, '•'));
    expect(run.some((word, at) => at > 0 && word.includes('•') && word === run[at - 1])).toBe(true);
    await page.getByLabel('Order').selectOption('easy ones first');
    await page.reload({ waitUntil: 'load' });
    expect(await page.getByLabel('Flips').inputValue()).toBe('20');
    expect(await page.getByLabel('Side by side').inputValue()).toBe('b=B d=D');
    expect(await page.getByLabel('Order').inputValue()).toBe('rise');
  });

  it('is another one after a reshuffle, and the same one after a reload', async () => {
    const page = await atToday(40);
    const first = await words(page);
    await page.reload({ waitUntil: 'load' });
    await flips(page).first().waitFor();
    expect(await words(page)).toEqual(first);
    await page.getByRole('button', { name: 'Reshuffle' }).click();
    expect(await words(page)).not.toEqual(first);
  });

  it('says kindly what can be had when too little was taught, and still goes on', async () => {
    const page = await atToday(1);
    const note = page.getByRole('note');
    await note.waitFor();
    expect((await note.textContent())?.length).toBeGreaterThan(40);
    await page.getByRole('button', { name: 'Start on the stage' }).click();
    await stageCards(page).first().waitFor();
  });

  it('tells what stays hidden only in general words', async () => {
    const page = await atToday(stepOf(SEQUENCE, { kind: 'card', id: 'i_e=AY' }) ?? 0);
    await page.getByText(/stays? hidden:/).click();
    const reasons = await page
      .getByRole('group')
      .filter({ has: page.getByText(/stays? hidden:/) })
      .getByRole('listitem')
      // What she may allow is asked by name.
      .filter({ hasNot: page.getByRole('button') })
      .allTextContents();
    expect(reasons.length).toBeGreaterThan(0);
    for (const reason of reasons) expect(reason).toMatch(/^\d+ (would break|sound like|are)/);
  });
});

import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { DAY, setClocks } from './clock.ts';
import { barriersIn } from './looks.ts';
import { flips, partOf, swappable, words } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterEach(() => current?.end());

const pressed = (page: Page) =>
  page.getByRole('dialog').getByRole('button', { name: 'Every day' }).click();

describe('what comes every day', () => {
  it('is a card, a word by sight, a sound and a word of the run that she pins, until she takes the pin off', async () => {
    current = await visit({ path: '#/today', upTo: 40 });
    const { page, errors } = current;
    await flips(page).first().waitFor();
    for (const at of [5, 13]) {
      await swappable(page, 'Visual').nth(at).click();
      await pressed(page);
      await page.keyboard.press('Escape');
    }
    await swappable(page, 'Auditory').nth(4).click();
    await pressed(page);
    await page.keyboard.press('Escape');
    const pinned = page.getByRole('listitem').filter({ hasText: 'every day' });
    await expect.poll(() => pinned.count()).toBe(3);
    const faces = () => pinned.getByRole('button').allTextContents();
    const before = (await faces()).toSorted();

    await page.getByRole('button', { name: 'Add a word of your own' }).click();
    await page.getByRole('textbox', { name: 'The word' }).fill('said');
    await page.getByRole('button', { name: 'Put it in the run' }).click();
    await page.getByText('a word to know by sight').waitFor();
    expect(await barriersIn(page)).toEqual([]);
    const own = ['ship', 'fish', 'chip', 'shop', 'dish'];
    const run = await words(page);
    const word = own.find((each) => !run.includes(each)) ?? '';
    await page.getByRole('textbox', { name: 'The word' }).fill(word);
    await page.getByRole('dialog').getByLabel('Every day').check();
    await page.getByRole('button', { name: 'Put it in the run' }).click();
    await expect.poll(() => words(page)).toContain(word);
    expect(await flips(page).count()).toBe(31);

    await page.getByRole('button', { name: 'Reshuffle' }).click();
    await expect.poll(async () => (await faces()).toSorted()).toEqual(before);
    expect(await words(page)).toContain(word);
    await setClocks(page, DAY);
    await page.reload({ waitUntil: 'load' });
    await flips(page).first().waitFor();
    await page.getByRole('button', { name: 'Reshuffle' }).click();
    await expect.poll(async () => (await faces()).toSorted()).toEqual(before);

    await pinned.first().getByRole('button').click();
    await pressed(page);
    await page.keyboard.press('Escape');
    await expect.poll(() => pinned.count()).toBe(2);
    await page.keyboard.press('Control+z');
    await expect.poll(() => pinned.count()).toBe(3);
    expect(await partOf(page, 'Visual').count()).toBe(1);
    expect(errors).toEqual([]);
  });
});

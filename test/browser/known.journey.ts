import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { type Day, makeDay, parseDay } from '../../core/learners/day.ts';
import { today } from '../../web/state/day.ts';
import { observedClass } from '../observed-class.ts';
import { bringCopy, brought, children } from './class-page.ts';
import { barriersIn, fitsAcross, SIZES } from './looks.ts';
import { openScreen } from './standing.ts';
import { flips, partOf } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

/** A class of five, four of whom have read six cards on each of the last ten days. */
async function atRoom4(): Promise<Page> {
  current = await visit({ path: '#/known' });
  const { page } = current;
  await page.getByRole('link', { name: 'Add your children' }).click();
  const now = parseDay(today()) as Day;
  const days = Array.from({ length: 10 }, (_, ago) => makeDay(now - 10 + ago));
  const path = join(tmpdir(), `observed-${process.pid}.jsonl`);
  writeFileSync(path, observedClass(days));
  await bringCopy(page).setInputFiles(path);
  await brought(page).waitFor();
  return page;
}

/** Nothing bars the way, and it fits every window. */
async function looksRight(page: Page): Promise<void> {
  expect(await barriersIn(page)).toEqual([]);
  for (const [width, height] of SIZES.toReversed()) await fitsAcross(page, width, height);
}

describe('what they know', () => {
  it('is a map to walk by the keyboard, by her own thresholds, and a page on each child', async () => {
    const page = await atRoom4();
    await page.getByRole('link', { name: 'What the whole class knows' }).click();
    const sounds = page.getByRole('combobox', { name: 'Sounds' });
    await sounds.selectOption('all');
    const of = (name: string) => page.getByRole('row', { name: new RegExp(`^${name} `) });
    const cell = (name: string, word: string) => of(name).getByRole('link', { name: word });
    expect(await cell('Bram', 'shaky.').count()).toBe(2);
    expect(await cell('Tam', 'shaky.').count()).toBe(2);
    expect(await of('Zadie').getByRole('cell').count()).toBe(
      await cell('Zadie', 'not yet seen').count(),
    );
    await page.getByText('2 of 5 say /ĕ/ for short i:').waitFor();
    await cell('Bram', 'Missed 3 of the last 3. Right 0 of 10').first().waitFor();
    await page.getByText('practice notes, not a diagnosis').waitFor();

    await page.getByText('Secure from 80%, shaky below 60%').click();
    await page.getByLabel('Shaky below').fill('90');
    await page.keyboard.press('Enter');
    await page.getByText('write 80 or less there').waitFor();
    await page.getByLabel('Shaky below').fill('1');
    await page.getByLabel('Secure from').fill('99');
    await page.keyboard.press('Enter');
    // What was missed each time is shaky, wherever the thresholds stand; nothing is that sure.
    await expect.poll(() => cell('Bram', 'secure.').count()).toBe(0);
    expect(await cell('Bram', 'shaky.').count()).toBe(2);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => cell('Bram', 'secure.').count()).toBe(4);

    await sounds.selectOption('shaky');
    await looksRight(page);
    await sounds.selectOption('read');
    await page.getByRole('combobox', { name: 'Sort' }).selectOption('name');
    await page.getByRole('table').first().getByRole('cell').getByRole('link').first().focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('End');
    await page.keyboard.press('Home');
    await page.keyboard.press('Enter');
    const sheet = page.getByRole('complementary');
    await sheet.getByRole('heading', { name: 'Bram' }).waitFor();
    await sheet.getByText('said /ĭ/').first().waitFor();
    await looksRight(page);
    await page.keyboard.press('ArrowDown');
    await sheet.getByRole('heading', { name: 'Odalys' }).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => sheet.count()).toBe(0);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');

    const childRows = page.getByRole('rowheader', { name: /^(Bram|Odalys|Tam|Tova|Wren)\b/ });
    const seek = page.getByRole('searchbox', { name: 'Find a child or a sound' });
    await seek.fill('wr');
    await expect.poll(() => childRows.count()).toBe(1);
    await seek.fill('e');
    await page.getByText('5 of the children, 1 of the sounds').waitFor();
    await seek.fill('zzz');
    await page.getByText('No child and no sound here begins with “zzz”').waitFor();
    await seek.fill('');
    await page.getByRole('button', { name: 'Show them' }).first().click();
    await expect.poll(() => childRows.count()).toBe(2);
    await page.getByRole('button', { name: 'Show everyone again' }).click();

    await sheet.getByRole('link', { name: 'All about Bram' }).click();
    await page.getByRole('heading', { name: 'Bram' }).waitFor();
    await page.getByText('Hear Bram read').waitFor();
    await page.getByText('says /ĭ/ for short e: 10 of 10').waitFor();
    await page.locator('.growth-picture svg').waitFor();
    await page.getByText('The numbers').click();
    await page.getByRole('columnheader', { name: 'Likely right', exact: true }).waitFor();
    await page.getByRole('row', { name: /said \/ĭ\/ .*10 times/ }).waitFor();
    await looksRight(page);
    expect(current?.errors).toEqual([]);
  });

  it('becomes groups for tomorrow: moved by hand, made with one act, undone, and today’s plan', async () => {
    const page = await atRoom4();
    await openScreen(page, 'known?show=groups', page.getByRole('combobox', { name: 'Groups' }));
    await page.getByRole('combobox', { name: 'Groups' }).selectOption('2');
    const group = (n: number) => page.getByRole('region', { name: new RegExp(`^Group ${n}:`) });
    const names = async (n: number) => (await children(group(n)).allTextContents()).join(' ');
    const together = [await names(1), await names(2)].map((all) => all.replace(/ ?Zadie/, ''));
    expect(together.sort()).toEqual(['Bram Odalys', 'Tam Wren']);
    await page.getByText('Nothing was noted of Zadie alone yet').waitFor();
    await looksRight(page);

    const [from, to] = (await names(1)).includes('Zadie') ? [1, 2] : [2, 1];
    await page.getByRole('button', { name: 'Zadie' }).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await expect.poll(() => names(to)).toContain('Zadie');
    expect(await names(from)).not.toContain('Zadie');
    await page.getByRole('button', { name: 'Make these groups' }).click();
    await page.getByText('These are your groups now.').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Make these groups' }).click();
    await page.getByText('Earlier groups').click();
    await page
      .getByText(/came to Group \d today/)
      .first()
      .waitFor();

    await page.getByRole('link', { name: 'This group' }).click();
    await page.getByRole('heading', { name: 'What they need next' }).waitFor();
    await looksRight(page);
    await openScreen(page, 'today', flips(page));
    await partOf(page, 'Visual')
      .getByText(/missed \d of \d/)
      .first()
      .waitFor();
    await page.getByText('Laid there for practice').waitFor();
    expect(current?.errors).toEqual([]);
  });
});

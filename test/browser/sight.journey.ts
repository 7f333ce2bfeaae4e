import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { EventBodies } from '../../core/log/event.ts';
import { barriersIn } from './looks.ts';
import { allKept, recorded } from './recorded.ts';
import { openScreen } from './standing.ts';
import { partOf } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

/** One word known by sight from the plan to the pages, so the tests follow each other. */
let current: Visit;
let page: Page;
let word = '';

beforeAll(async () => {
  current = await visit({ path: '#/class', upTo: 24 });
  page = current.page;
  await page.getByLabel('Add children').fill('Wren\nOdalys');
  await page.getByRole('button', { name: 'Add 2 children' }).click();
  await openScreen(page, 'today', '.visual-cards .slip');
});
afterAll(() => current?.end());

const slips = (part: 'Visual' | 'Auditory') => partOf(page, part).locator('.slip');

/** What the log says was heard at the marks, the card by its id, the latest last. */
async function marks(): Promise<readonly (readonly [card: string | undefined, heard: unknown])[]> {
  await allKept(page);
  const events = await recorded(page);
  return events
    .filter(({ kind }) => kind === 'marked')
    .map(({ id, body }) => {
      const given = events.findLast(
        (other) => other.kind === 'amended' && (other.body as { mark: string }).mark === id,
      )?.body as EventBodies['amended'] | undefined;
      return [(body as EventBodies['marked']).cards[0], given?.value];
    });
}

async function goOnTo(words: string): Promise<void> {
  const there = page.locator('.desk-said').getByText(words);
  for (let press = 0; press < 40 && (await there.count()) === 0; press += 1) {
    await page.keyboard.press('Space');
  }
  await there.waitFor();
}

describe('a word known by sight', () => {
  it('stands in the plan, as many as she wants, with the part to learn dotted', async () => {
    expect(await slips('Visual').count()).toBe(4);
    expect(await slips('Auditory').count()).toBe(2);
    expect(await page.locator('.visual-cards .by-heart').count()).toBeGreaterThan(0);
    await page.getByLabel('Words by sight').selectOption('6');
    await expect.poll(() => slips('Visual').count()).toBe(6);
    await partOf(page, 'Visual').getByRole('button', { name: 'Add a word by sight' }).click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^the word/ })
      .first()
      .click();
    await expect.poll(() => slips('Visual').count()).toBe(7);
    await page.getByLabel('Words to spell').selectOption('1');
    await expect.poll(() => slips('Auditory').count()).toBe(1);
    word = (await slips('Visual').first().textContent()) ?? '';
    expect(await barriersIn(page)).toEqual([]);
  });

  it('is read on the desk, marked like a card, and shows its part to learn on the stage', async () => {
    await openScreen(page, 'desk', '.mark-card');
    await page.getByLabel('Call on children').check();
    await goOnTo('a word by sight');
    expect(await page.locator('.mark-row.of-now .slip').textContent()).toBe(word);
    await page.keyboard.press('Digit1');
    await page.getByRole('button', { name: /^sounded out/ }).click();
    expect((await marks()).at(-1)).toEqual([
      `${word.toLowerCase()}=sight`,
      { kind: 'sounded-out' },
    ]);
    expect(await barriersIn(page)).toEqual([]);
    await openScreen(page, 'stage', '.row .slip');
    expect(await page.locator('.row').getAttribute('class')).toContain('untold');
    await page.keyboard.press('KeyT');
    await expect.poll(() => page.locator('.row').getAttribute('class')).not.toContain('untold');
  });

  it('is said and spelled in the auditory part; the edge of the stage does not spell it', async () => {
    await openScreen(page, 'desk', '.mark-card');
    await goOnTo('They say it, spell it aloud and write it.');
    const said = (await page.locator('.desk-sound').textContent()) ?? '';
    expect(said).toMatch(/^“[A-Za-z']+”$/);
    await page.keyboard.press('Digit1');
    await page.getByRole('button', { name: /^left out/ }).click();
    expect((await marks()).at(-1)).toEqual([
      `${said.slice(1, -1).toLowerCase()}=sight`,
      { kind: 'left-out' },
    ]);
    await openScreen(page, 'stage', '.writing-line');
    expect(await page.locator('.edge-said').textContent()).not.toContain(said.slice(1, -1));
    await page.keyboard.press('KeyT');
    await expect.poll(() => page.locator('.row .slip').textContent()).toBe(said.slice(1, -1));
  });

  it('stands in the class map, on the child’s own page and on the page for a meeting', async () => {
    await openScreen(page, 'known', '.map-table');
    await page.getByRole('combobox', { name: 'Sounds' }).selectOption('words');
    const heads = page.locator('.map-table thead .slip');
    expect(await heads.allTextContents()).toContain(word);
    const bodies = (await recorded(page)).flatMap(({ kind, body }) =>
      kind === 'marked' ? [body as EventBodies['marked']] : [],
    );
    const child = bodies[0]?.child;
    await openScreen(page, `known?child=${child}`, '.seen-table .slip');
    await page.locator('.seen-table').getByText('sounded it out once').waitFor();
    await openScreen(page, `pages?child=${child}`, '.paper-page .slip');
    await page
      .locator('.paper-page')
      .getByText(/spellings and \d+ words by sight/)
      .waitFor();
  });

  it('is asked in a short check of its own, and counted', async () => {
    await openScreen(page, 'check', '.check-setup');
    await page.getByLabel('Words at sight').check();
    await page.getByLabel('No clock').check();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.locator('.check-card').first().click();
    await page.locator('.check-card').first().click();
    await page.getByRole('dialog').getByRole('button', { name: 'another word' }).click();
    await page.getByRole('button', { name: 'All of it was read' }).click();
    await page.locator('.check-missed').getByText('said another word').waitFor();
    await page.getByText('words right', { exact: true }).waitFor();
    expect(await barriersIn(page)).toEqual([]);
  });

  it('is printed on cards', async () => {
    await openScreen(page, 'print', 'h1');
    await page.getByRole('combobox', { name: 'Which cards' }).selectOption('sight');
    await page.getByText(/on \d+ sheets/).waitFor();
    expect(current.errors).toEqual([]);
  });
});

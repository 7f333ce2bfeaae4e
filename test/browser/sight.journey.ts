import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { EventBodies } from '../../core/log/event.ts';
import { cardOf, items, whatWasMissed } from './check-page.ts';
import { atNow, markCards } from './desk-page.ts';
import { barriersIn } from './looks.ts';
import { allKept, recorded } from './recorded.ts';
import { edge, stageCards, stageLetters, stageRow, writingLine } from './stage-page.ts';
import { openScreen } from './standing.ts';
import { partOf, swappable } from './today-page.ts';
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
  await openScreen(page, 'today', slips('Visual'));
});
afterAll(() => current?.end());

/** The words known by sight in a part of the plan. */
const slips = (part: 'Visual' | 'Auditory') =>
  swappable(page, part).and(page.getByLabel(/^the word /));

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
  const there = atNow(page).getByText(words);
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
    await openScreen(page, 'desk', markCards(page));
    await page.getByLabel('Call on children').check();
    await goOnTo('a word by sight');
    await markCards(page)
      .and(page.getByLabel(`the word ${word}: broke`))
      .waitFor();
    await page.keyboard.press('Digit1');
    await page.getByRole('button', { name: /^sounded out/ }).click();
    expect((await marks()).at(-1)).toEqual([
      `${word.toLowerCase()}=sight`,
      { kind: 'sounded-out' },
    ]);
    expect(await barriersIn(page)).toEqual([]);
    await openScreen(page, 'stage', stageCards(page));
    const isUntold = async () => (await stageRow(page, 'untold').count()) > 0;
    await expect.poll(isUntold).toBe(true);
    await page.keyboard.press('KeyT');
    await expect.poll(isUntold).toBe(false);
    expect(await stageCards(page).count()).toBe(1);
  });

  it('is said and spelled in the auditory part; the edge of the stage does not spell it', async () => {
    await openScreen(page, 'desk', markCards(page));
    await goOnTo('They say it, spell it aloud and write it.');
    const said =
      (await atNow(page)
        .getByText(/^“[A-Za-z']+”$/)
        .textContent()) ?? '';
    expect(said).toMatch(/^“[A-Za-z']+”$/);
    await page.keyboard.press('Digit1');
    await page.getByRole('button', { name: /^left out/ }).click();
    expect((await marks()).at(-1)).toEqual([
      `${said.slice(1, -1).toLowerCase()}=sight`,
      { kind: 'left-out' },
    ]);
    await openScreen(page, 'stage', writingLine(page));
    expect(await edge(page).textContent()).not.toContain(said.slice(1, -1));
    await page.keyboard.press('KeyT');
    await expect.poll(() => stageLetters(page)).toBe(said.slice(1, -1));
  });

  it('stands in the class map, on the child’s own page and on the page for a meeting', async () => {
    const sounds = page.getByRole('combobox', { name: 'Sounds' });
    await openScreen(page, 'known', sounds);
    await sounds.selectOption('words');
    await page.getByRole('columnheader', { name: `the word ${word}` }).waitFor();
    const bodies = (await recorded(page)).flatMap(({ kind, body }) =>
      kind === 'marked' ? [body as EventBodies['marked']] : [],
    );
    const child = bodies[0]?.child;
    const rows = page.getByRole('row', { name: `the word ${word}` });
    await openScreen(page, `known?child=${child}`, rows);
    await rows.filter({ hasText: 'sounded it out once' }).waitFor();
    await openScreen(page, `pages?child=${child}`, rows);
    await page
      .getByRole('article')
      .getByText(/spellings and \d+ words by sight/)
      .waitFor();
  });

  it('is asked in a short check of its own, and counted', async () => {
    await openScreen(page, 'check', page.getByLabel('Who reads'));
    await page.getByLabel('Words by sight').check();
    await page.getByLabel('No clock').check();
    await page.getByRole('button', { name: 'Begin' }).click();
    for (let taps = 0; taps < 2; taps++) await cardOf(items(page).first(), 1).click();
    await page.getByRole('dialog').getByRole('button', { name: 'another word' }).click();
    await page.getByRole('button', { name: 'All of it was read' }).click();
    await whatWasMissed(page).filter({ hasText: 'said another word' }).waitFor();
    await page.getByText('words read right', { exact: true }).waitFor();
    expect(await barriersIn(page)).toEqual([]);
  });

  it('is printed on cards', async () => {
    const which = page.getByRole('combobox', { name: 'Which cards' });
    await openScreen(page, 'print', which);
    await which.selectOption('sight');
    await page.getByText(/on \d+ sheets/).waitFor();
    expect(current.errors).toEqual([]);
  });
});

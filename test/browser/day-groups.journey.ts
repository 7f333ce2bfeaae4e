import type { Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { type CardId, graphemeOf } from '../../core/language/card-id.ts';
import type { EventBodies } from '../../core/log/event.ts';
import { children } from './class-page.ts';
import { barriersIn } from './looks.ts';
import { allKept, recorded } from './recorded.ts';
import { openScreen } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterEach(() => current?.end());

/** The groups of the day, each with its state, as they stand in the running order. */
const day = (page: Page) =>
  page.locator('.day-groups li').evaluateAll((all) =>
    all.map((each) => {
      const name = each.querySelector('b')?.textContent;
      return `${name}: ${each.querySelector('.day-state')?.textContent?.replace(/ \d.*/, '')}`;
    }),
  );

/** Runs a warm-up to its end on the desk; its first card broke when Wren was to read it. */
async function runAsWren(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the desk' }).click();
  await page.locator('.mark-card').first().waitFor();
  await page.keyboard.press('w');
  await page.getByLabel('First letters of the name').fill('wr');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.reader').textContent()).toBe('Wren');
  await page.keyboard.press('Digit1');
  await page.getByText('heard instead').waitFor();
  for (let press = 0; press < 80; press += 1) {
    if ((await page.locator('.desk-over').count()) > 0) break;
    await page.keyboard.press('Space');
  }
  await page.locator('.desk-over').waitFor();
  await allKept(page);
  await openScreen(page, 'today', '.day-groups');
}

it('the whole class and a group on one day: each has its state, one may be left out, and a child is one child in both', async () => {
  current = await visit({ path: '#/class', upTo: 30 });
  const { page, errors } = current;
  await page.getByLabel('Add children').fill('Wren\nOdalys\nTova');
  await page.getByRole('button', { name: 'Add 3 children' }).click();
  for (const group of ['Maple', 'Aspen']) {
    await page.getByLabel('Add a small group').fill(group);
    await page.getByRole('button', { name: 'Add the group' }).click();
  }
  await children(page).filter({ hasText: 'Wren' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Maple' }).click();

  await openScreen(page, 'today', flips(page));
  await expect.poll(() => day(page)).toEqual(['Whole class: next', 'Maple: then', 'Aspen: then']);
  await page.getByRole('button', { name: 'Not today: Aspen' }).click();
  await expect
    .poll(() => day(page))
    .toEqual(['Whole class: next', 'Maple: then', 'Aspen: not today']);
  await page.keyboard.press('Control+z');
  await expect.poll(() => day(page)).toContain('Aspen: then');
  await page.getByRole('button', { name: 'Not today: Aspen' }).click();
  expect(await barriersIn(page)).toEqual([]);

  await runAsWren(page);
  await expect
    .poll(() => day(page))
    .toEqual(['Whole class: done', 'Maple: next', 'Aspen: not today']);
  await page.getByRole('button', { name: 'On to Maple' }).click();
  await page.getByRole('heading', { name: /^Maple/ }).waitFor();
  await flips(page).first().waitFor();
  await runAsWren(page);
  await expect
    .poll(() => day(page))
    .toEqual(['Whole class: done', 'Maple: done', 'Aspen: not today']);
  expect(await page.getByRole('button', { name: /^On to/ }).count()).toBe(0);

  const marks = (await recorded(page)).flatMap(({ kind, body }) =>
    kind === 'marked' ? [body as EventBodies['marked']] : [],
  );
  expect(marks).toHaveLength(2);
  const [first, second] = marks;
  expect(first?.child).toBe(second?.child);
  await openScreen(page, `known?child=${first?.child}`, '.seen-table');
  const seen = await page.locator('.seen-table tbody th .card').allTextContents();
  for (const { cards } of marks) {
    expect(seen).toContain(graphemeOf(cards[0] as CardId).replace('_e', ''));
  }
  expect(errors).toEqual([]);
});

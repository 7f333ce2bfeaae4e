import type { Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { type CardId, graphemeOf } from '../../core/language/card-id.ts';
import type { EventBodies } from '../../core/log/event.ts';
import { children } from './class-page.ts';
import { deskEnd, markCards, reader } from './desk-page.ts';
import { barriersIn } from './looks.ts';
import { allKept, recorded } from './recorded.ts';
import { openScreen } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterEach(() => current?.end());

const dayGroups = (page: Page) =>
  page.getByRole('region', { name: 'Today’s groups' }).getByRole('listitem');

/** The groups of the day, each with its state, as they stand in the running order. */
const day = (page: Page) =>
  dayGroups(page).evaluateAll((all) =>
    all.map(({ textContent }) => {
      const [, name, state] =
        /^(Whole class|Maple|Aspen)\s*(next|then|not today|done)/.exec(textContent ?? '') ?? [];
      return `${name}: ${state}`;
    }),
  );

/** Runs a warm-up to its end on the desk; its first card broke when Wren was to read it. */
async function runAsWren(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the desk' }).click();
  await markCards(page).first().waitFor();
  await page.keyboard.press('w');
  await page.getByLabel('First letters of the name').fill('wr');
  await page.keyboard.press('Enter');
  await expect.poll(() => reader(page).textContent()).toBe('Wren');
  await page.keyboard.press('Digit1');
  await page.getByText('heard instead').waitFor();
  for (let press = 0; press < 80; press += 1) {
    if ((await deskEnd(page).count()) > 0) break;
    await page.keyboard.press('Space');
  }
  await deskEnd(page).waitFor();
  await allKept(page);
  await openScreen(page, 'today', dayGroups(page));
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
  const seen = page.getByRole('table').getByRole('rowheader');
  await openScreen(page, `known?child=${first?.child}`, seen);
  for (const { cards } of marks) {
    const name = new RegExp(`^${graphemeOf(cards[0] as CardId).replace('_e', ' and silent e')},`);
    expect(await page.getByRole('rowheader', { name }).count()).toBeGreaterThan(0);
  }
  expect(errors).toEqual([]);
});

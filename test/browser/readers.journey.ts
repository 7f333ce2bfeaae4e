import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { EventBodies } from '../../core/log/event.ts';
import { children } from './class-page.ts';
import { hereToday, markCards, marksMade, reader } from './desk-page.ts';
import { barriersIn } from './looks.ts';
import { allKept, recorded } from './recorded.ts';
import { openScreen } from './standing.ts';
import { type Visit, visit } from './visit.ts';

/** One class in one warm-up, so the tests follow each other. */
let current: Visit;
let page: Page;

beforeAll(async () => {
  current = await visit({ path: '#/class', upTo: 40 });
  page = current.page;
  await page.getByLabel('Add children').fill('Wren\nOdalys\nTova\nBram');
  await page.getByRole('button', { name: 'Add 4 children' }).click();
  await openScreen(page, 'desk', markCards(page));
});
afterAll(() => current?.end());

const whoReads = () => reader(page).textContent();

async function lastMark(): Promise<{
  readonly child: string | null;
  readonly cards: readonly string[];
}> {
  await allKept(page);
  const events = await recorded(page);
  const mark = events.findLast(({ kind }) => kind === 'marked');
  const body = mark?.body as EventBodies['marked'];
  const given = events.findLast(
    ({ kind, body }) => kind === 'amended' && (body as { mark: string }).mark === mark?.id,
  )?.body as EventBodies['amended'] | undefined;
  const child = given?.field === 'child' ? given.value : body.child;
  const name = events.find(
    ({ kind, body }) => kind === 'set' && (body as { id: string }).id === child,
  )?.body as { readonly value: string } | undefined;
  return { child: name?.value ?? null, cards: body.cards };
}

describe('who reads', () => {
  it('is whomever she points at: by one tap, or the first letters of the name', async () => {
    await page.getByRole('button', { name: /^Who reads/ }).click();
    expect(await barriersIn(page)).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: 'Tova' }).click();
    await expect.poll(whoReads).toBe('Tova');
    await page.keyboard.press('w');
    await page.getByLabel('First letters of the name').fill('od');
    await page.keyboard.press('Enter');
    await expect.poll(whoReads).toBe('Odalys');
    await page.keyboard.press('Digit1');
    expect((await lastMark()).child).toBe('Odalys');
    expect(await page.getByText('4 of 4 here today').count()).toBe(1);
  });

  it('of a mark that was made while all read together can be said at once', async () => {
    await page.getByLabel('Call on children').uncheck();
    await page.keyboard.press('Space');
    await page.keyboard.press('Digit1');
    expect((await lastMark()).child).toBeNull();
    await page.getByRole('button', { name: 'Whose? all together' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Bram' }).click();
    await page.getByRole('button', { name: 'Whose? Bram' }).waitFor();
    expect((await lastMark()).child).toBe('Bram');
  });

  it('and what broke can be added afterwards, on a card that was shown', async () => {
    for (let card = 0; card < 3; card += 1) await page.keyboard.press('Space');
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'How it went' }).click();
    await page.getByRole('button', { name: 'Add a mark' }).click();
    const before = await marksMade(page).count();
    const choices = page.getByRole('dialog', { name: 'Add a mark' }).getByRole('button');
    expect(await choices.count()).toBe(5);
    const letters = await choices.nth(4).textContent();
    await choices.nth(4).click();
    await page.getByRole('combobox', { name: 'Who' }).selectOption({ label: 'Wren' });
    await page.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => marksMade(page).count()).toBe(before + 1);
    const mark = await lastMark();
    expect(mark.child).toBe('Wren');
    expect(mark.cards[0]?.split('=')[0]).toBe(letters);
  });

  it('stands in her order of names, everywhere', async () => {
    const chips = () => children(page).allTextContents();
    await openScreen(page, 'class', children(page));
    expect(await chips()).toEqual(['Bram', 'Odalys', 'Tova', 'Wren']);
    await page.getByLabel('Names in order').selectOption('typed');
    await expect.poll(chips).toEqual(['Wren', 'Odalys', 'Tova', 'Bram']);
    await page.getByLabel('Names in order').selectOption('seat');
    await page.getByRole('button', { name: 'Bram' }).click();
    await page.getByRole('button', { name: 'one seat forward' }).click();
    await expect.poll(chips).toEqual(['Wren', 'Odalys', 'Bram', 'Tova']);
    await openScreen(page, 'desk', markCards(page));
    await page.getByLabel('Call on children').check();
    await page.getByText('4 of 4 here today').click();
    expect(
      await hereToday(page).evaluateAll((all) => all.map(({ ariaLabel }) => ariaLabel)),
    ).toEqual(['Wren is here', 'Odalys is here', 'Bram is here', 'Tova is here']);
    expect(current.errors).toEqual([]);
  });
});

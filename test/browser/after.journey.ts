import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { stepOf } from '../../core/sequence/step-of.ts';
import { DAY, setClocks } from './clock.ts';
import { deskCount, deskPart, markCards, marksMade } from './desk-page.ts';
import { barriersIn, fitsAcross } from './looks.ts';
import { allKept } from './recorded.ts';
import { openScreen } from './standing.ts';
import { flips, swappable } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

/** One class on one day and the next, so the tests follow each other. */
let current: Visit;
let page: Page;

beforeAll(async () => {
  current = await visit({
    path: '#/today',
    upTo: stepOf(SEQUENCE, { kind: 'card', id: 'i_e=AY' }) ?? 0,
  });
  page = current.page;
  await openScreen(page, 'class', page.getByLabel('Add children'));
  await page.getByLabel('Add children').fill(`Wren\n${long}`);
  await page.getByRole('button', { name: 'Add 2 children' }).click();
  await openScreen(page, 'today', flips(page));
});
afterAll(() => current?.end());

const long = 'Maximiliana-Theodora Fitzgerald-Oyelaran';
const part = (name: string) => page.getByRole('region', { name });
const marks = () => marksMade(page);

/** Goes on to the first word of the third part. */
async function toBlending(): Promise<void> {
  for (let presses = 0; presses < 40; presses += 1) {
    if ((await deskPart(page).textContent()) === 'Blending drill') return;
    await page.keyboard.press('Space');
  }
  throw new Error('no blending drill came');
}

async function passesAxe(): Promise<void> {
  await page.waitForFunction(() => document.getAnimations().length === 0);
  expect(await barriersIn(page)).toEqual([]);
}

async function fitsPhones(): Promise<void> {
  for (const width of [390, 320]) await fitsAcross(page, width, 800);
  await page.setViewportSize({ width: 1366, height: 768 });
}

describe('how it went', () => {
  it('invites to a warm-up before there was one, and says warmly that nothing broke', async () => {
    await openScreen(page, 'after', page.getByText('Nothing has been run'));
    await openScreen(page, 'desk', markCards(page));
    for (let card = 0; card < 3; card += 1) await page.keyboard.press('Space');
    await deskCount(page).filter({ hasText: '4 of' }).waitFor();
    await allKept(page);
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'How it went' }).click();
    await part('Nothing broke').getByText('all of it went well').waitFor();
    await part('Went well').getByText('4 of 4', { exact: true }).waitFor();
  });

  it('shows what broke, in which word, what was heard, and what comes back', async () => {
    await openScreen(page, 'desk', markCards(page));
    await toBlending();
    await page.keyboard.press('Digit2');
    await page.keyboard.press('Digit1');
    await page.keyboard.press('Space');
    await page.keyboard.press('Digit0');
    await page.keyboard.press('Space');
    await page.keyboard.press('Escape');
    await openScreen(page, 'after', marksMade(page));
    expect(await marks().count()).toBe(2);
    await marks().first().locator('.hurt .card').waitFor();
    const [name = ''] = await marks().evaluateAll((all) =>
      all.map((one) => one.getAttribute('aria-label') ?? ''),
    );
    expect(name).toMatch(/^[a-z_]+( \([a-z]+\))? in [a-z]+, said \/.+\/, whole class\. Put right$/);
    await part('Broke').getByText('not said which card').waitFor();
    await part('Next time brings back')
      .getByText(/^broke today: said/)
      .waitFor();
    await part('Kept off the board').getByText('can be shown').waitFor();
    await page.getByText('not a diagnosis').waitFor();
  });

  it('lets her put a mark right: what was heard, whose it was, and that it did not break', async () => {
    await marks().first().click();
    await page.getByLabel('Heard instead').selectOption('left-out');
    await page.getByRole('combobox', { name: 'Who' }).selectOption({ label: long });
    await page.getByRole('button', { name: 'Close' }).click();
    await part('Broke').getByText('left it out').waitFor();
    await page.getByRole('button', { name: `left it out, ${long}. Put right` }).waitFor();
    await marks().last().click();
    await page.getByRole('button', { name: 'It did not break' }).click();
    await expect.poll(() => marks().count()).toBe(1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => marks().count()).toBe(2);
  });

  it('fits phones with a long name, and passes the accessibility checks that a machine can make', async () => {
    await passesAxe();
    await fitsPhones();
  });

  it('keeps her note whatever she does next: typed and the window closed at once', async () => {
    await page.getByLabel('A line for yourself').fill('Short e again, with mirrors');
    const url = page.url();
    await page.close();
    page = await current.page.context().newPage();
    await page.goto(url);
    const note = page.getByLabel('A line for yourself');
    await expect.poll(() => note.inputValue()).toBe('Short e again, with mirrors');
    await note.fill('Short e, mirrors');
    await page.getByText('Kept.').waitFor();
    await page.reload();
    await expect.poll(() => note.inputValue()).toBe('Short e, mirrors');
  });

  it('brings back tomorrow what broke, and says so', async () => {
    const back = part('Next time brings back').getByRole('img').first();
    await openScreen(page, 'after', back);
    const card = await back.getAttribute('aria-label');
    await setClocks(page, DAY);
    await openScreen(page, 'today', flips(page));
    await page.reload();
    const broke = swappable(page, 'Visual').and(page.getByLabel(/; missed \d of \d yesterday/));
    await broke.first().waitFor();
    expect(await broke.and(page.getByLabel(`${card}; missed`)).count()).toBe(1);
    await page.getByRole('link', { name: 'How it went' }).click();
    await page.getByRole('heading', { name: 'How it went' }).waitFor();
    await part('Their warm-ups').getByRole('link').first().waitFor();
  });
});

describe('a plan for a substitute', () => {
  it('has all three parts, and prints on two sheets at most of either paper', async () => {
    const lines = (name: string) => page.getByRole('list', { name }).getByRole('listitem');
    const flipsPlanned = lines('Words to blend');
    await openScreen(page, 'plan', flipsPlanned);
    expect(await lines('Cards to show').count()).toBe(16);
    expect(await lines('Sounds to say').count()).toBe(8);
    expect(await flipsPlanned.count()).toBe(30);
    expect(await flipsPlanned.filter({ hasText: ', a real word' }).count()).toBe(15);
    for (const said of ['My turn', 'Our turn', 'Your turn'])
      await page.getByText(said, { exact: true }).waitFor();
    for (const format of ['Letter', 'A4']) {
      const sheets = (await page.pdf({ format })).toString('latin1').match(/\/Type \/Page\b/g);
      expect(sheets?.length, format).toBeLessThanOrEqual(2);
    }
    await passesAxe();
    await fitsPhones();
    expect(current.errors).toEqual([]);
  });
});

import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { deskBar, deskCards, markCards, whoReads } from './desk-page.ts';
import { barriersIn } from './looks.ts';
import { atRest, edge, stageCards, stageEnd, ticks } from './stage-page.ts';
import { openScreen, putRows } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

/** One class at one desk, so the tests follow each other. */
let current: Visit;
let page: Page;

/** A phone upright, a small one, the smallest, a tablet upright, a small one, a phone on its side, a laptop at twice its size. */
const SMALL = [
  [390, 844],
  [360, 640],
  [320, 640],
  [820, 1180],
  [600, 960],
  [844, 390],
  [683, 384],
] as const;

/** Names of 24 letters, as they come. */
const NAMES = ['Maximiliana-Konstantinaa', 'Bartholomew-Alexanderson'];

beforeAll(async () => {
  current = await visit({ path: '#/class', upTo: 90 });
  page = current.page;
  await page.getByLabel('Add children').fill(NAMES.join('\n'));
  await page.getByRole('button', { name: 'Add 2 children' }).click();
  await openScreen(page, 'today', flips(page));
  await putRows(page, [
    ['t=T', 'a_e=EY', 'p=P'],
    ['l=L', 'igh=AY', 't=T'],
    ['b=B', 'ough=AO', 't=T'],
    ['s=S', 'p=P', 'r=R', 'i=IH', 'n=N', 't=T'],
  ]);
  await openScreen(page, 'desk', markCards(page));
  await page.getByLabel('Call on children').check();
});
afterAll(() => current?.end());

/** Whether all of these lies on the screen, above what sticks to its foot; what does not, by its text. */
async function cutOff(...places: readonly Locator[]): Promise<readonly string[]> {
  const bar = await deskBar(page).elementHandle();
  const cut = places.map((place) =>
    place.evaluateAll((all, stuck) => {
      const { top: barTop, height } = (stuck as HTMLElement).getBoundingClientRect();
      const beside = height >= innerHeight - 1;
      return all
        .filter((element) => {
          const { left, right, top, bottom } = element.getBoundingClientRect();
          const foot = stuck?.contains(element) || beside ? innerHeight : barTop;
          return left < 0 || right > innerWidth + 1 || top < 0 || bottom > foot + 1;
        })
        .map(({ textContent }) => `${textContent}`);
    }, bar),
  );
  return (await Promise.all(cut)).flat();
}

const above = () => [whoReads(page).getByRole('paragraph'), whoReads(page).getByRole('button')];
const nextButton = () => deskBar(page).getByRole('button', { name: /^Next/ });
const nameAbove = async () =>
  (await whoReads(page).getByRole('paragraph').textContent())?.split(' then ', 1)[0];

describe('the desk on a small screen', () => {
  it('shows the row whole, who reads, and Next on the first screen, whatever the row', async () => {
    for (let row = 0; row < 4; row += 1) {
      for (const [width, height] of SMALL) {
        await page.setViewportSize({ width, height });
        await expect
          .poll(() => cutOff(...above(), deskCards(page), nextButton()), {
            message: `row ${row}, ${width} × ${height}`,
          })
          .toEqual([]);
        expect(NAMES).toContain(await nameAbove());
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect(wide, `row ${row}, ${width} × ${height}`).toBeLessThanOrEqual(0);
      }
      await page.setViewportSize({ width: 1366, height: 768 });
      if (row < 3) await page.keyboard.press('Space');
    }
  });

  it('keeps the row whole and the first answers in sight when a card broke', async () => {
    await page.keyboard.press('Digit2');
    const firstAnswer = page
      .getByRole('group', { name: 'What was heard instead' })
      .getByRole('button')
      .first();
    for (const [width, height] of SMALL) {
      await page.setViewportSize({ width, height });
      await expect
        .poll(() => cutOff(deskCards(page), nextButton(), firstAnswer), {
          message: `${width} × ${height}`,
        })
        .toEqual([]);
    }
    await page.keyboard.press('KeyZ');
  });

  it('has large fields for back and next under the thumbs, on a phone and on a tablet upright', async () => {
    for (const [width, height] of SMALL.filter(([wide, high]) => high > wide)) {
      await page.setViewportSize({ width, height });
      for (const name of [/^Back/, /^Next/]) {
        const box = await deskBar(page).getByRole('button', { name }).boundingBox();
        expect(box?.height, `${width} × ${height}`).toBeGreaterThanOrEqual(60);
        expect(box?.width, `${width} × ${height}`).toBeGreaterThanOrEqual(0.28 * width);
        expect((box?.y ?? 0) + (box?.height ?? 0)).toBeGreaterThan(height - 30);
      }
    }
  });

  it('names the group in full, and takes the last mark back under the thumb', async () => {
    for (const [width, height] of SMALL) {
      await page.setViewportSize({ width, height });
      const cut = await page
        .getByRole('heading', { level: 1 })
        .evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth);
      expect(cut, `${width} × ${height}`).toBeLessThanOrEqual(0);
    }
    await page.setViewportSize({ width: 390, height: 844 });
    await page
      .getByRole('group', { name: 'Touch the card that broke' })
      .getByRole('button')
      .first()
      .click();
    await page.getByText('heard instead').waitFor();
    await page.getByRole('toolbar').getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Nothing marked').waitFor();
    await page.getByRole('button', { name: 'Dim this screen' }).click();
    await expect
      .poll(() => page.evaluate(() => document.documentElement.dataset.look))
      .toBe('dark');
    await page.getByRole('button', { name: 'Dim this screen' }).click();
  });

  it('says above the row who reads, and lets her choose another there', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    const before = await nameAbove();
    const other = NAMES.find((name) => name !== before) ?? '';
    await whoReads(page).getByRole('button').click();
    await page.getByRole('dialog').getByRole('button', { name: other }).click();
    await expect.poll(nameAbove).toBe(other);
    expect(await barriersIn(page)).toEqual([]);
  });

  it('keeps outlines and progress where colors are forced', async () => {
    await page.emulateMedia({ forcedColors: 'active' });
    await page.setViewportSize({ width: 1366, height: 768 });
    await openScreen(page, 'stage', stageCards(page));
    for (const [drawn, width] of [
      [stageCards(page), 'borderTopWidth'],
      [ticks(page, 'current'), 'backgroundColor'],
    ] as const) {
      const [seen, paper] = await drawn.first().evaluate((element, name) => {
        const style = getComputedStyle(element);
        return [style[name], getComputedStyle(document.body).backgroundColor];
      }, width);
      expect(seen).not.toBe('0px');
      expect(seen).not.toBe(paper);
    }
    await page.emulateMedia({ forcedColors: 'none' });
  });
});

describe('the stage', () => {
  it('says how to go on once, and what each sign of her edge does when it is pointed at or focused', async () => {
    const tip = (said: string) => page.getByText(said, { exact: true });
    const correct = 'Correct it: my turn, our turn, your turn';
    await edge(page).getByRole('button', { name: correct }).hover();
    await tip(correct).waitFor();
    await page.mouse.move(400, 100);
    await expect.poll(() => tip(correct).count()).toBe(0);
    await edge(page).getByRole('button', { name: 'Card 1 broke' }).focus();
    await tip('Card 1 broke').waitFor();
    await page.getByRole('main').focus();
  });

  it('ends with the day’s cards at rest on the line, and the way on', async () => {
    for (let press = 0; press < 8 && (await stageEnd(page).count()) === 0; press += 1) {
      await page.keyboard.press('Space');
    }
    expect(await atRest(page, 'heap').count()).toBe(3);
    const line = (await atRest(page, 'line').boundingBox())!;
    for (const [width, height] of [[1366, 768], ...SMALL] as const) {
      await page.setViewportSize({ width, height });
      const out = await atRest(page, 'card').evaluateAll(
        (all) =>
          all.filter((card) => {
            const { left, right, top } = card.getBoundingClientRect();
            return left < 0 || right > innerWidth || top < 0;
          }).length,
      );
      expect(out, `${width} × ${height}`).toBe(0);
    }
    expect(line.width).toBeGreaterThan(600);
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.getByRole('link', { name: 'How it went' }).click();
    await page.getByRole('heading', { name: 'How it went' }).waitFor();
    expect(current.errors).toEqual([]);
  });

  it('with nothing taught leads to what they have learned', async () => {
    const empty = await visit({ path: '#/stage', upTo: 0 });
    await empty.page.getByRole('link', { name: 'What have they learned?' }).click();
    await empty.page.waitForURL(/#\/learned/);
    await empty.end();
  });
});

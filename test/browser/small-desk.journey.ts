import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriersIn } from './looks.ts';
import { openScreen, putRows } from './standing.ts';
import { type Visit, visit } from './visit.ts';

/** One class at one desk, so the tests follow each other. */
let current: Visit;
let page: Page;

/** A phone upright, a small one, a tablet upright, a phone on its side, a laptop at twice its size. */
const SMALL = [
  [390, 844],
  [360, 640],
  [820, 1180],
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
  await openScreen(page, 'today', '.flip');
  await putRows(page, [
    ['t=T', 'a_e=EY', 'p=P'],
    ['l=L', 'igh=AY', 't=T'],
    ['b=B', 'ough=AO', 't=T'],
    ['s=S', 'p=P', 'r=R', 'i=IH', 'n=N', 't=T'],
  ]);
  await openScreen(page, 'desk', '.mark-card');
  await page.getByLabel('Call on children').check();
});
afterAll(() => current?.end());

/** Whether all of these lies on the screen, above what sticks to its foot; what does not, by its text. */
async function cutOff(selector: string): Promise<readonly string[]> {
  return page.locator(selector).evaluateAll((all) => {
    const bar = document.querySelector('.desk-bar')?.getBoundingClientRect();
    return all
      .filter((element) => {
        const { left, right, top, bottom } = element.getBoundingClientRect();
        const beside = bar !== undefined && bar.height >= innerHeight - 1;
        const foot = element.closest('.desk-bar') || beside ? innerHeight : (bar?.top ?? 0);
        return left < 0 || right > innerWidth + 1 || top < 0 || bottom > foot + 1;
      })
      .map(({ textContent, className }) => `${className}: ${textContent}`);
  });
}

describe('the desk on a small screen', () => {
  it('shows the row whole, who reads, and Next on the first screen, whatever the row', async () => {
    for (let row = 0; row < 4; row += 1) {
      for (const [width, height] of SMALL) {
        await page.setViewportSize({ width, height });
        await expect
          .poll(() => cutOff('.who-line p, .who-line button, .of-now .card, .desk-bar .next'), {
            message: `row ${row}, ${width} × ${height}`,
          })
          .toEqual([]);
        const name = await page.locator('.who-line b').textContent();
        expect(NAMES).toContain(name);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect(wide, `row ${row}, ${width} × ${height}`).toBeLessThanOrEqual(0);
      }
      await page.setViewportSize({ width: 1366, height: 768 });
      if (row < 3) await page.keyboard.press('Space');
    }
  });

  it('keeps the row whole and the first answers in sight when a card broke', async () => {
    await page.keyboard.press('Digit2');
    for (const [width, height] of SMALL) {
      await page.setViewportSize({ width, height });
      await expect
        .poll(() => cutOff('.of-now .card, .desk-bar .next, .chip:first-of-type'), {
          message: `${width} × ${height}`,
        })
        .toEqual([]);
    }
    await page.keyboard.press('KeyZ');
  });

  it('says above the row who reads, and lets her choose another there', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    const before = await page.locator('.who-line b').textContent();
    const other = NAMES.find((name) => name !== before) ?? '';
    await page.locator('.who-line button').click();
    await page.getByRole('dialog').getByRole('button', { name: other }).click();
    await expect.poll(() => page.locator('.who-line b').textContent()).toBe(other);
    expect(await barriersIn(page)).toEqual([]);
  });

  it('keeps outlines and progress where colors are forced', async () => {
    await page.emulateMedia({ forcedColors: 'active' });
    await page.setViewportSize({ width: 1366, height: 768 });
    await openScreen(page, 'stage', '.row .card');
    for (const [selector, width] of [
      ['.row .card', 'borderTopWidth'],
      ['.ticks .current', 'backgroundColor'],
    ] as const) {
      const [seen, paper] = await page
        .locator(selector)
        .first()
        .evaluate((element, name) => {
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
    await page.locator('.edge button', { hasText: 'C' }).hover();
    await page.locator('.edge-tip', { hasText: 'Correct it: my turn' }).waitFor();
    await page.mouse.move(400, 100);
    await expect.poll(() => page.locator('.edge-tip').count()).toBe(0);
    await page.locator('.edge-mark').first().focus();
    await page.locator('.edge-tip', { hasText: 'Card 1 broke' }).waitFor();
    await page.locator('main').focus();
  });

  it('ends with the day’s cards at rest on the line, and the way on', async () => {
    for (let press = 0; press < 8 && (await page.locator('.end').count()) === 0; press += 1) {
      await page.keyboard.press('Space');
    }
    expect(await page.locator('.at-rest .heap').count()).toBe(3);
    const line = (await page.locator('.rest-line').boundingBox())!;
    for (const [width, height] of [[1366, 768], ...SMALL] as const) {
      await page.setViewportSize({ width, height });
      const out = await page.locator('.at-rest .card').evaluateAll(
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

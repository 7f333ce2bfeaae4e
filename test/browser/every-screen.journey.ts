import type { Locator, Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { barriersIn, fitsAcross } from './looks.ts';
import { stageCards, stageEnd } from './stage-page.ts';
import { openScreen, taughtUpTo } from './standing.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

/** Every screen, and something that shows that it is there. */
const screens: readonly (readonly [screen: string, shows: (page: Page) => Locator])[] = [
  ['learned', (page) => page.getByRole('slider', { name: 'Taught up to here' })],
  ['order', (page) => page.getByRole('list', { name: 'Steps', exact: true }).getByRole('listitem')],
  ['today', flips],
  ['settings', (page) => page.getByLabel('A word', { exact: true })],
  ['help', (page) => page.getByRole('navigation', { name: 'Contents' })],
  ['about', (page) => page.getByRole('main').getByRole('group')],
  ['stage', stageCards],
];

const phones = [
  { width: 390, height: 844 },
  { width: 320, height: 640 },
];

/** Her desk's window at 200%: to a page, zooming is having half the window. */
const ZOOMED = { width: 683, height: 384 };

describe.each(screens)('the screen %s', (screen, shows) => {
  it('passes the checks of WCAG A and AA, fits phones and goes wrong nowhere', async () => {
    current = await visit({ path: `#/${screen}`, upTo: 60 });
    const { page, url, errors, requests } = current;
    await shows(page).first().waitFor();
    await page.waitForFunction(() => document.getAnimations().length === 0);
    expect(await barriersIn(page)).toEqual([]);
    for (const { width, height } of phones) await fitsAcross(page, width, height);
    await fitsAcross(page, ZOOMED.width, ZOOMED.height);
    expect(await barriersIn(page), 'at 200%').toEqual([]);
    expect(errors).toEqual([]);
    const { origin } = new URL(url);
    const elsewhere = requests.filter((address) => new URL(address).origin !== origin);
    expect(elsewhere).toEqual([]);
  });
});

describe('without a network', () => {
  it('a whole warm-up runs, from a reload on, with the server gone', async () => {
    current = await visit({ path: '#/today', keepsApp: true });
    const { page, stopServer } = current;
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      if (navigator.serviceWorker.controller) return;
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      );
    });
    await stopServer();
    await taughtUpTo(page, 33);
    await openScreen(page, 'stage', stageCards(page));
    for (let presses = 0; presses < 60; presses += 1) {
      if ((await stageEnd(page).count()) > 0) break;
      await page.keyboard.press('Space');
    }
    expect(await stageEnd(page).textContent()).toBe('That was 30.');
  });
});

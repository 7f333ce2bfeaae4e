import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { TOPICS } from '../../web/wording/help/topics.ts';
import { WALK } from '../../web/wording/help/walk.ts';
import { missingFrom, namesIn, SCREENS_OF_HELP } from '../guide/named.ts';
import { barriersIn, faintIn, fitsAcross, SIZES } from './looks.ts';
import { stageCards, stageEnd } from './stage-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterEach(async () => {
  await current?.end();
  current = undefined;
});

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const link = (page: Page, name: string) => page.getByRole('link', { name, exact: true });

describe('help', () => {
  it('opens over any screen on its key and its button, and is left without leaving the screen', async () => {
    current = await visit({ path: '#/today', upTo: 40 });
    const { page, errors } = current;
    await button(page, 'Start on the stage').waitFor();
    await page.keyboard.press('?');
    const panel = page.getByRole('dialog', { name: 'Today’s warm-up' });
    await panel.getByText('flip', { exact: false }).first().waitFor();
    expect(await barriersIn(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await panel.waitFor({ state: 'hidden' });
    await button(page, 'Help on this page').click();
    await panel.getByRole('link', { name: 'All help' }).click();
    await page.getByRole('heading', { name: 'Help', exact: true }).waitFor();

    await page.getByLabel('Look for').fill('substitute');
    await page.getByText('1 page', { exact: true }).waitFor();
    await page.getByLabel('Look for').fill('');
    await page.getByRole('navigation', { name: 'Contents' }).waitFor();
    expect(await barriersIn(page)).toEqual([]);
    for (const [width, height] of SIZES) await fitsAcross(page, width, height);
    expect(errors).toEqual([]);
  });

  it('tells of a thing once: the line that was put away stays away', async () => {
    current = await visit({ path: '#/today', upTo: 40 });
    const { page } = current;
    await page.getByText('A flip turns one card').waitFor();
    await button(page, 'Got it').click();
    await page.getByText('A flip turns one card').waitFor({ state: 'hidden' });
    await page.reload();
    await page.getByRole('list', { name: 'Words to blend' }).waitFor();
    expect(await page.getByText('A flip turns one card').count()).toBe(0);
  });
});

describe('a stranger', () => {
  it('comes from the first visit to a page for a family by the choices of the guide alone; all that the help names is there, and legible in every look', async () => {
    current = await visit();
    const { page, url, errors } = current;
    const acts: Readonly<Record<string, () => Promise<unknown>>> = {
      '*Look around with a sample class*': async () => {
        await button(page, 'Look around with a sample class').click();
        await page.getByText('This is a sample class.').waitFor({ timeout: 120_000 });
        for (const screen of SCREENS_OF_HELP) {
          const names = namesIn(TOPICS.find((topic) => topic.screen === screen) ?? { ways: [] });
          await page.goto(`${url}#/${screen}`);
          await expect.poll(() => missingFrom(page, names), { message: screen }).toEqual([]);
          expect(await faintIn(page), screen).toEqual([]);
        }
        await page.goto(`${url}#/learned`);
      },
      '*Back to my class*': () => button(page, 'Back to my class').click(),
      '*Start with my class*': () => button(page, 'Start with my class').click(),
      'move the line to the last thing you taught': () =>
        page.getByRole('button', { name: /^Taught up to step 8,/ }).click(),
      '*Add names first*, if you want to': () => link(page, 'Add names first').click(),
      'type the first names under *Add children*': () =>
        page.getByLabel('Add children').fill('Ann, Ben, Cleo'),
      '*Add*': async () => {
        await button(page, 'Add 3 children').click();
        await button(page, 'Cleo').waitFor();
      },
      '*On to today’s warm-up*': () => link(page, 'On to today’s warm-up').click(),
      '*Start on the stage*': () => button(page, 'Start on the stage').click(),
      'go on with a tap, the space bar or a clicker': async () => {
        await stageCards(page).first().waitFor();
        await page.keyboard.press('Space');
      },
      'press 1, 2 or 3 for the card that broke': async () => {
        await page.keyboard.press('1');
        for (let presses = 0; presses < 60; presses += 1) {
          if ((await stageEnd(page).count()) > 0) break;
          await page.keyboard.press('Space');
        }
      },
      '*How it went*': () => link(page, 'How it went').click(),
      'read *Next time brings back*': async () => {
        const next = page.getByRole('region', { name: 'Next time brings back' });
        await next
          .getByText(/^broke today/)
          .first()
          .waitFor();
      },
      '*Children*, then *Pages*': async () => {
        await link(page, 'Children').click();
        await link(page, 'Pages').click();
      },
      '*For the family*': () => button(page, 'For the family').click(),
      '*Print this page*': async () => {
        await page.evaluate(() => {
          window.print = () => document.body.setAttribute('data-printed', '');
        });
        await button(page, 'Print this page').click();
        expect(await page.evaluate(() => document.body.hasAttribute('data-printed'))).toBe(true);
      },
    };
    let choices = 0;
    for (const { does } of WALK.flatMap((leg) => leg.choices)) {
      const act = acts[does];
      if (!act) throw new Error(`Nobody can do “${does}”`);
      await act();
      choices += 1;
    }
    expect(choices).toBe(Object.keys(acts).length);
    expect(errors).toEqual([]);
  });
});

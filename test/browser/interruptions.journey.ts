import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import type { LogEvent } from '../../core/log/event.ts';
import { DAY, setClocks } from './clock.ts';
import { broken, deskCount, deskLetters, reader, warmUpsListed } from './desk-page.ts';
import { allKept, recorded } from './recorded.ts';
import { edge, stageCards, stageLetters } from './stage-page.ts';
import { openScreen } from './standing.ts';
import { flips, flipsSaid } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

async function atToday(): Promise<Page> {
  current = await visit({ path: '#/today', upTo: 40 });
  await openScreen(current.page, 'today', flips(current.page));
  return current.page;
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const started = (page: Page) => stageCards(page).first().waitFor();

async function press(page: Page, times: number): Promise<void> {
  for (let pressed = 0; pressed < times; pressed += 1) await page.keyboard.press('Space');
}

async function told(page: Page, kind: string): Promise<readonly LogEvent[]> {
  await allKept(page);
  return (await recorded(page)).filter((event) => event.kind === kind);
}

describe('a warm-up that is interrupted', () => {
  it('stays under way until she ends it, and goes on at the same word', async () => {
    const page = await atToday();
    await button(page, 'Start on the stage').click();
    await started(page);
    await press(page, 16 + 8 + 11);
    const word = await stageLetters(page);
    await page.keyboard.press('Digit1');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await button(page, 'Go on at word 12').waitFor();
    await page.getByText(/You stopped at \d+:\d\d, at word 12/).waitFor();
    expect(await flipsSaid(page, 'where you stopped').textContent()).toBe(word);
    expect(await flipsSaid(page, 'read').count()).toBe(11);
    expect(await flipsSaid(page, 'broke').count()).toBe(1);
    await page.reload({ waitUntil: 'load' });
    await button(page, 'Go on at word 12').click();
    await started(page);
    expect(await stageLetters(page)).toBe(word);
    expect(await told(page, 'begun')).toHaveLength(1);

    await page.keyboard.press('Escape');
    await button(page, 'End it or start over').click();
    await button(page, /^Take it out of the record/).click();
    await started(page);
    await press(page, 2);
    expect(await told(page, 'begun')).toHaveLength(2);
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'How it went' }).click();
    await expect.poll(() => warmUpsListed(page).count()).toBe(1);
  });

  it('comes back to the desk with the child whose turn it was, and the stage follows', async () => {
    const page = await atToday();
    await openScreen(page, 'class', page.getByLabel('Add children'));
    await page.getByLabel('Add children').fill('Odalys\nBram\nTova\nWren');
    await button(page, 'Add 4 children').click();
    await openScreen(page, 'today', flips(page));
    const opened = page.context().waitForEvent('page');
    await button(page, 'Open the desk').click();
    const stage = await opened;
    await stageCards(stage).first().waitFor();
    await page.getByLabel('Call on children').check();
    await press(page, 7);
    const child = await reader(page).textContent();
    const card = await deskLetters(page);
    await page.keyboard.press('Escape');
    await button(page, 'Go on at card 8').click();
    await reader(page).waitFor();
    expect(await reader(page).textContent()).toBe(child);
    await expect.poll(() => stageLetters(stage)).toBe(card);
    await press(page, 1);
    await expect.poll(() => stageLetters(stage)).not.toBe(card);
    expect(await stageLetters(stage)).toBe(await deskLetters(page));
    expect(await told(page, 'begun')).toHaveLength(1);
  });

  it('leaves over what the next day can take up or drop', async () => {
    const page = await atToday();
    await button(page, 'Start on the stage').click();
    await started(page);
    await press(page, 16 + 8 + 24);
    await allKept(page);
    await page.keyboard.press('Escape');
    await expect.poll(() => flips(page).count()).toBe(30);
    const left = (await flips(page).allTextContents()).slice(24);
    await setClocks(page, DAY);
    await page.reload({ waitUntil: 'load' });
    await page.getByText('6 words of 54 things were left yesterday').waitFor();
    await button(page, 'Take them up today').click();
    await expect.poll(() => flips(page).allTextContents()).toEqual(left);
    expect(await page.getByText('were left yesterday').count()).toBe(0);
    await page.keyboard.press('Control+z');
    await button(page, 'Take them up today').waitFor();
    expect(await flips(page).allTextContents()).not.toEqual(left);
    await button(page, 'Drop them').click();
    expect(await page.getByText('were left yesterday').count()).toBe(0);
    expect(await flips(page).count()).toBe(30);
  });

  it('leads from the end to how it went, when full screen is left there', async () => {
    const page = await atToday();
    await page.getByLabel('Flips').selectOption('10');
    await button(page, 'Start on the stage').click();
    await started(page);
    await page.waitForFunction(() => document.fullscreenElement !== null);
    await press(page, 16 + 8 + 10);
    await page.getByText('That was 10.').waitFor();
    await page.evaluate(() => document.exitFullscreen());
    await page.getByRole('heading', { name: 'How it went' }).waitFor();
    await openScreen(page, 'today', flips(page));
    await page.getByText(/^Done at \d+:\d\d\. Nothing broke\.$/).waitFor();
  });
});

describe('a warm-up that is only looked at', () => {
  it('runs like any other, and no word of it is written', async () => {
    const page = await atToday();
    const before = (await recorded(page)).length;
    await button(page, 'Just looking').click();
    await started(page);
    await press(page, 3);
    await page.keyboard.press('Digit1');
    await page
      .getByRole('button', { name: /^Heard instead/ })
      .first()
      .click();
    await expect(broken(edge(page).getByRole('button')).count()).resolves.toBe(1);
    const card = await stageLetters(page);
    await page.reload({ waitUntil: 'load' });
    await started(page);
    expect(card).not.toBe('');
    await press(page, 2);
    await page.keyboard.press('Escape');
    await button(page, 'Start on the stage').waitFor();
    await allKept(page);
    expect((await recorded(page)).length).toBe(before);
    await button(page, 'Open the desk').click();
    await deskCount(page).filter({ hasText: '1 of 16' }).waitFor();
  });
});

describe('a warm-up that is done', () => {
  it('can be taken out of the record and put back, run again, and tomorrow’s be looked at', async () => {
    const page = await atToday();
    await page.getByLabel('Flips').selectOption('10');
    const first = await flips(page).allTextContents();
    await button(page, 'Start on the stage').click();
    await started(page);
    await press(page, 16 + 8 + 10);
    await page.getByText('That was 10.').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('heading', { name: 'How it went' }).waitFor();
    await button(page, 'Take it out of the record').click();
    await page.getByText('Nothing has been run').waitFor();
    await page.getByText('Taken out of the record: 1').click();
    await button(page, /^Put back/).click();
    await page.getByRole('heading', { name: 'Nothing broke', exact: true }).waitFor();

    await openScreen(page, 'today', flips(page));
    await button(page, 'Tomorrow’s warm-up').click();
    await page.getByRole('heading', { name: /Next time/ }).waitFor();
    const next = await flips(page).allTextContents();
    expect(next).not.toEqual(first);
    await button(page, 'Back to today').click();
    expect(await flips(page).allTextContents()).toEqual(first);
    await button(page, 'Run it again').click();
    await started(page);
    await press(page, 3);
    await page.keyboard.press('Escape');
    await button(page, 'Go on at card 4').waitFor();
    expect(await told(page, 'begun')).toHaveLength(2);
    await setClocks(page, DAY);
    await page.reload({ waitUntil: 'load' });
    await flips(page).first().waitFor();
    expect(await flips(page).allTextContents()).toEqual(next);
  });
});

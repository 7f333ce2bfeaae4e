import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

const steps = (page: Page): Locator =>
  page.getByRole('list', { name: 'Steps', exact: true }).getByRole('listitem');

/** What a step is called, as the button that moves it says. */
async function titleOf(step: Locator): Promise<string | undefined> {
  const name = await step.getByRole('button', { name: /, up$/ }).getAttribute('aria-label');
  return /^Move step \d+, (.+), up$/.exec(name ?? '')?.[1];
}

async function atOrder(): Promise<Visit> {
  current = await visit({ path: '#/order', upTo: 12 });
  await steps(current.page).first().waitFor();
  return current;
}

const ownOrder = [
  'step,stage,grade,title,items',
  '1,Start,K,m and a,m a',
  '2,Start,K,s,s qqx',
  '3,Start,Z,t,t word:the',
  '4,Start,K,nothing,',
  '5,Start,K,sh,sh',
].join('\n');

describe('her own order', () => {
  it('is taken line by line: each bad line is named with a way to mend it, good lines are kept', async () => {
    const { page, errors } = await atOrder();
    await page.getByText('Bring your own order').click();
    await page.getByLabel('Your order, one step a line').fill(ownOrder);
    const readBack = page.getByRole('list', { name: 'Your lines, read back' });
    await readBack.getByText('We know no card or word “qqx”').waitFor();
    const waiting = await readBack
      .getByRole('listitem')
      .filter({ hasText: /We know no|teaches nothing/ })
      .allTextContents();
    expect(waiting).toHaveLength(2);
    expect(waiting[0]).toMatch(/^3/);
    expect(waiting[1]).toContain('This line teaches nothing');
    await page.getByText('Write K, 1, 2 or 3.').waitFor();
    await page.getByText('2 lines wait for you', { exact: false }).waitFor();

    await page.getByRole('button', { name: 'Use these 4 steps' }).click();
    expect(await steps(page).count()).toBe(4);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await steps(page).count()).toBe(SEQUENCE.steps.length);
    await page.reload();
    await page.getByText('Use these 4 steps').waitFor();
    expect(await page.getByLabel('Your order, one step a line').inputValue()).toBe(ownOrder);
    expect(errors).toEqual([]);
  });

  it('is read in plain words; a line that may mean two sounds asks, and stays out until it is answered', async () => {
    const { page, errors } = await atOrder();
    await page.getByText('Bring your own order').click();
    const lines = page.getByLabel('Your order, one step a line');
    await lines.fill('m\na\nt – the\nth\nsoft c\nblends');
    await page.getByText('th as in thumb or feather?').waitFor();
    await page.getByText('5 steps understood.', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'feather' }).click();
    expect(await lines.inputValue()).toBe('m\na\nt – the\nth as in feather\nsoft c\nblends');
    await page.getByText('6 of 6 lines clear; 6 steps understood.').waitFor();
    await page.getByRole('button', { name: 'Not yet' }).first().click();
    await page.getByRole('button', { name: 'Use these 6 steps' }).click();
    expect(await steps(page).count()).toBe(6);
    expect(await steps(page).nth(2).textContent()).toContain('the');
    expect(errors).toEqual([]);
  });

  it('moves a stage with all its steps, by mouse and by keys, and never what the class knows', async () => {
    const { page, errors } = await atOrder();
    const stages = page.getByRole('list', { name: 'Stages' }).getByRole('listitem');
    const names = () => stages.getByRole('button', { name: /steps?$/ }).allTextContents();
    const before = await names();
    await stages.nth(3).getByRole('button').first().focus();
    await page.keyboard.press('Alt+ArrowUp');
    const after = await names();
    expect(after.slice(2, 4)).toEqual([before[3], before[2]]);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain(before[3]);
    await stages.nth(2).dragTo(stages.nth(0));
    expect((await names())[0]).toBe(before[3]);
    await page.getByText('what your class knows stays known', { exact: false }).waitFor();
    expect(errors).toEqual([]);
  });

  it('moves a step by mouse, and names and begins stages by keys', async () => {
    const { page, errors } = await atOrder();
    const first = await titleOf(steps(page).nth(0));
    await steps(page).nth(0).getByText('1', { exact: true }).dragTo(steps(page).nth(2));
    await expect.poll(() => titleOf(steps(page).nth(2))).toBe(first);
    await page
      .getByRole('button', { name: /^Rename: / })
      .first()
      .focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('Name of the stage').fill('Our first weeks');
    await page.keyboard.press('Enter');
    await page.getByText('The stage is now called Our first weeks.').waitFor();
    await page.getByRole('button', { name: /^New stage here: step 4, / }).focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('Name of the stage').fill('After the break');
    await page.keyboard.press('Enter');
    const stages = page.getByRole('list', { name: 'Stages' });
    await stages.getByText('After the break').waitFor();
    const names = await stages.getByRole('button', { name: /steps?$/ }).allTextContents();
    expect(names[0]).toMatch(/^Our first weeks/);
    expect(names[1]).toMatch(/^After the break/);
    await page.keyboard.press('Control+z');
    await stages.getByText('After the break').waitFor({ state: 'detached' });
    expect(errors).toEqual([]);
  });

  it('can be a file, is kept when another takes its place, and can be taken up again', async () => {
    const { page } = await atOrder();
    await page.getByText('Bring your own order').click();
    await page.getByLabel('Choose a file').setInputFiles({
      name: 'our year.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(ownOrder),
    });
    await page.getByRole('button', { name: 'Use these 4 steps' }).click();
    await page.getByText('our year, 4 steps').first().waitFor();
    await page.getByRole('button', { name: 'Back to the built-in order' }).click();
    expect(await steps(page).count()).toBe(SEQUENCE.steps.length);
    await page.getByText('Orders you had before (1)').click();
    await page.getByRole('button', { name: 'Take it up again' }).click();
    expect(await steps(page).count()).toBe(4);
  });

  it('is saved as a file that can be brought back', async () => {
    const { page } = await atOrder();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    const text = await readFile(await download.path(), 'utf8');
    expect(text.split(/\r?\n/)[0]).toBe('step,stage,grade,title,items,why');
    await page.getByText('Bring your own order').click();
    await page.getByLabel('Your order, one step a line').fill(text);
    await page.getByText(`${SEQUENCE.steps.length} steps understood.`, { exact: false }).waitFor();
  });

  it('is rearranged by the keyboard, and the focus goes with the step', async () => {
    const { page } = await atOrder();
    const letters = () => titleOf(steps(page).nth(3));
    const before = await letters();
    await page.getByRole('button', { name: /^Move step 3, .* down$/ }).focus();
    await page.keyboard.press('Enter');
    const after = await titleOf(steps(page).nth(2));
    expect(after).toBe(before);
    const focused = await page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    expect(focused).toMatch(/^Move step 4, .* down$/);
    await page.keyboard.press('Control+z');
    expect(await letters()).toBe(before);
  });
});

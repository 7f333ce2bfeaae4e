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
    const problems = await page
      .getByRole('list', { name: 'To look at' })
      .getByRole('listitem')
      .allTextContents();
    expect(problems).toHaveLength(3);
    expect(problems[0]).toContain('Line 3');
    expect(problems[0]).toContain('qqx');
    expect(problems[1]).toContain('Line 4');
    expect(problems[1]).toContain('Write K, 1, 2 or 3.');
    expect(problems[2]).toContain('Line 5');

    await page.getByRole('button', { name: 'Use these 4 steps' }).click();
    expect(await steps(page).count()).toBe(4);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await steps(page).count()).toBe(SEQUENCE.steps.length);
    await page.reload();
    await page.getByText('Use these 4 steps').waitFor();
    expect(await page.getByLabel('Your order, one step a line').inputValue()).toBe(ownOrder);
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
    await page.getByText(`${SEQUENCE.steps.length} steps understood.`).waitFor();
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

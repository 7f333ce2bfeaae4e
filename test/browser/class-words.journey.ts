import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { deskCount, markCards, marksMade, warmUpsListed } from './desk-page.ts';
import { barriersIn } from './looks.ts';
import { allKept } from './recorded.ts';
import { stageCards } from './stage-page.ts';
import { openScreen, putRows } from './standing.ts';
import { flips, words } from './today-page.ts';
import { type Visit, type VisitSpec, visit } from './visit.ts';
import { entries } from './words-page.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

async function atSettings(upTo: number, spec: VisitSpec = {}): Promise<Page> {
  current = await visit({ ...spec, path: '#/settings', upTo });
  const { page } = current;
  await page.getByLabel('A word', { exact: true }).waitFor();
  return page;
}

const decided = (page: Page) => page.getByRole('list', { name: 'What you decided' });

describe('the teacher’s word about words', () => {
  it('hides a word of today’s run for good, says so, and undo brings the same run back', async () => {
    const page = await atSettings(30);
    await openScreen(page, 'today', flips(page));
    const before = await words(page);
    await flips(page).nth(7).click();
    await page.getByRole('button', { name: 'Never in my class' }).click();
    const blocked = before[7] as string;
    await page.getByText(`${blocked} stays hidden.`).waitFor();
    expect(await words(page)).not.toContain(blocked);
    await page.getByText(/stays? hidden:/).click();
    await page.getByText('you blocked it').first().waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => words(page)).toEqual(before);

    await flips(page).nth(7).click();
    await page.getByRole('button', { name: 'Never in my class' }).click();
    await allKept(page);
    await page.reload();
    await flips(page).first().waitFor();
    expect(await words(page)).not.toContain(blocked);
    for (let again = 0; again < 3; again++) {
      await page.getByRole('button', { name: 'Reshuffle' }).click();
      expect(await words(page)).not.toContain(blocked);
    }
  });

  it('never lets the stage show a word that was blocked since, and keeps its place', async () => {
    const page = await atSettings(30);
    await openScreen(page, 'today', flips(page));
    const planned = await page.evaluate(() => {
      const plan = JSON.parse(localStorage.getItem('sweepline.plan') ?? '{}');
      return plan.made.drill.run.slice(0, 3).map(({ cards }: { cards: string[] }) => cards);
    });
    await putRows(page, planned);
    await flips(page).first().waitFor();
    const [first, second, third] = await words(page);
    const onStage = async () => (await stageCards(page).allTextContents()).join('');
    await openScreen(page, 'stage', stageCards(page));
    await expect.poll(onStage, { timeout: 10_000 }).toBe(first);
    await page.keyboard.press('Space');
    await expect.poll(onStage).toBe(second);
    await openScreen(page, 'settings', page.getByLabel('A word', { exact: true }));
    await page.getByLabel('A word', { exact: true }).fill(second as string);
    await page.keyboard.press('Enter');
    await decided(page).waitFor();
    await openScreen(page, 'stage', stageCards(page));
    await expect.poll(onStage, { timeout: 10_000 }).not.toBe(second);
    expect(await onStage()).not.toBe(first);
    await page.keyboard.press('Space');
    await expect.poll(async () => [third, ''].includes(await onStage())).toBe(true);
  });

  it('leaves the warm-up one, with the marks from before a word was blocked', async () => {
    const page = await atSettings(30);
    await openScreen(page, 'today', flips(page));
    await openScreen(page, 'desk', markCards(page));
    await page.keyboard.press('Digit1');
    await page.keyboard.press('Space');
    await allKept(page);
    await openScreen(page, 'today', flips(page));
    const [word] = await words(page);
    await openScreen(page, 'settings', page.getByLabel('A word', { exact: true }));
    await page.getByLabel('A word', { exact: true }).fill(word as string);
    await page.keyboard.press('Enter');
    await decided(page).waitFor();
    await openScreen(page, 'desk', markCards(page));
    await expect.poll(() => deskCount(page).textContent()).toMatch(/^2 of/);
    await page.keyboard.press('Digit1');
    await page.keyboard.press('Space');
    await allKept(page);
    await openScreen(page, 'after', marksMade(page));
    expect(await marksMade(page).count()).toBe(2);
    expect(await warmUpsListed(page).count()).toBe(1);
  });

  it('a word or a sound is settled in the settings and taken back there', async () => {
    const page = await atSettings(60);
    const field = page.getByLabel('A word', { exact: true });
    await field.fill('gun');
    await page.getByText(/^Hidden now: it looks like/).waitFor();
    await page.getByRole('button', { name: 'Allow it' }).click();
    await field.fill('gun');
    await page.getByText('It may be shown now.').waitFor();
    await field.fill('make');
    await page.getByLabel('and whatever else sounds like it').check();
    await page.getByRole('button', { name: 'Keep it hidden' }).click();
    await page.getByText('whatever says /māk/').waitFor();
    await openScreen(page, 'words', entries(page));
    const words = () => entries(page).allTextContents();
    await expect.poll(words).not.toContain('make');
    await openScreen(page, 'settings', decided(page));
    await page.getByRole('button', { name: 'Take back: whatever says /māk/' }).click();
    await openScreen(page, 'words', entries(page));
    await expect.poll(words).toContain('make');
    await openScreen(page, 'settings', page.getByLabel('A word', { exact: true }));
    await field.fill('two words');
    await page.getByText('One word, in letters only, please.').waitFor();
    expect(await page.getByRole('button', { name: 'Keep it hidden' }).isDisabled()).toBe(true);
  });

  it('a child’s name waits for her, by its letters and by its sounds', async () => {
    const page = await atSettings(60);
    await page.getByRole('main').getByRole('link', { name: 'Class', exact: true }).click();
    await page.getByLabel('Add children').fill('Kate\nTam B');
    await page.getByRole('button', { name: 'Add 2 children' }).click();
    await openScreen(page, 'settings', page.getByLabel('A word', { exact: true }));
    const field = page.getByLabel('A word', { exact: true });
    await field.fill('kait');
    await page.getByText('Hidden now: Kate is in this group.').waitFor();
    await field.fill('tam');
    await page.getByText('Hidden now: Tam is in this group.').waitFor();
    await page.reload();
    await field.fill('kait');
    await page.getByText('Hidden now: Kate is in this group.').waitFor();
    expect(await barriersIn(page, 'all')).toEqual([]);
  });
});

import { afterEach, describe, expect, it } from 'vitest';
import { askedFor, kilobytes } from '../../bench/wire.bench.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { taughtUpTo } from '../../core/sequence/teach.ts';
import { copyOffered } from './class-page.ts';
import { stageCards, stageEnd } from './stage-page.ts';
import { flips } from './today-page.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;

afterEach(async () => {
  await current?.end();
  current = undefined;
});

/** The letters on the cards of the row, left to right. */
function rowLetters({ page }: Visit): Promise<readonly string[]> {
  return stageCards(page).allTextContents();
}

describe('a teacher who has never been here', () => {
  it('runs a whole warm-up by the keyboard alone, in few acts, with nothing untaught in it', async () => {
    current = await visit();
    const { page } = current;
    await page.getByRole('heading', { name: 'What have they learned?' }).waitFor();

    const line = page.getByRole('slider', { name: 'Taught up to here' });
    let acts = 0;
    const press = async (key: string) => {
      acts += 1;
      await page.keyboard.press(key);
    };
    const tabTo = async (name: string, key = 'Tab') => {
      for (let tabs = 0; tabs < 20; tabs += 1) {
        await page.keyboard.press(key);
        const focused = await page.evaluate(() => {
          const element = document.activeElement;
          return element?.getAttribute('aria-label') ?? element?.textContent ?? '';
        });
        if (focused.includes(name)) return;
      }
      throw new Error(`Twenty presses of ${key} never came to “${name}”`);
    };

    await tabTo('Taught up to here');
    for (let stage = 0; stage < 4; stage += 1) await press('PageDown');
    const upTo = Number(await line.getAttribute('aria-valuenow'));
    expect(upTo).toBeGreaterThan(20);
    expect(await line.getAttribute('aria-valuetext')).toContain(`Step ${upTo} of`);
    await page.getByText(/words can be read now; the next step opens \d+ more/).waitFor();
    expect(kilobytes(await askedFor(page))).toBeLessThan(300);

    await tabTo('Plan today’s warm-up', 'Shift+Tab');
    await press('Enter');
    await page.getByRole('heading', { name: /^Whole class · / }).waitFor();
    await flips(page).first().waitFor();

    await tabTo('Start on the stage');
    await press('Enter');
    await stageCards(page).first().waitFor();
    expect(acts).toBeLessThanOrEqual(6);

    const taught = taughtUpTo(SEQUENCE, upTo);
    const graphemes = new Set(
      [...taught.correspondences].map((id) => correspondenceById.get(id)?.grapheme ?? ''),
    );
    const shown = new Set<string>();
    for (let presses = 0; presses < 60; presses += 1) {
      for (const letters of await rowLetters(current)) shown.add(letters);
      if ((await stageEnd(page).count()) > 0) break;
      await page.keyboard.press('Space');
    }
    expect(await stageEnd(page).textContent()).toBe('That was 30.');
    expect(shown.size).toBeGreaterThan(12);
    for (const letters of shown)
      expect([...graphemes, ...taught.irregularWords, 'e']).toContain(letters);

    await page.keyboard.press('Escape');
    await page.getByRole('heading', { name: 'How it went' }).waitFor();
    expect(await copyOffered(page).count()).toBe(0);
    expect(current.errors).toEqual([]);
  });

  it('is remembered: the next visit begins with today’s plan', async () => {
    current = await visit();
    const { page } = current;
    const line = page.getByRole('slider', { name: 'Taught up to here' });
    await line.focus();
    await page.keyboard.press('PageDown');
    await page.keyboard.press('PageDown');
    const upTo = await line.getAttribute('aria-valuenow');
    expect(Number(upTo)).toBeGreaterThan(0);
    await page.goto(current.url, { waitUntil: 'load' });
    await page.getByRole('heading', { name: /^Whole class · / }).waitFor();
    await page.getByRole('banner').getByText(`step ${upTo} of`).waitFor();
  });

  it('may move the line by dragging it, by a step’s number, and one card by tapping it', async () => {
    current = await visit({ width: 1366, height: 900 });
    const { page } = current;
    const line = page.getByRole('slider', { name: 'Taught up to here' });
    const step = (number: number) =>
      page.getByRole('button', { name: `Taught up to step ${number},` });
    const ofStep = (number: number) => page.getByRole('listitem').filter({ has: step(number) });
    await step(6).click();
    expect(await line.getAttribute('aria-valuenow')).toBe('6');

    const handle = await line.boundingBox();
    const target = await ofStep(3).boundingBox();
    if (!handle || !target) throw new Error('nothing to drag');
    await page.mouse.move(handle.x + 20, handle.y + handle.height / 2);
    await page.mouse.down();
    await page.mouse.move(target.x + target.width, target.y + target.height / 2, { steps: 6 });
    await page.mouse.up();
    expect(await line.getAttribute('aria-valuenow')).toBe('3');
    await page.keyboard.press('Control+z');
    expect(await line.getAttribute('aria-valuenow')).toBe('6');

    const card = ofStep(2).getByRole('button').nth(1);
    expect(await card.getAttribute('aria-pressed')).toBe('true');
    await card.click();
    expect(await card.getAttribute('aria-pressed')).toBe('false');
    expect(await card.getAttribute('aria-label')).toContain('taken out');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await card.getAttribute('aria-pressed')).toBe('true');
  });
});

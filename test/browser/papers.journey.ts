import { afterAll, describe, expect, it } from 'vitest';
import { barriersIn, fitsAcross, SIZES } from './looks.ts';
import { allKept } from './recorded.ts';
import { openScreen, taughtUpTo } from './standing.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterAll(() => current?.end());

const names = Array.from({ length: 30 }, (_, at) => `Maximiliana-Theodora ${at + 10}`);

describe('a pile of spelling papers', () => {
  it('is read by keyboard, read back in cards, taken up again, and says what it shows', async () => {
    current = await visit({ path: '#/papers' });
    const { page, errors } = current;
    await taughtUpTo(page, 60);
    await page.getByRole('link', { name: 'Add children' }).click();
    await page.getByLabel('Add children').fill(names.join('\n'));
    await page.getByRole('button', { name: 'Add 30 children' }).click();
    await openScreen(page, 'papers', page.getByLabel('The words you said'));
    await page.getByLabel('The words you said').fill('ship, lake rain');
    await page.getByLabel('Written on').fill('');
    await page.getByRole('button', { name: 'Begin: 3 words' }).press('Enter');

    const field = (child: number, word: string) =>
      page.getByRole('textbox', { name: `${names[child]}, ${word}` });
    const said = page.getByRole('region', { name: 'Read back' }).getByRole('status');
    const readSoFar = (count: string) => page.getByText(`${count} words read`).waitFor();
    await expect.poll(() => field(0, 'ship').count()).toBe(1);
    await page.keyboard.type('sip');
    await expect.poll(() => said.textContent()).toBe('Sh not heard; the rest heard.');
    await page.getByRole('button', { name: 'Read it another way' }).click();
    await expect.poll(() => said.textContent()).toBe('Heard every sound; sh not yet.');
    await page.getByRole('button', { name: 'Read it as it stands' }).click();
    await expect.poll(() => said.textContent()).toBe('Sh not heard; the rest heard.');
    await field(0, 'ship').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('=');
    await page.keyboard.press('-');
    await page.keyboard.press('F2');
    await expect.poll(() => field(4, 'ship').count()).toBe(1);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.type('lak');
    await expect.poll(() => said.textContent()).toBe('Heard every sound; silent e not yet.');
    for (const [width, height] of SIZES.toReversed()) await fitsAcross(page, width, height);
    expect(await barriersIn(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await readSoFar('7 of 90');

    await page.keyboard.press('Escape');
    await page
      .getByRole('table')
      .getByRole('textbox')
      .evaluate((input) => {
        const data = new DataTransfer();
        data.setData('text', 'lack\nlaik\n\nlake\n');
        input.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
      });
    await readSoFar('10 of 90');

    await allKept(page);
    await page.reload();
    await readSoFar('10 of 90');
    await expect.poll(() => field(4, 'ship').count()).toBe(1);
    await page.getByRole('button', { name: /^sh, .* broke$/ }).click();
    await expect.poll(() => said.textContent()).toBe('sh broke; the rest is right.');

    const slips = page.getByRole('region', { name: 'What they say' }).getByRole('list').first();
    await expect.poll(() => slips.textContent()).toContain('lak for lake');
    expect(await slips.textContent()).toContain('silent e');
    await page.getByText('Change the words or the day', { exact: true }).click();
    await page.getByLabel('Word 3').fill('lake');
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('already');
    await page.getByLabel('Word 3').fill('train');
    await page.getByLabel('More words').fill('them');
    await page.getByRole('button', { name: 'Save the change' }).click();
    await readSoFar('of 120');
    await page.getByRole('columnheader', { name: 'train' }).waitFor();
    await page.keyboard.press('Control+z');
    await readSoFar('of 90');

    await page.getByRole('button', { name: 'Take these papers out' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: '11 of 90 words read' }).waitFor();
    expect(errors).toEqual([]);
  });
});

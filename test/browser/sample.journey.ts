import { afterAll, describe, expect, it } from 'vitest';
import { barriersIn, fitsAcross, SIZES } from './looks.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterAll(() => current?.end());

describe('the sample class', () => {
  it('shows what each screen is for, is never kept, and is gone with one tap', async () => {
    current = await visit({ path: '#/known' });
    const { page, errors } = current;
    await page.getByRole('button', { name: 'Look around with a sample class' }).click();
    await page.getByText('This is a sample class.').waitFor({ timeout: 120_000 });
    await page.getByText('Lucía').first().waitFor();
    for (const [width, height] of SIZES) await fitsAcross(page, width, height);
    expect(await barriersIn(page)).toEqual([]);

    for (const [screen, shows] of [
      ['class', 'Anouk'],
      ['after', 'How it went'],
      ['papers', 'of 108 words read'],
      ['pages', 'Anouk'],
      ['known?child=sample-Farah', 'Wrote '],
    ] as const) {
      await page.goto(page.url().replace(/#.*$/, `#/${screen}`));
      await expect.poll(() => page.getByRole('main').textContent()).toContain(shows);
      expect(await page.getByText('Look around with a sample class').count()).toBe(0);
    }

    await page.getByRole('button', { name: 'Back to my class' }).click();
    await expect.poll(() => page.getByText('This is a sample class.').count()).toBe(0);
    await page.goto(page.url().replace(/#.*$/, '#/class'));
    await page.getByLabel('Add children').fill('Ann');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await page.reload();
    await page.getByText('Ann').first().waitFor();
    expect(await page.getByText('Willow').count()).toBe(0);
    expect(errors).toEqual([]);
  });
});

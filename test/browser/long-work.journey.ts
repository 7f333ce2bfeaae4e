import { rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { classId } from '../../core/ids.ts';
import { makeLog } from '../../core/log/log-file.ts';
import { classYear } from '../class-year.ts';
import { bringCopy, brought, children, saveCopyButton } from './class-page.ts';
import { type Visit, visit } from './visit.ts';

/** A copy that takes seconds to bring in. */
const copy = join(tmpdir(), `sweepline-year-${process.pid}.jsonl`);
let current: Visit;

beforeAll(async () => {
  writeFileSync(copy, makeLog(classYear(classId('year'), 20_000)));
  current = await visit({ path: '#/class' });
});
afterAll(async () => {
  await current?.end();
  rmSync(copy, { force: true });
});

it('a long copy shows how far it is; stopped, nothing has come in; left alone, all of it', async () => {
  const { page } = current;
  await bringCopy(page).setInputFiles(copy);
  await page.getByRole('progressbar', { name: 'Bringing it in' }).waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByText('Stopped. Nothing was brought in.').waitFor();
  expect(await children(page).count()).toBe(0);
  await page.reload({ waitUntil: 'load' });
  await page.getByRole('heading', { name: 'Keep it safe' }).waitFor();
  expect(await children(page).count()).toBe(0);

  await bringCopy(page).setInputFiles(copy);
  await brought(page).getByText('20,000 entries were new.').waitFor();
  expect(await children(page).count()).toBeGreaterThan(0);

  await saveCopyButton(page).click();
  await page.getByRole('progressbar', { name: 'Saving and comparing' }).waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByText('Stopped. No file was made.').waitFor();
});

it('a long text shows how far it is judged; stopped, it is kept, and judged when she wants it', async () => {
  const { page } = current;
  await page.goto(page.url().replace(/#.*$/, '#/text'));
  const field = page.getByLabel('Your text');
  await field.fill(oddWords(900_000));
  await page.getByRole('progressbar', { name: 'Judging the text' }).waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByText('Stopped. Your text is still here, not judged yet.').waitFor();
  expect((await field.inputValue()).length).toBe(900_000);
  await page.getByRole('button', { name: 'Read it after all' }).click();
  await page.getByRole('region', { name: 'How much can be read' }).waitFor();
});

it('a story pasted as an order, all on one line, leaves the screen free; an order of thousands of steps is not used', async () => {
  const { page } = current;
  await page.goto(page.url().replace(/#.*$/, '#/order'));
  await page.getByText('Bring your own order').click();
  await page.getByLabel('Your order, one step a line').fill(oddWords(150_000));
  await page.getByText('0 of 1 line clear').waitFor();
  const steps = Buffer.from('m a s t\n'.repeat(2000));
  await page
    .getByLabel('Choose a file')
    .setInputFiles({ name: 'order.txt', mimeType: 'text/plain', buffer: steps });
  await page.getByText('These are 2,000 steps, more than an order has.').waitFor();
  expect(await page.getByRole('button', { name: 'Use this order' }).isDisabled()).toBe(true);
});

/** Words that no list has, each another, of so many signs in all. */
function oddWords(signs: number): string {
  let text = '';
  for (let n = 0; text.length < signs; n++)
    text += `b${(n * 7919).toString(36).replace(/\d/g, 'a')}in `;
  return text.slice(0, signs);
}

import { rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { makeLog } from '../../core/log/log-file.ts';
import { classYear } from '../class-year.ts';
import { bringCopy, brought, children, saveCopyButton } from './class-page.ts';
import { type Visit, visit } from './visit.ts';

/** A copy that takes seconds to bring in. */
const copy = join(tmpdir(), `sweepline-year-${process.pid}.jsonl`);
let current: Visit;

beforeAll(async () => {
  writeFileSync(copy, makeLog(classYear('year', 20_000)));
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

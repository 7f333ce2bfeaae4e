import { afterAll, expect, it } from 'vitest';
import { children } from './class-page.ts';
import { barriersIn, fitsAcross } from './looks.ts';
import { recorded } from './recorded.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterAll(() => current?.end());

// The columns that are read of the users.csv of OneRoster 1.1, as the parser's own tests have them whole.
const users = [
  'sourcedId,status,role,givenName,familyName,email',
  'u1,active,student,Wren,Ashdown,wren@school.example',
  'u2,active,teacher,Morgan,Oakes,morgan@school.example',
  'u3,active,student,Tam,Beck,',
  'u4,active,student,Tam,Kite,',
  'u5,tobedeleted,student,Olu,Lark,',
  'u6,active,student,,Lark,',
].join('\r\n');

it('a class list is looked over, mended and added; only first names are kept, and nobody twice', async () => {
  current = await visit({ path: '#/class' });
  const { page, errors } = current;
  const bring = () =>
    page
      .getByLabel('Choose a list file')
      .setInputFiles({ name: 'users.csv', mimeType: 'text/csv', buffer: Buffer.from(users) });
  await page.getByText('Bring a class list').click();
  await page.getByLabel('Add children').fill('Lark');
  await bring();
  await page.getByText('one person not listed as a student').waitFor();
  await page.getByRole('link', { name: 'Known' }).click();
  await page.getByRole('heading', { name: 'What do they know?' }).waitFor();
  await page.getByRole('link', { name: 'Class', exact: true }).first().click();
  await page.getByText('one person not listed as a student').waitFor();
  await page.getByText('one child marked as to be deleted').waitFor();
  const names = page.getByLabel(/^Name in line /);
  const values = () =>
    names.evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
  expect(await values()).toEqual(['Wren', 'Tam B', 'Tam K', '']);
  await names.last().fill('Ola');
  for (const width of [390, 320]) await fitsAcross(page, width, 800);
  expect(await barriersIn(page)).toEqual([]);
  await page.setViewportSize({ width: 1366, height: 768 });
  await page.getByRole('button', { name: 'Add 4 children' }).click();
  const chips = children(page);
  await expect.poll(() => chips.allTextContents()).toEqual(['Ola', 'Tam B', 'Tam K', 'Wren']);

  await bring();
  await expect.poll(() => page.getByText('in the class already').count()).toBe(3);
  expect(await page.getByRole('button', { name: 'Add 0 children' }).isDisabled()).toBe(true);
  await page.reload();
  expect(await page.getByLabel('Add children').inputValue()).toBe('Lark');
  expect(await page.getByLabel('Paste the list here').inputValue()).toBe('');
  const shelf = await page.evaluate(() => JSON.stringify(localStorage));
  const kept = JSON.stringify(await recorded(page)) + shelf;
  for (const more of ['Ashdown', 'Kite', 'school.example', 'Morgan']) {
    expect(kept).not.toContain(more);
  }
  expect(errors).toEqual([]);
});

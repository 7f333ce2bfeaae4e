import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { makeLetterForm } from '../../core/checks/letter-form.ts';
import { checkId, childId, classId, eventId } from '../../core/ids.ts';
import { WHOLE_CLASS } from '../../core/log/class-state.ts';
import type { EventSpec } from '../../core/log/event.ts';
import { makeLog } from '../../core/log/log-file.ts';
import { SEQUENCE } from '../../core/sequence/built-in.ts';
import { stepOf } from '../../core/sequence/step-of.ts';
import { taughtUpTo } from '../../core/sequence/teach.ts';
import { standingAt } from '../arbitrary-events.ts';
import { builtLexicon } from '../built-lexicon.ts';
import { bringCopy, children } from './class-page.ts';
import { barriersIn, fitsAcross, SIZES } from './looks.ts';
import { wordsForHome } from './pages-page.ts';
import { openScreen } from './standing.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterAll(() => current?.end());

const long = 'Maximiliana-Theodora Fitzgerald-Oyelaran';
/** The last step before o has a second sound. */
const STEP = (stepOf(SEQUENCE, { kind: 'card', id: 'o=OW' }) ?? Number.NaN) - 1;

/** A class of one child who in six checks of letter sounds read everything but o, which was said as in *met*. */
function classLog(): string {
  const specs: EventSpec[] = [
    { kind: 'set', body: { of: 'class', id: classId('room'), field: 'name', value: 'Room 4' } },
    {
      kind: 'set',
      body: { of: 'group', id: WHOLE_CLASS, field: 'standing', value: standingAt(STEP) },
    },
    { kind: 'set', body: { of: 'child', id: childId('one'), field: 'name', value: long } },
  ];
  for (let turn = 0; turn < 6; turn++) {
    const id = checkId(`check ${turn}`);
    const { form } = makeLetterForm(taughtUpTo(SEQUENCE, STEP), turn, 60);
    const day = `2026-03-0${turn + 1}`;
    specs.push({
      kind: 'check-begun',
      body: { checkId: id, child: childId('one'), day, form, limit: 60 },
    });
    form.items.forEach(({ text }, item) => {
      if (text !== 'o') return;
      const broke = [{ card: 1, heard: { kind: 'phoneme', sound: 'EH' } as const }];
      specs.push({ kind: 'check-marked', body: { checkId: id, item, outcome: 'wrong', broke } });
    });
    specs.push({
      kind: 'check-ended',
      body: { checkId: id, reached: form.items.length, seconds: 60 },
    });
  }
  const stamp = (spec: EventSpec, at: number) => ({
    id: eventId(`event ${at}`),
    classId: classId('room'),
    at: at + 1,
    by: 'desk',
    ...spec,
  });
  return makeLog(specs.map(stamp));
}

/** Children of whom nothing was noted yet. */
function threeChildren(): string {
  const names = ['Ada', 'Ben', 'Cleo'];
  const specs: EventSpec[] = [
    {
      kind: 'set',
      body: { of: 'group', id: WHOLE_CLASS, field: 'standing', value: standingAt(STEP) },
    },
    ...names.map(
      (value): EventSpec => ({
        kind: 'set',
        body: { of: 'child', id: childId(value), field: 'name', value },
      }),
    ),
  ];
  return makeLog(
    specs.map((spec, at) => ({
      id: eventId(`event ${at}`),
      classId: classId('room'),
      at: at + 1,
      by: 'desk',
      ...spec,
    })),
  );
}

async function looksWell(page: Page): Promise<void> {
  for (const [width, height] of SIZES.toReversed()) await fitsAcross(page, width, height);
  expect(await barriersIn(page)).toEqual([]);
}

it('pages on a child say what is known, give words that this child can read, and fit on a sheet', async () => {
  current = await visit({ path: '#/pages' });
  const { page, errors } = current;
  await page.getByRole('link', { name: 'Add children' }).click();
  const file = { name: 'room.jsonl', mimeType: 'text/plain', buffer: Buffer.from(classLog()) };
  await bringCopy(page).setInputFiles(file);
  await children(page).first().waitFor();
  await openScreen(page, 'pages', page.getByRole('article'));
  await page.getByRole('article').getByRole('heading', { name: 'Shaky' }).waitFor();
  await page.getByRole('row', { name: /^o, .*said \/ĕ\// }).waitFor();
  await page.getByText('not a diagnosis').waitFor();
  await page.getByLabel('A line of your own').fill('Ask about glasses');
  await looksWell(page);
  for (const format of ['Letter', 'A4']) {
    const sheets = (await page.pdf({ format })).toString('latin1').match(/\/Type \/Page\b/g);
    expect(sheets, format).toHaveLength(1);
  }

  await page.getByRole('button', { name: 'For the family' }).click();
  const words = wordsForHome(page);
  await words.first().waitFor();
  const given = await words.allTextContents();
  expect(given).toHaveLength(15);
  for (const word of given) {
    const readings = builtLexicon.readings(builtLexicon.indexOf(word));
    const cards = readings.flatMap(({ cards }) => cards.map(({ id }) => id));
    expect(cards, word).not.toContain('o=AA');
  }
  await looksWell(page);
  await page.getByRole('button', { name: 'For the next teacher' }).click();
  await page.getByRole('row', { name: long }).waitFor();
  await looksWell(page);

  await page.getByRole('button', { name: 'Who needs what' }).click();
  await page.getByRole('row', { name: new RegExp(`^o, .*${long} \\(\\d of \\d\\)`) }).waitFor();
  await looksWell(page);

  await page.getByRole('button', { name: 'As tables' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save Short checks' }).click(),
  ]);
  const table = readFileSync(await download.path(), 'utf8').split('\r\n');
  expect(table[0]).toMatch(/^\uFEFFdate,pupil,kind,/);
  expect(table).toHaveLength(1 + 6 + 1);

  await page.reload();
  await page.getByRole('button', { name: 'For a meeting' }).click();
  await expect
    .poll(() => page.getByLabel('A line of your own').inputValue())
    .toBe('Ask about glasses');
  expect(errors).toEqual([]);
});

it('notes for the families of the whole class are one file, a page for each child', async () => {
  await current?.end();
  current = await visit({ path: '#/pages' });
  const { page, errors } = current;
  await page.getByRole('link', { name: 'Add children' }).click();
  const file = { name: 'room.jsonl', mimeType: 'text/plain', buffer: Buffer.from(threeChildren()) };
  await bringCopy(page).setInputFiles(file);
  await children(page).first().waitFor();
  await openScreen(page, 'pages', page.getByRole('article'));
  // Of a child who was never heard no page says that nothing is shaky.
  await page.getByText('Nothing taught so far was read alone yet.').first().waitFor();
  expect(await page.getByText('is shaky').count()).toBe(0);
  await page.getByRole('button', { name: 'For the family' }).click();
  await page.getByLabel('About').selectOption({ label: 'Each child, a page of its own' });
  await expect
    .poll(() => page.getByRole('button', { name: 'Print these 3 pages' }).isEnabled())
    .toBe(true);
  for (const name of ['Ada', 'Ben', 'Cleo']) {
    await page.getByRole('article').filter({ hasText: name }).waitFor();
  }
  await expect.poll(() => page.getByText('Choosing words').count()).toBe(0);
  expect(await barriersIn(page)).toEqual([]);
  const sheets = (await page.pdf({ format: 'Letter' })).toString('latin1');
  expect(sheets.match(/\/Type \/Page\b/g)).toHaveLength(3);
  expect(errors).toEqual([]);
});

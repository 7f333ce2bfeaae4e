import type { Locator, Page } from 'playwright-core';
import { afterEach, expect, it } from 'vitest';
import { type Day, parseDay, weekdayOf } from '../../core/learners/day.ts';
import { makeLog } from '../../core/log/log-file.ts';
import { today } from '../../web/state/day.ts';
import { STORY_CHILDREN, sevenDays } from '../seven-days.ts';
import { countMarks, marksOf } from '../seven-days-marks.ts';
import { bringCopy, brought } from './class-page.ts';
import { wordsForHome } from './pages-page.ts';
import { openScreen } from './standing.ts';
import { type Visit, visit } from './visit.ts';

let current: Visit | undefined;
afterEach(() => current?.end());

const NAMES = Object.keys(STORY_CHILDREN);

/** What is folded away is read, too. */
const HIDDEN = { includeHidden: true };

/** The rows of tables of what was seen: the last three as letters, and `right of asked`. */
async function rowsIn(tables: Locator): Promise<readonly string[]> {
  const rows = await tables
    .getByRole('row', HIDDEN)
    .evaluateAll((all) =>
      (all as HTMLTableRowElement[]).map(({ cells }) => [...cells].map((cell) => cell.textContent)),
    );
  const seen = rows.filter(([card]) => card !== 'Card');
  return seen.map(([, last, right]) => `${last} ${right}`.trim()).sort();
}

/** What such rows should say, straight from the marks. */
function rowsByMarks(name: string, isAsked: (marks: string) => boolean): readonly string[] {
  const words = { r: 'right', m: 'missed' };
  return [...marksOf(name).values()]
    .filter(({ marks }) => isAsked(marks))
    .map(({ marks }) => {
      const last = [...marks.slice(-3)].map((mark) => words[mark as 'r' | 'm']).join(', ');
      return `${last} ${countMarks(marks, 'r')} of ${marks.length}`;
    })
    .sort();
}

/** What an address asks for. */
const asked = (to: string) => new URLSearchParams(to.slice(to.indexOf('?')));

/** The tables of what was seen of each card. */
const seenTables = (of: Page | Locator): Locator =>
  of.getByRole('table', HIDDEN).filter({ hasText: 'Last 3' });

it('seven days of twenty children: no page says what the marks do not', async () => {
  current = await visit({ path: '#/known' });
  const { page, errors } = current;
  const now = parseDay(today()) as Day;
  const lastTuesday = now - ((weekdayOf(now) - 1 + 7) % 7);
  await page.getByRole('link', { name: 'Add your children' }).click();
  const buffer = Buffer.from(makeLog(sevenDays(lastTuesday - 8)));
  const file = { name: 'room.jsonl', mimeType: 'text/plain', buffer };
  await bringCopy(page).setInputFiles(file);
  await brought(page).waitFor();

  const cells = page.getByRole('table').getByRole('cell').getByRole('link');
  await openScreen(page, 'known', cells);
  await page.getByRole('combobox', { name: 'Sounds' }).selectOption('all');
  const links = (
    await cells.evaluateAll((all) =>
      all.map((link) => ({ to: link.getAttribute('href') ?? '', says: link.ariaLabel ?? '' })),
    )
  ).filter(({ to }) => NAMES.includes(asked(to).get('at') ?? ''));
  expect(links.length).toBeGreaterThan(20 * 30);
  for (const { to, says } of links) {
    const { marks } = marksOf(asked(to).get('at') ?? '').get(asked(to).get('card') ?? '') ?? {
      marks: '',
    };
    if (marks === '') expect(says).toMatch(/^not yet seen\. Not read/);
    else expect(says).toContain(`Right ${countMarks(marks, 'r')} of ${marks.length} since`);
    if (marks.slice(-3).includes('m')) expect(says).not.toMatch(/^secure/);
    if (countMarks(marks.slice(-3), 'm') >= 2) expect(says).toMatch(/^shaky/);
  }

  for (const name of NAMES) {
    const child = page.getByRole('article', { name, exact: true });
    await openScreen(page, `known?child=${name}`, child);
    const sentence = child
      .getByRole('paragraph')
      .filter({ hasNot: page.getByRole('link') })
      .first();
    const said = (await sentence.textContent()) ?? '';
    expect(await rowsIn(seenTables(page)), name).toEqual(rowsByMarks(name, Boolean));

    const paper = page.getByRole('article');
    await openScreen(
      page,
      `pages?child=${name}`,
      paper.getByRole('heading', { name, exact: true }),
    );
    await paper.getByText(said, { exact: true }).waitFor();
    const shaky = await rowsIn(seenTables(paper));
    const missedTwice = rowsByMarks(name, (marks) => countMarks(marks.slice(-3), 'm') >= 2);
    const beyond = STORY_CHILDREN[name]?.group === 'fern' ? 1 : 0;
    expect(missedTwice.filter((row) => !shaky.includes(row)).length).toBeLessThanOrEqual(beyond);
    const mayBe = rowsByMarks(name, (marks) => marks.slice(-3).includes('m'));
    for (const row of shaky) expect(mayBe).toContain(row);
  }

  await openScreen(page, 'known?child=Ines', page.getByRole('article', { name: 'Ines' }));
  await page.getByRole('row', { name: 'in the middle 15 of 21 short i' }).waitFor();
  await openScreen(page, 'known?child=Juno', page.getByRole('article', { name: 'Juno' }));
  await page.getByText('Hear Juno again, and say where.').waitFor();
  await page.getByText('Juno stumbled, and it was not said at which card').waitFor();

  const family = page.getByRole('button', { name: 'For the family' });
  await openScreen(page, 'pages?child=Amir', family);
  await family.click();
  await page.getByText('Words that Amir can read').waitFor();
  const words = await wordsForHome(page).allTextContents();
  expect(words).toHaveLength(15);
  // Amir drops the second consonant of blends: none stands in a word that Amir is said to read.
  for (const word of words) expect(word).not.toMatch(/^(s[cklmnptw]|[bcfgp]l|[bcdfgpt]r)|st/);
  await page.getByRole('article').getByText('st, 2 sounds').waitFor();
  await openScreen(page, 'pages?child=Ivo', page.getByText('Words to try'));

  await page.getByRole('button', { name: 'For the next teacher' }).click();
  await page
    .getByText('drops the second consonant in st, pr, bl and fl: 11 of 14')
    .first()
    .waitFor();
  expect(errors).toEqual([]);
});

/** Read back by a reader of the test's own and, where it is installed, by Poppler. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contentsIn, type Element, structureIn, unmarkedPaint } from '../test/pdf-structure.ts';
import { cardPages } from './cards/card-pages.ts';
import { paperCard } from './cards/paper-card.ts';
import { stripPages } from './cards/strip-pages.ts';
import { makePdf } from './document.ts';
import { inks } from './ink.ts';
import { box, type Page } from './page.ts';
import type { Picture } from './picture.ts';
import { homeSheet } from './sheets/home-sheet.ts';
import { wordsSheet } from './sheets/words-sheet.ts';
import { openTypeface } from './typeface.ts';
import { ANDIKA } from './typeface-files.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const square: Picture = { box: 1, parts: [{ path: 'M0 0H1V1H0Z', fill: '#336699' }] };
/** The keyword of sh, the one card here with a picture. */
const keyword = paperCard('sh=SH').keyword ?? '';
const look = {
  paper: 'letter',
  inks: inks(false),
  grey: false,
  typeface,
  style: 'classroom',
  pictures: new Map([[keyword, square]]),
} as const;

const fileOf = (pages: readonly Page[], title = 'Cards') => makePdf({ title, pages }, typeface);
const cards = ['sh=SH', 'a_e=EY', 'st=S+T'] as const;
const home = homeSheet(
  { cards, words: ['ship', 'shape'], sentences: ['The ship is big.'], reader: 'Mina' },
  look,
);
const words = wordsSheet(
  { title: 'Words to read', below: '', words: Array.from({ length: 90 }, () => 'ship') },
  look,
);

/** The roles of an element and of all in it, from the top down. */
function roles({ role, kids }: Element): readonly string[] {
  return [role, ...kids.flatMap(roles)];
}

describe('the structure of a file', () => {
  it('has a card as what it says, its picture by what it shows, its keyword', async () => {
    const pages = cardPages(
      cards.map(paperCard),
      { kind: 'index', paper: 'letter', backs: null },
      look,
    );
    const { role, kids } = structureIn(await fileOf(pages));
    expect(role).toBe('Document');
    expect(kids.map((kid) => kid.says ?? kid.alt ?? kid.role)).toEqual([
      'P',
      keyword,
      'P',
      'a–e',
      'P',
      'st',
    ]);
    const [, picture] = kids;
    const marks = pages[0]!.marks.filter(({ part }) => part?.role === 'Figure');
    expect(marks).toHaveLength(1);
    // The box of a picture is in points from the lower left corner (ISO 32000-1, table 344).
    const { x = 0, y = 0 } = marks[0] ?? {};
    expect(picture?.box?.[0]).toBeCloseTo((x / 25.4) * 72, 2);
    expect(picture?.box?.[3]).toBeCloseTo(612 - (y / 25.4) * 72, 2);
  });

  it('turns the box of a picture with its page', async () => {
    const sheet = (upsideDown: boolean): Page => ({
      paper: 'letter',
      upsideDown,
      marks: [
        {
          ...box(20, 30, { width: 10, height: 10 }, { fill: '#000000' }),
          part: {
            role: 'Figure',
            shows: { alt: 'a box', box: { x: 20, y: 30, width: 10, height: 10 } },
          },
        },
      ],
    });
    const { kids } = structureIn(await fileOf([sheet(false), sheet(true)]));
    const [plain, turned] = kids.map((kid) => kid.box);
    const [left = 0, low = 0, right = 0, high = 0] = plain ?? [];
    [612 - right, 792 - high, 612 - left, 792 - low].forEach((place, at) => {
      expect(turned?.[at]).toBeCloseTo(place, 2);
    });
  });

  it('of a sheet is a title, paragraphs, headings and lists', async () => {
    const { kids } = structureIn(await fileOf(home));
    expect(kids.map(({ role }) => role)).toEqual([
      'H1',
      'P',
      'P',
      'H2',
      'L',
      'H2',
      'L',
      'H2',
      'P',
      'P',
    ]);
    const lists = kids.filter(({ role }) => role === 'L');
    expect(lists.map((list) => list.kids.length)).toEqual([1, 2]);
    expect(roles(lists[1]!)).toEqual(['L', 'LI', 'LBody', 'LI', 'LBody']);
  });

  it('keeps a list whole over two pages', async () => {
    expect(words).toHaveLength(2);
    const { kids } = structureIn(await fileOf(words));
    const [list, ...others] = kids.filter(({ role }) => role === 'L');
    expect(others).toEqual([]);
    expect(list?.kids).toHaveLength(90);
  });

  it('leaves nothing painted that is neither of a part nor marked as decoration', async () => {
    const pages = [
      ...cardPages(cards.map(paperCard), { kind: 'half', paper: 'a4', backs: 'short' }, look),
      ...stripPages(
        [[paperCard('m=M')], [paperCard('a=AE')]],
        { paper: 'a4', rings: 4, backs: 'long' },
        look,
      ),
      ...home,
      ...words,
    ];
    const unmarked = unmarkedPaint(await fileOf(pages));
    expect(unmarked).toHaveLength(pages.length);
    expect(unmarked.filter((count) => count > 0)).toEqual([]);
  });

  it('says what is drawn over letters, which no typeface has', async () => {
    const mark = { kind: 'text', text: 'o\u035do', x: 20, y: 20, size: 8, ink: '#000000' } as const;
    const bytes = await fileOf([{ paper: 'a4', marks: [{ ...mark, part: { role: 'P' } }] }]);
    expect(contentsIn(bytes)[0]).toMatch(/\/Span <<\s*\/ActualText \(\xfe\xff/);
  });
});

describe.skipIf(!hasPoppler())('read by another program (Poppler)', () => {
  it('has the title, the language and all words in their order, lines apart', async () => {
    const path = join(mkdtempSync(join(tmpdir(), 'tagged-')), 'home.pdf');
    writeFileSync(path, await fileOf(home, 'Home practice'));
    const info = execFileSync('pdfinfo', [path], { encoding: 'utf8' });
    expect(info).toMatch(/Title: +Home practice/);
    expect(info).toMatch(/Tagged: +yes/);
    const text = execFileSync('pdfinfo', ['-struct-text', path], { encoding: 'utf8' });
    const said = [...text.matchAll(/"(.*)"/g)].map(([, words]) => words?.trim());
    expect(said.slice(0, 4)).toEqual([
      'Read together',
      'For Mina Week of',
      expect.stringMatching(/^Five minutes are enough, .* Check a box for each day\.$/),
      'Say the sound',
    ]);
    expect(said).toContain('The ship is big.');
  });
});

function hasPoppler(): boolean {
  try {
    execFileSync('pdfinfo', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/**
 * Measured on rendered pages. Nothing is printed within 6 mm of the edge (common practice: what
 * office printers leave blank); letters for children are at least 18 pt (common practice, no source).
 */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import type { Flip } from '../../core/boards/shapes/board.ts';
import type { CheckForm } from '../../core/checks/check-form.ts';
import type { Drill } from '../../core/drills/drill.ts';
import type { CardId } from '../../core/language/card-id.ts';
import type { Phoneme } from '../../core/language/phonemes.ts';
import { inkBox, marginsAreWhite, renderPdf } from '../../test/pdf-pixels.ts';
import { makePdf } from '../document.ts';
import { inks } from '../ink.ts';
import { type Page, pageSize, type TextMark } from '../page.ts';
import { PAPERS, type Paper, points } from '../paper.ts';
import { openTypeface } from '../typeface.ts';
import { ANDIKA } from '../typeface-files.ts';
import { boardSheet } from './board-sheet.ts';
import { checkSheet } from './check-sheet.ts';
import { dictationSheet } from './dictation-sheet.ts';
import { homeSheet } from './home-sheet.ts';
import { planSheet } from './plan-sheet.ts';
import type { SheetLook } from './sheet-look.ts';
import { wordsSheet } from './words-sheet.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const lookOn = (paper: Paper): SheetLook => ({
  paper,
  typeface,
  inks: inks(false),
  style: 'classroom',
});

function flip(kind: Flip['kind'], word: string, cards: CardId[], sounds: Phoneme[]): Flip {
  return { kind, word, cards, sounds };
}

/** Thirty flips with the widest words that boards make. */
const run = Array.from({ length: 10 }, () => [
  flip('real', 'straightest', ['str=S+T+R', 'aigh=EY', 't=T'], ['S', 'T', 'R', 'EY', 'T']),
  flip('nonsense', 'thoughmble', ['th=TH', 'ough=AO', 'm=M'], ['TH', 'AO', 'M']),
  flip('real', 'pig', ['p=P', 'i=IH', 'g=G'], ['P', 'IH', 'G']),
]).flat();
const every: readonly CardId[] = [
  'sh=SH',
  'a_e=EY',
  'igh=AY',
  'ough=AO',
  'str=S+T+R',
  'le=AX+L',
  'ed=T',
  'oo=UH',
];
const drill: Drill = {
  seed: 1,
  visual: [...every, 'b=B', 'qu=K+W', 'tch=CH', 'g=G'] satisfies readonly CardId[],
  auditory: [
    { phonemes: ['EY'], spellings: ['a_e=EY', 'ai=EY', 'ay=EY', 'a=EY', 'eigh=EY', 'ea=EY'] },
    { phonemes: ['UH'], spellings: ['oo=UH'] },
  ],
  board: { shape: 'syllable', piles: [every.slice(0, 5), ['a=AE', 'igh=AY'], ['tch=CH', 'ck=K']] },
  run,
  shortfall: null,
};
const longWords = ['uncharacteristically', 'nevertheless', 'pig', 'a', 'knowledgeable'];
const longName = 'the Friday afternoon reading group of Wilhelmina-Christabel and Bartholomew';
const form: CheckForm = {
  kind: 'nonsense-words',
  seed: 7,
  items: Array.from({ length: 30 }, (_, at) => ({
    text: at % 3 === 0 ? 'sploughtch' : 'mip',
    cards: at % 3 === 0 ? ['spl=S+P+L', 'ough=AO', 'tch=CH'] : ['m=M', 'i=IH', 'p=P'],
    answers: [at % 3 === 0 ? ['S', 'P', 'L', 'AO', 'CH'] : ['M', 'IH', 'P']],
  })),
  hardness: 0,
  offBy: 0,
};
const letters: CheckForm = {
  ...form,
  kind: 'letter-sounds',
  items: Array.from({ length: 25 }, (_, at) => ({
    text: at % 2 === 0 ? 'ough' : 'a_e',
    cards: [at % 2 === 0 ? 'ough=AO' : 'a_e=EY'],
    answers: at % 2 === 0 ? [['AO'], ['AH', 'F'], ['OW']] : [['EY']],
  })),
};
const dictated = longWords.map((text) => ({ text, isNew: true }));
const sentence = {
  text: 'The pig and the uncharacteristically big dog had to sit on a red mat in the sun.',
  isNew: false,
};

function sheets(look: SheetLook): Readonly<Record<string, readonly Page[]>> {
  return {
    plan: planSheet({ drill, taught: new Set(every), whom: longName, day: 'Monday' }, look),
    board: boardSheet({ board: drill.board, real: longWords, nonsense: ['mip'], stopped: 0 }, look),
    words: wordsSheet({ title: 'Words', below: '', words: Array(12).fill(longWords).flat() }, look),
    dictation: dictationSheet(
      { words: dictated, sentences: [sentence, sentence], heardAlso: () => [] },
      '',
      look,
    ),
    home: homeSheet({ cards: every, words: longWords, sentences: [sentence.text] }, look),
    spanish: homeSheet(
      { cards: every, words: longWords, sentences: [sentence.text], language: 'spanish' },
      look,
    ),
    check: checkSheet(form, look),
    letters: checkSheet(letters, look),
  };
}

const names = Object.keys(sheets(lookOn('letter')));

/** Where the letters of a line are, in mm. */
function inkOf({ text, x, y, size, weight = 'regular', align = 'left' }: TextMark) {
  const { width } = typeface.lay(text, size, weight);
  const ink = typeface.ink(text, size, weight);
  const start = x - { left: 0, center: width / 2, right: width }[align];
  return {
    left: start + ink.left,
    right: start + ink.right,
    top: y - ink.top,
    bottom: y - ink.bottom,
  };
}

const texts = ({ marks }: Page) =>
  marks.filter((mark): mark is TextMark => mark.kind === 'text' && mark.text !== '');

describe('sheets on paper', () => {
  test.each(names)(
    '%s: every letter is there, and nothing within 6 mm of the edge',
    async (name) => {
      const pages = sheets(lookOn('letter'))[name] as readonly Page[];
      const rendered = await renderPdf(await makePdf({ title: name, pages }, typeface), 72);
      for (const [at, raster] of rendered.entries()) {
        expect(marginsAreWhite(raster, 6)).toBe(true);
        const all = texts(pages[at] as Page);
        expect(all.length).toBeGreaterThan(2);
        for (const mark of all) {
          const asked = inkOf(mark);
          const found = inkBox(raster, asked);
          const wide = (found ? found.right - found.left : 0) / (asked.right - asked.left);
          const high = (found ? found.bottom - found.top : 0) / (asked.bottom - asked.top);
          expect([mark.text, wide > 0.6 && high > 0.5]).toEqual([mark.text, true]);
        }
      }
    },
  );

  test('on A4 too nothing is within 6 mm of the edge', async () => {
    const pages = Object.values(sheets(lookOn('a4'))).flat();
    const rendered = await renderPdf(await makePdf({ title: 'All', pages }, typeface), 36);
    expect(rendered.length).toBeGreaterThan(8);
    expect(rendered.every((raster) => marginsAreWhite(raster, 6))).toBe(true);
  });

  test.each(names)('%s: no two texts lie on each other, and none runs off the page', (name) => {
    for (const paper of PAPERS) {
      for (const page of sheets(lookOn(paper))[name] as readonly Page[]) {
        const { width, height } = pageSize(page);
        const all = texts(page).map((mark) => ({ ...inkOf(mark), text: mark.text }));
        for (const [at, one] of all.entries()) {
          const inside =
            one.left > 6 && one.right < width - 6 && one.top > 6 && one.bottom < height - 6;
          expect([one.text, inside]).toEqual([one.text, true]);
          for (const other of all.slice(at + 1)) {
            const apart =
              one.right <= other.left ||
              other.right <= one.left ||
              one.bottom <= other.top ||
              other.bottom <= one.top;
            expect([one.text, other.text, apart]).toEqual([one.text, other.text, true]);
          }
        }
      }
    }
  });

  test('the plan has all thirty flips in order, real ones over a line, and the three turns', () => {
    const pages = sheets(lookOn('letter')).plan as readonly Page[];
    const said = pages.flatMap(texts).map(({ text }) => text);
    expect(said.filter((text) => run.some(({ word }) => word === text))).toEqual(
      run.map(({ word }) => word),
    );
    const lines = pages
      .flatMap(({ marks }) => marks)
      .filter((mark) => mark.kind === 'shape' && mark.fill === inks(false).sweep);
    expect(lines).toHaveLength(run.filter(({ kind }) => kind === 'real').length);
    expect(said).toEqual(expect.arrayContaining(['My turn', 'Our turn', 'Your turn']));
    expect(said).toContain('/thawm/');
  });

  test.each(PAPERS)('a plan of thirty flips with the widest words fits one page of %s', (paper) => {
    expect(sheets(lookOn(paper)).plan).toHaveLength(1);
  });

  test('her page of a dictation says which word wants a sentence, the children’s does not', () => {
    const heard = new Map([['pen', ['pin']]]);
    const words = ['pen', 'sun'].map((text) => ({ text, isNew: false }));
    const made = { words, sentences: [], heardAlso: (word: string) => heard.get(word) ?? [] };
    const [hers, childs] = dictationSheet(made, '', lookOn('letter')).map((page) =>
      texts(page).map(({ text }) => text),
    );
    const said = 'Sounds like pin: say it in a sentence.';
    expect(hers?.filter((text) => text.startsWith('Sounds like'))).toEqual([said]);
    expect(childs).not.toContain(said);
  });

  test('what children read is at least 18 pt', () => {
    const { words, home, check } = sheets(lookOn('a4')) as Record<string, readonly Page[]>;
    const sizes = (pages: readonly Page[] | undefined, wanted: readonly string[]) =>
      (pages ?? [])
        .flatMap(texts)
        .filter(({ text }) => wanted.includes(text))
        .map(({ size }) => size);
    const read = [
      ...sizes(words, longWords),
      ...sizes(home, longWords),
      ...sizes(check?.slice(0, 1), ['mip']),
    ];
    expect(read.length).toBeGreaterThan(70);
    expect(Math.min(...read)).toBeGreaterThanOrEqual(points(18));
  });

  test('a board that is not clean says so, and a scoring page says what it is not', () => {
    const spec = { board: drill.board, real: ['pig'], nonsense: [], stopped: 3 };
    const said = (pages: readonly Page[]) =>
      pages
        .flatMap(texts)
        .map(({ text }) => text)
        .join(' ');
    expect(said(boardSheet(spec, lookOn('a4')))).toContain('For the screen only');
    expect(said(boardSheet({ ...spec, stopped: 0 }, lookOn('a4')))).toContain('Clean');
    expect(said(checkSheet(form, lookOn('a4')))).toContain('not a diagnosis');
  });

  test.each([
    [form, [5, 5, 5, 5, 5, 5]],
    [letters, [10, 10, 5]],
  ])('a check has the rows that the child sees on the screen', (made, rows) => {
    const shown = new Set(made.items.map(({ text }) => text.replace('_', '–')));
    const [page] = checkSheet(made, lookOn('letter'));
    const heights = texts(page as Page).flatMap(({ text, y }) => (shown.has(text) ? y : []));
    const lines = [...new Set(heights)].map((line) => heights.filter((y) => y === line).length);
    expect(lines).toEqual(rows);
  });

  test('sounds that the typeface has no sign of IPA for are written as classrooms do', () => {
    const pages = planSheet(
      { drill, taught: new Set(every), whom: 'all', day: '' },
      { ...lookOn('a4'), style: 'ipa' },
    );
    const said = pages.flatMap(texts).map(({ text }) => text);
    expect(said).toContain('/thawm/');
    expect(said.some((text) => text.includes('θ'))).toBe(false);
  });

  test('are byte for byte the same for the same sheet', async () => {
    const [one, other] = await Promise.all(
      [1, 2].map(() =>
        makePdf({ title: 'All', pages: Object.values(sheets(lookOn('letter'))).flat() }, typeface),
      ),
    );
    expect(Buffer.from(one as Uint8Array).equals(Buffer.from(other as Uint8Array))).toBe(true);
  });
});

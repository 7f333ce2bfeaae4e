import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { loadLexicon, loadScreen } from '../../../cli/engine.ts';
import { nextForm } from '../../../core/checks/next-form.ts';
import { dictationFor } from '../../../core/dictation/dictation.ts';
import { SENTENCES } from '../../../core/dictation/sentences.ts';
import { buildDrill } from '../../../core/drills/build-drill.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import { taughtUpTo } from '../../../core/sequence/teach.ts';
import type { WordScreen } from '../../../core/words/screen.ts';
import { decideWord, NO_RULES, screenForClass } from '../../../core/words/teacher-rules.ts';
import { inks } from '../../../print/ink.ts';
import type { Page } from '../../../print/page.ts';
import { points } from '../../../print/paper.ts';
import { openTypeface } from '../../../print/typeface.ts';
import { ANDIKA } from '../../../print/typeface-files.ts';
import { ANY_WORD } from '../wish.ts';
import { laySheet, type SheetStock } from './lay-sheets.ts';
import { type Choices, choices as initial } from './print-choices.ts';
import { isSheet, type SheetKind, THINGS } from './print-things.ts';
import { wordsToRead } from './words-to-read.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const [lexicon, plain] = [loadLexicon(), loadScreen()];
const look = { paper: 'letter', inks: inks(false), typeface, style: 'classroom' } as const;
const sheets = THINGS.filter(isSheet);

function stockAt(step: number, screen: WordScreen = plain): SheetStock {
  const taught = taughtUpTo(SEQUENCE, step);
  const sources = { lexicon, screen, sentences: SENTENCES };
  const drill = step === 0 ? null : buildDrill({ taught, seed: 5, flips: 10 }, sources);
  const spec = {
    kind: 'nonsense-words',
    count: 10,
    child: 'a',
    own: [],
    all: [],
  } as const;
  const practiced = () => ({ cards: [], alone: taught, together: taught, newest: [] });
  return {
    taught,
    drill,
    today: drill?.board ?? null,
    table: null,
    whom: 'the whole class',
    day: 'Monday, May 4',
    dictation: () => dictationFor({ taught, newest: [], seed: 5 }, sources),
    practiced,
    each: () => [],
    seed: 5,
    toRead: (choices) =>
      wordsToRead(choices, {
        taught,
        practiced,
        seed: 5,
        wish: ANY_WORD,
        listTitle: 'Words',
        sources,
      }),
    form: () => ({ ...nextForm(spec, { ...sources, taught }), name: '7k2f' }),
    reader: 'Wilhelmina-Christabel',
    sources,
  };
}

const stock = stockAt(16);
const choose = (some: Partial<Choices>): Choices => ({ ...initial.peek(), ...some });
const pagesOf = (kind: SheetKind, stock: SheetStock, some: Partial<Choices> = {}) =>
  laySheet(kind, choose(some), stock, look);

/** Texts of a page; with `least`, those at least so large, which children read. */
const textsOn = (page: Page | undefined, least = 0) =>
  (page?.marks ?? []).flatMap((mark) =>
    mark.kind === 'text' && mark.size > least - 0.001 ? [mark.text] : [],
  );

describe('sheets from the print screen', () => {
  it.each(sheets)('%s has pages where enough was taught, and none where nothing was', (kind) => {
    const { pages, count } = pagesOf(kind, stock);
    expect(pages.length).toBeGreaterThan(0);
    expect(count).toBeGreaterThan(4);
    expect(pages.every(({ paper }) => paper === 'letter')).toBe(true);
    expect(pagesOf(kind, stockAt(0)).pages).toEqual([]);
  });

  it('asks children only for letters that were taught, as many words as she wants', () => {
    // A naive twin of decodability: the letters themselves.
    const letters = new Set(
      [...stock.taught.correspondences].flatMap((id) => [...id.split('=')[0]!]),
    );
    const irregular = stock.taught.irregularWords;
    for (const [kind, list] of [
      ['words', 'new'],
      ['words', 'found'],
      ['home', 'new'],
    ] as const) {
      const { pages, count } = pagesOf(kind, stock, { length: 56, list });
      const words = pages
        .flatMap((page) => textsOn({ ...page, marks: page.marks.filter(isRegular) }, points(18)))
        .flatMap((text) => text.toLowerCase().match(/[a-z]+/g) ?? []);
      expect(words.length).toBeGreaterThanOrEqual(count);
      if (list === 'found') expect(words).toHaveLength(56);
      for (const word of words) {
        const isRead = [...word].every((letter) => letters.has(letter));
        expect([word, isRead || irregular.has(word)]).toEqual([word, true]);
      }
    }
  });

  it('leaves out what she has blocked', () => {
    const [first] = textsOn(pagesOf('words', stock, { list: 'found' }).pages[0], points(18)).slice(
      1,
    );
    const without = screenForClass(plain, decideWord(NO_RULES, 'block', first!), []);
    expect(
      pagesOf('words', stockAt(16, without), { list: 'found' }).pages.flatMap((page) =>
        textsOn(page),
      ),
    ).not.toContain(first);
  });

  it('names the child on her page of a check alone, and the form on both', () => {
    const { pages } = pagesOf('check', stock);
    const [child, hers] = [textsOn(pages[0]).join(' '), textsOn(pages.at(-1)).join(' ')];
    expect(child).not.toContain('Wilhelmina');
    expect(hers).toContain('Wilhelmina-Christabel');
    for (const page of [child, hers]) expect(page).toContain('form 7k2f');
  });

  it('says why there are no words of a child’s own yet', () => {
    const none = new Set<CardId>();
    const unsure = { ...stock.taught, correspondences: none, irregularWords: none };
    const practiced = () => ({ cards: [], alone: unsure, together: unsure, newest: [] });
    const { pages, notes } = pagesOf('home', { ...stock, practiced });
    expect(pages).toEqual([]);
    expect(notes[0]).toContain('Wilhelmina-Christabel');
  });

  it('is a page for each child with the name on it, and says for whom there is none', () => {
    const none = new Set<CardId>();
    const unsure = { ...stock.taught, correspondences: none, irregularWords: none };
    const each = () => [
      { name: 'Odalys', practiced: stock.practiced() },
      { name: 'Bram', practiced: { cards: [], alone: unsure, together: unsure, newest: [] } },
      { name: 'Wren', practiced: stock.practiced() },
    ];
    const { pages, count, notes } = pagesOf('home', { ...stock, each });
    const named = pages.map((page) => textsOn(page).find((text) => /^For /.test(text)));
    expect(named).toEqual(['For Odalys', 'For Wren']);
    expect(count).toBe(2 * pagesOf('home', stock).count);
    expect(notes.join()).toContain('Bram');
    expect(notes.join()).not.toContain('Wren');
  });

  it('says so when there is no board, or an empty pile', () => {
    expect(pagesOf('board', stock, { source: 'table' }).notes[0]).toMatch(/no board/);
    const table = {
      shape: 'closed',
      piles: [['m=M'], [], ['t=T']] satisfies readonly (readonly CardId[])[],
    };
    expect(pagesOf('board', { ...stock, table }, { source: 'table' }).notes[0]).toMatch(/empty/);
  });
});

const isRegular = (mark: Page['marks'][number]) => mark.kind === 'text' && mark.weight !== 'bold';

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it, test } from 'vitest';
import { inks } from '../ink.ts';
import { points } from '../paper.ts';
import { openTypeface } from '../typeface.ts';
import { ANDIKA } from '../typeface-files.ts';
import { headed, paragraph } from './blocks.ts';
import { fitPages } from './fit.ts';
import type { Block } from './flow.ts';
import type { SheetLook } from './sheet-look.ts';
import { wordsSheet } from './words-sheet.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const look: SheetLook = { paper: 'letter', typeface, inks: inks(false), style: 'classroom' };

/** A block of a height for each number; Letter has some 246 mm for them. */
const blocks =
  (...heights: readonly number[]) =>
  (): readonly Block[] =>
    heights.map((height) => ({ height, marks: () => [] }));
const rows = (count: number) => Array<number>(count).fill(10);

describe('a sheet', () => {
  test.each([
    ['that fills its page stays as it is', rows(20), undefined, 1],
    ['of four lonely lines on a second page is printed a little smaller', rows(27), undefined, 1],
    ['that half fills a second page has two', rows(36), undefined, 2],
    ['that is meant for one page is made to fit it', rows(32), 0.7, 1],
    ['that would be too small on one page has more', rows(60), 0.7, 3],
  ])('%s', (_, heights, onePage, pages) => {
    const spec = { foot: '', ...(onePage ? { onePage } : {}) };
    expect(fitPages(blocks(...heights), spec, look)).toHaveLength(pages);
  });

  it('of a few lines more than a little smaller holds is larger, so that they are not alone', () => {
    const mark = { kind: 'shape', path: 'M0 0h1v1z', fill: '#000000' } as const;
    const lines = () => rows(29).map((height) => ({ height, marks: () => [mark] }));
    const pages = fitPages(lines, { foot: '' }, look);
    const counts = pages.map(({ marks }) => marks.filter(({ kind }) => kind === 'shape').length);
    expect(counts).toHaveLength(2);
    expect(counts[1]).toBeGreaterThanOrEqual(6);
  });

  it('says a heading again where what stands under it goes on, for the eye alone', () => {
    const words = Array.from({ length: 60 }, (_, at) => paragraph(`word ${at}`, look));
    const pages = fitPages((zoomed) => headed('Real words', words, zoomed), { foot: '' }, look);
    const firsts = pages.map(({ marks }) => marks.find(({ kind }) => kind === 'text'));
    expect(firsts).toMatchObject([
      { text: 'Real words', part: { role: 'H2' } },
      { text: 'Real words, continued' },
    ]);
    expect(firsts[1]?.part).toBeUndefined();
  });

  it('that would leave half of its page empty has larger letters, and still one page', () => {
    const [page, ...others] = fitPages(
      (zoomed) => [paragraph('A few words', zoomed, { size: points(12) })],
      { foot: '' },
      look,
    );
    expect(others).toEqual([]);
    const words = page!.marks.find((mark) => mark.kind === 'text' && mark.text === 'A few words');
    expect(words).toMatchObject({ kind: 'text' });
    expect((words as { size: number }).size).toBeGreaterThan(points(15));
  });

  it('of words for children never sets them below 18 pt, however close it is printed', () => {
    for (let count = 20; count < 160; count += 7) {
      const words = Array.from({ length: count }, (_, at) => `straighten${at % 3}`);
      const pages = wordsSheet({ title: 'Words', below: '', words }, look);
      const sizes = pages.flatMap(({ marks }) =>
        marks.flatMap((mark) =>
          mark.kind === 'text' && mark.text.startsWith('straighten') ? [mark.size] : [],
        ),
      );
      expect(sizes).toHaveLength(count);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(points(18) - 1e-9);
    }
  });
});

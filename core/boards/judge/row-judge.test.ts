import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { HABITS } from '../../language/taught.ts';
import { SHAPES } from '../shapes/shape-list.ts';
import { candidates } from '../shapes/shapes.ts';
import { splitPiles } from '../shapes/split-piles.ts';
import type { JudgeContext } from './judge-context.ts';
import { makeRowJudge } from './row-judge.ts';
import { makeWordTable } from './word-table.ts';

const context: JudgeContext = {
  taught: {
    correspondences: new Set(CORRESPONDENCES.map(({ id }) => id)),
    habits: new Set(HABITS),
    irregularWords: new Set(),
  },
  lexicon: builtLexicon,
  screen: makePlainScreen(['bat', 'mip', 'shate', 'go'], ['lin', 'sar']),
};

/** A shape and several boards of it, one after the other. */
const moves = fc.constantFrom(...SHAPES).chain((shape) => {
  const piles = candidates(shape, CORRESPONDENCES).map((pile) =>
    pile.slice(0, shape.piles.length > 3 ? 3 : 6).map(({ id }) => id),
  );
  return fc
    .array(fc.tuple(...piles.map((pile) => fc.shuffledSubarray(pile))), {
      minLength: 2,
      maxLength: 4,
    })
    .map((boards) => ({ shape, boards }));
});

const sizeOf = (piles: readonly (readonly string[])[]): number =>
  piles.reduce((size, pile) => size * pile.length, 1);

describe('a judge of rows', () => {
  test('gives the table that judging all afresh gives, whatever it was asked before', () => {
    fc.assert(
      fc.property(moves, ({ shape, boards }) => {
        const judge = makeRowJudge(shape, context);
        for (const piles of boards) {
          const table = judge.table(piles);
          const afresh = makeWordTable(shape, piles, context);
          expect(table.words).toEqual(afresh.words);
          expect([...table.outcomes]).toEqual([...afresh.outcomes]);
          expect(table.piles).toEqual(piles);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('judges no row twice', () => {
    fc.assert(
      fc.property(moves, ({ shape, boards }) => {
        const judge = makeRowJudge(shape, context);
        const [piles = [], ...others] = boards;
        expect(judge.unjudged(piles)).toBe(sizeOf(piles));
        judge.table(piles);
        for (const other of others) judge.table(other);
        expect(judge.unjudged(piles)).toBe(0);
      }),
      { numRuns: 40 },
    );
  });

  test('after one card is put down only the rows of that card are new', () => {
    const [shape] = SHAPES;
    if (!shape) throw new Error('no shape');
    const judge = makeRowJudge(shape, context);
    judge.table([['b=B', 'd=D'], ['a=AE', 'i=IH'], ['t=T']]);
    expect(
      judge.unjudged([
        ['b=B', 'd=D'],
        ['a=AE', 'i=IH'],
        ['t=T', 'n=N'],
      ]),
    ).toBe(4);
  });
});

describe('piles in parts', () => {
  test('make tables that follow each other as the table of the whole, none above the limit', () => {
    fc.assert(
      fc.property(moves, fc.integer({ min: 1, max: 60 }), ({ shape, boards }, most) => {
        const [piles = []] = boards;
        const whole = makeWordTable(shape, piles, context);
        const parts = splitPiles(piles, most);
        const tables = parts.map((part) => makeWordTable(shape, part, context));
        expect(tables.flatMap(({ words }) => words)).toEqual(whole.words);
        expect(tables.flatMap(({ outcomes }) => [...outcomes])).toEqual([...whole.outcomes]);
        for (const part of parts) expect(sizeOf(part)).toBeLessThanOrEqual(most);
      }),
      { numRuns: 40 },
    );
  });
});

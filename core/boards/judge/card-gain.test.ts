import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { makePlainScreen } from '../../../test/plain-screen.ts';
import type { CardId } from '../../language/card-id.ts';
import { CORRESPONDENCES } from '../../language/correspondences.ts';
import { HABITS } from '../../language/taught.ts';
import { SHAPES } from '../shapes/shape-list.ts';
import { candidates, type Shape } from '../shapes/shapes.ts';
import { cardGain, gainsOnBoard, type Tally, tallyOf } from './card-gain.ts';
import { judgeWord } from './judge.ts';
import type { JudgeContext } from './judge-context.ts';
import { makeRowJudge } from './row-judge.ts';

const context: JudgeContext = {
  taught: {
    correspondences: new Set(CORRESPONDENCES.map(({ id }) => id).filter((id) => id !== 'm=M')),
    habits: new Set(HABITS),
    irregularWords: new Set(),
  },
  lexicon: builtLexicon,
  screen: makePlainScreen(['bat', 'dip', 'go'], ['lin']),
};

const boards = fc.constantFrom(...SHAPES).chain((shape) => {
  const piles = candidates(shape, CORRESPONDENCES).map((pile) =>
    pile.slice(0, shape.piles.length > 3 ? 3 : 5).map(({ id }) => id),
  );
  return fc
    .tuple(...piles.map((pile) => fc.subarray(pile)))
    .map((lying) => ({ shape, lying, piles }));
});

/** Every row of a board judged by itself and counted: the plain twin. */
function countRows(shape: Shape, piles: readonly (readonly CardId[])[]): Record<string, number> {
  const counts: Record<string, number> = { real: 0, nonsense: 0, stopped: 0, rule: 0, unfit: 0 };
  counts.untaught = 0;
  let rows: CardId[][] = [[]];
  for (const pile of piles) rows = rows.flatMap((row) => pile.map((id) => [...row, id]));
  for (const ids of rows) {
    const built = judgeWord(ids, context, shape);
    const code = built.kind === 'stopped' ? built.reason.code : built.kind;
    const name = code === 'screened' ? 'stopped' : code;
    counts[name in counts ? name : 'unfit']!++;
  }
  return counts;
}

function difference(more: Record<string, number>, less: Record<string, number>) {
  return Object.fromEntries(Object.keys(more).map((key) => [key, more[key]! - less[key]!]));
}

describe('what a card adds', () => {
  test('is what is lost when it is taken out, and what is won when it is put in', () => {
    fc.assert(
      fc.property(boards, fc.nat(), ({ shape, lying, piles }, chance) => {
        const judge = makeRowJudge(shape, context);
        const pile = chance % piles.length;
        for (const id of piles[pile] ?? []) {
          const without = lying.map((own, at) =>
            at === pile ? own.filter((other) => other !== id) : own,
          );
          const withIt = without.map((own, at) => (at === pile ? [...own, id] : own));
          expect(cardGain(judge, lying, pile, id)).toEqual(
            difference(countRows(shape, withIt), countRows(shape, without)),
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  test('is the same for all cards at once', () => {
    fc.assert(
      fc.property(boards, ({ shape, lying }) => {
        const judge = makeRowJudge(shape, context);
        const gains = gainsOnBoard(judge.table(lying));
        lying.forEach((own, pile) => {
          expect([...(gains[pile]?.keys() ?? [])]).toEqual(own);
          for (const id of own) {
            expect(gains[pile]?.get(id)).toEqual(cardGain(judge, lying, pile, id));
          }
        });
      }),
      { numRuns: 60 },
    );
  });

  test('counts every row of a board exactly once', () => {
    fc.assert(
      fc.property(boards, ({ shape, lying }) => {
        const tally: Tally = tallyOf(makeRowJudge(shape, context).table(lying));
        expect({ ...tally }).toEqual(countRows(shape, lying));
        const all = Object.values(tally).reduce((sum, count) => sum + count, 0);
        expect(all).toBe(lying.reduce((size, own) => size * own.length, 1));
      }),
      { numRuns: 40 },
    );
  });
});

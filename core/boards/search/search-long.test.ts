import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { makeLinearProgram } from '../../../bench/linear-program.ts';
import { makeRandom } from '../../random.ts';
import { type BoardModel, type BoardPlace, boardValue } from './board-model.ts';
import { solveBoard } from './search.ts';

/** Random models of these many piles, each of one to `most` cards. */
function models(piles: number, most: number): fc.Arbitrary<BoardModel> {
  const size = fc.integer({ min: 1, max: most });
  return fc
    .array(size, { minLength: piles, maxLength: piles })
    .chain((sizes) => {
      const count = sizes.reduce((all, own) => all * own, 1);
      const list = (max: number) =>
        fc.array(fc.integer({ min: 0, max }), { minLength: count, maxLength: count });
      return fc.record({
        sizes: fc.constant(sizes),
        weights: list(5),
        forbidden: list(24),
        limits: fc.tuple(...sizes.map((own) => fc.integer({ min: 1, max: own }))),
        pinned: fc.tuple(
          ...sizes.map((own) =>
            fc.array(fc.integer({ min: 0, max: own - 1 }), { maxLength: own > 2 ? 1 : 0 }),
          ),
        ),
        group: fc.tuple(...sizes.slice(0, 2).map((own) => fc.integer({ min: 0, max: own - 1 }))),
        grouped: fc.boolean(),
        some: fc.boolean(),
      });
    })
    .map(({ sizes, weights, forbidden, limits, pinned, group, grouped, some }) => {
      const stopped = Uint8Array.from(forbidden, (roll) => (some && roll === 0 ? 1 : 0));
      const model = {
        sizes,
        limits,
        pinned: pinned as readonly (readonly number[])[],
        forbidden: stopped,
        weights: Int32Array.from(weights, (weight, at) =>
          stopped[at] ? 0 : Math.max(0, weight - 2),
        ),
      };
      const places = group.map((card, pile): BoardPlace => [pile, card]);
      return grouped ? { ...model, pinGroups: [places] } : model;
    });
}

function subsets(size: number, limit: number, pinned: readonly number[]): number[][] {
  return Array.from({ length: 1 << size }, (_, mask) =>
    Array.from({ length: size }, (_, card) => card).filter((card) => (mask >> card) & 1),
  ).filter((cards) => cards.length <= limit && pinned.every((card) => cards.includes(card)));
}

/** The value of the best board by looking at all of them; -1 when there is none. */
function bestOfAll(model: BoardModel): number {
  let boards: number[][][] = [[]];
  model.sizes.forEach((size, pile) => {
    const cards = subsets(size, model.limits[pile] as number, model.pinned[pile] ?? []);
    boards = boards.flatMap((board) => cards.map((own) => [...board, own]));
  });
  const serves = (board: number[][]): boolean =>
    (model.pinGroups ?? []).every((group) =>
      group.some(([pile, card]) => board[pile]?.includes(card)),
    );
  return Math.max(-1, ...boards.filter(serves).map((board) => boardValue(model, board)));
}

/** Four piles as they are taught: two of few cards, and most combinations of some pairs forbidden. */
function clusteredModel(seed: number): BoardModel {
  const random = makeRandom(seed);
  const sizes = [
    3 + random.below(3),
    2 + random.below(3),
    3 + random.below(3),
    6 + random.below(4),
  ];
  const count = sizes.reduce((all, size) => all * size, 1);
  const strides = [2, 3].map((from) => sizes.slice(from).reduce((all, size) => all * size, 1));
  const apart = Array.from({ length: (sizes[0] as number) * (sizes[1] as number) }, () =>
    random.below(3),
  );
  const forbidden = Uint8Array.from({ length: count }, (_, at) => {
    const [pair, tail] = [Math.floor(at / (strides[0] as number)), at % (strides[1] as number)];
    if (seed % 2 && apart[pair] === 0 && tail % 5) return 1;
    return random.below(20) === 0 ? 1 : 0;
  });
  return {
    sizes,
    forbidden,
    weights: Int32Array.from(forbidden, (stopped) =>
      stopped ? 0 : Math.max(0, random.below(6) - 2),
    ),
    limits: sizes.map((size) => Math.max(1, size - random.below(3))),
    pinned: sizes.map(() => []),
  };
}

/**
 * The value of the best board by looking at all boards of all piles but the last: the last pile's
 * cards then add up one by one.
 */
function bestOfAllButLast(model: BoardModel): number {
  const last = model.sizes.length - 1;
  const own = Array.from({ length: model.sizes[last] as number }, (_, card) => card);
  let boards: number[][][] = [[]];
  for (let pile = 0; pile < last; pile++) {
    const cards = subsets(model.sizes[pile] as number, model.limits[pile] as number, []);
    boards = boards.flatMap((board) => cards.map((some) => [...board, some]));
  }
  const values = boards.map((board) =>
    own
      .map((card) => Math.max(0, boardValue(model, [...board, [card]])))
      .sort((one, other) => other - one)
      .slice(0, model.limits[last])
      .reduce((sum, value) => sum + value, 0),
  );
  return values.reduce((best, value) => Math.max(best, value), 0);
}

describe('the search of many piles', () => {
  for (const [piles, most] of [
    [2, 4],
    [3, 3],
    [4, 3],
    [5, 2],
  ] as const) {
    test(`finds the best of all boards of ${piles} piles`, () => {
      fc.assert(
        fc.property(models(piles, most), (model) => {
          const found = solveBoard(model);
          const best = bestOfAll(model);
          if (found.kind !== 'found') {
            expect(best).toBe(-1);
            return;
          }
          expect([found.value, found.bound, found.optimal]).toEqual([best, best, true]);
          expect(boardValue(model, found.chosen)).toBe(best);
          found.chosen.forEach((cards, pile) => {
            expect(cards.length).toBeLessThanOrEqual(model.limits[pile] as number);
            for (const card of model.pinned[pile] ?? []) expect(cards).toContain(card);
          });
        }),
        { numRuns: 150 },
      );
    });
  }

  test('finds the best of all boards of four piles, one of them long', () => {
    for (let seed = 0; seed < 40; seed++) {
      const model = clusteredModel(seed);
      const found = solveBoard(model);
      const best = bestOfAllButLast(model);
      expect(found.kind === 'found' && [seed, found.value, found.bound]).toEqual([
        seed,
        best,
        best,
      ]);
      if (found.kind === 'found') expect(boardValue(model, found.chosen)).toBe(best);
    }
  });

  test('agrees with HiGHS on boards of four piles', async () => {
    const highs = await loadHighs();
    for (const model of fc.sample(models(4, 5), { numRuns: 40, seed: 7 })) {
      const found = solveBoard(model);
      const solved = highs.solve(makeLinearProgram(model), { output_flag: false });
      expect(found.kind === 'found' ? found.value : solved.Status).toBe(
        found.kind === 'found' ? Math.round(solved.ObjectiveValue) : 'Infeasible',
      );
    }
  });

  test('stopped early, it still proves what it says', () => {
    fc.assert(
      fc.property(models(4, 4), fc.integer({ min: 1, max: 8 }), (model, nodeLimit) => {
        const whole = solveBoard(model);
        const early = solveBoard(model, { nodeLimit });
        if (whole.kind !== 'found' || early.kind !== 'found') return;
        expect(early.value).toBeLessThanOrEqual(whole.value);
        expect(early.bound).toBeGreaterThanOrEqual(whole.value);
      }),
      { numRuns: 60 },
    );
  });
});

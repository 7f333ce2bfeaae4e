import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { makeLinearProgram } from '../../../bench/linear-program.ts';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { makeRandom, shuffled } from '../../random.ts';
import { SEQUENCE } from '../../sequence/built-in.ts';
import { taughtUpTo } from '../../sequence/teach.ts';
import type { WordScreen } from '../../words/screen.ts';
import { makeWordTable, type WordTable } from '../judge/word-table.ts';
import { shapeById } from '../shapes/shape-list.ts';
import { candidates, type Shape } from '../shapes/shapes.ts';
import { type BoardModel, boardValue } from './board-model.ts';
import { makeModel } from './make-model.ts';
import { solveBoard } from './search.ts';

/** A model of exactly three piles, which the naive twins below walk in three loops. */
type ThreePiles = BoardModel & {
  readonly [Field in 'sizes' | 'limits']: readonly [number, number, number];
} & {
  readonly pinned: readonly [readonly number[], readonly number[], readonly number[]];
};

/** Random models: sizes up to `most`, some combinations forbidden, perhaps pins. */
function models(most: readonly [number, number, number]): fc.Arbitrary<ThreePiles> {
  const [rowsMost, layersMost, columnsMost] = most;
  return fc
    .tuple(
      fc.integer({ min: 1, max: rowsMost }),
      fc.integer({ min: 1, max: layersMost }),
      fc.integer({ min: 1, max: columnsMost }),
    )
    .chain(([rows, layers, columns]) => {
      const count = rows * layers * columns;
      const pin = (size: number): fc.Arbitrary<number[]> =>
        fc.oneof(
          { weight: 3, arbitrary: fc.constant<number[]>([]) },
          { weight: 1, arbitrary: fc.integer({ min: 0, max: size - 1 }).map((card) => [card]) },
        );
      return fc.record({
        sizes: fc.constant([rows, layers, columns] as const),
        weights: fc.array(fc.constantFrom(0, 0, 1, 1, 1, 4), {
          minLength: count,
          maxLength: count,
        }),
        forbidden: fc.array(fc.integer({ min: 0, max: 24 }), {
          minLength: count,
          maxLength: count,
        }),
        limits: fc.tuple(
          fc.integer({ min: 1, max: rows }),
          fc.integer({ min: 1, max: layers }),
          fc.integer({ min: 1, max: columns }),
        ),
        pinned: fc.tuple(pin(rows), pin(layers), pin(columns)),
        some: fc.boolean(),
      });
    })
    .map(({ sizes, weights, forbidden, limits, pinned, some }) => {
      const stopped = Uint8Array.from(forbidden, (roll) => (some && roll === 0 ? 1 : 0));
      return {
        sizes,
        limits,
        pinned,
        forbidden: stopped,
        weights: Int32Array.from(weights, (weight, at) => (stopped[at] ? 0 : weight)),
      };
    });
}

/** A model of the real word list: some cards of a step of our order, every other one clean. */
function realModel(seed: number): ThreePiles {
  return makeModel(drawTable(seed, [8, 4, 8]), {
    limits: [5, 4, 5],
    clean: seed % 2 === 0,
  }) as ThreePiles;
}

/** Some cards of a step of our order, at most so many a pile, judged. */
function drawTable(seed: number, most: readonly number[]): WordTable {
  const random = makeRandom(seed);
  const taught = taughtUpTo(SEQUENCE, 25 + random.below(90));
  const cards = shuffled([...taught.correspondences], random).flatMap(
    (id) => correspondenceById.get(id) ?? [],
  );
  const shape = shapeById.get('syllable') as Shape;
  const piles = candidates(shape, cards).map((pile, at) =>
    pile.slice(0, most[at]).map(({ id }) => id),
  );
  // Every eleventh spelling counts as stopped, so that clean boards have something to avoid.
  const screen: WordScreen = {
    judge: (word) => ({
      verdict:
        [...word].reduce((sum, letter) => sum * 31 + letter.charCodeAt(0), 7) % 11
          ? 'clear'
          : 'stop',
      category: null,
      reason: null,
    }),
  };
  return makeWordTable(shape, piles, { taught, lexicon: builtLexicon, screen });
}

/** Many vowels, none of which need stay: random combinations are forbidden, and pairs of cards. */
function crowdedModel(seed: number): ThreePiles {
  const random = makeRandom(seed);
  const sizes = [4 + random.below(4), 8 + random.below(13), 4 + random.below(4)] as const;
  const [rows, layers, columns] = sizes;
  const oneIn = [60, 12, 4][seed % 3] as number;
  const apart = seed % 2 === 0 ? Infinity : 3;
  const rolls = Array.from({ length: rows + columns }, () =>
    Array.from({ length: layers }, () => (apart < Infinity && random.below(apart) === 0 ? 1 : 0)),
  );
  const count = rows * layers * columns;
  const forbidden = Uint8Array.from({ length: count }, (_, at) => {
    const b = Math.floor(at / (layers * columns));
    const v = Math.floor(at / columns) % layers;
    if (rolls[b]?.[v] || rolls[rows + (at % columns)]?.[v]) return 1;
    return random.below(oneIn) === 0 ? 1 : 0;
  });
  const weights = Int32Array.from(forbidden, (stopped) =>
    stopped ? 0 : ([0, 1, 1, 4][random.below(4)] as number),
  );
  const limits = [3 + random.below(3), layers, 3 + random.below(3)] as const;
  return { sizes, weights, forbidden, limits, pinned: [[], [], []] };
}

/**
 * The value of the best board of unlimited vowels, by looking at all beginnings and endings: a vowel
 * then lies exactly when nothing is forbidden with them.
 */
function bestOfOuter({ sizes, limits, weights, forbidden }: ThreePiles): number {
  const [rows, layers, columns] = sizes;
  let best = 0;
  for (const begin of subsets(rows, limits[0], [])) {
    for (const end of subsets(columns, limits[2], [])) {
      let value = 0;
      for (let v = 0; v < layers; v++) {
        let own = 0;
        let stopped = false;
        for (const b of begin) {
          for (const e of end) {
            const at = (b * layers + v) * columns + e;
            if (forbidden[at]) stopped = true;
            own += weights[at] as number;
          }
        }
        if (!stopped) value += own;
      }
      best = Math.max(best, value);
    }
  }
  return best;
}

function subsets(size: number, limit: number, pinned: readonly number[]): number[][] {
  return Array.from({ length: 1 << size }, (_, mask) =>
    Array.from({ length: size }, (_, card) => card).filter((card) => (mask >> card) & 1),
  ).filter((cards) => cards.length <= limit && pinned.every((card) => cards.includes(card)));
}

/** The value of the best board by looking at all of them; -1 when there is none. */
function bestOfAll({ sizes, limits, pinned, ...rest }: ThreePiles): number {
  const model = { sizes, limits, pinned, ...rest };
  let best = -1;
  for (const b of subsets(sizes[0], limits[0], pinned[0])) {
    for (const v of subsets(sizes[1], limits[1], pinned[1])) {
      for (const e of subsets(sizes[2], limits[2], pinned[2])) {
        best = Math.max(best, boardValue(model, [b, v, e]));
      }
    }
  }
  return best;
}

function checkPins(model: ThreePiles, chosen: readonly (readonly number[])[]): void {
  chosen.forEach((cards, pile) => {
    expect(cards.length).toBeLessThanOrEqual(model.limits[pile] as number);
    expect(new Set(cards).size).toBe(cards.length);
    for (const card of model.pinned[pile] ?? []) expect(cards).toContain(card);
  });
}

describe('the board search', () => {
  test('finds the best of all boards on small models', () => {
    fc.assert(
      fc.property(models([5, 3, 5]), (model) => {
        const found = solveBoard(model);
        const best = bestOfAll(model);
        if (found.kind !== 'found') {
          expect(best).toBe(-1);
          return;
        }
        checkPins(model, found.chosen);
        expect(boardValue(model, found.chosen)).toBe(found.value);
        expect(found.value).toBe(best);
        expect(found.optimal).toBe(true);
        expect(found.bound).toBe(best);
      }),
      { numRuns: 400 },
    );
  });

  test('agrees with the HiGHS solver on 200 models', async () => {
    const highs = await loadHighs();
    const sample = fc.sample(models([8, 4, 8]), { numRuns: 260, seed: 5 });
    let agreed = 0;
    for (const model of sample) {
      const found = solveBoard(model);
      const solved = highs.solve(makeLinearProgram(model), { output_flag: false });
      if (found.kind !== 'found') {
        expect(solved.Status).toBe('Infeasible');
        continue;
      }
      expect(solved.Status).toBe('Optimal');
      expect(found.value).toBe(Math.round(solved.ObjectiveValue));
      agreed++;
    }
    expect(agreed).toBeGreaterThanOrEqual(200);
  });

  test('agrees with HiGHS on boards of real words, clean and not', async () => {
    const highs = await loadHighs();
    for (let seed = 0; seed < 16; seed++) {
      const model = realModel(seed);
      const found = solveBoard(model);
      const solved = highs.solve(makeLinearProgram(model), { output_flag: false });
      expect(found.kind === 'found' && [found.value, found.optimal]).toEqual([
        Math.round(solved.ObjectiveValue),
        true,
      ]);
    }
  });

  test('finds the best of all boards where many vowels are optional', () => {
    for (let seed = 0; seed < 60; seed++) {
      const model = crowdedModel(seed);
      const found = solveBoard(model);
      const best = bestOfOuter(model);
      expect(found.kind === 'found' && [seed, found.value, found.bound, found.optimal]).toEqual([
        seed,
        best,
        best,
        true,
      ]);
      if (found.kind === 'found') expect(boardValue(model, found.chosen)).toBe(best);
    }
  });

  test('finds the best of all boards of real words with many vowels, clean and strict', () => {
    for (let seed = 0; seed < 4; seed++) {
      const table = drawTable(seed + 100, [9, 20, 9]);
      for (const strict of [false, true]) {
        const model = makeModel(table, { limits: [5, 99, 5], clean: true, strict }) as ThreePiles;
        const found = solveBoard(model);
        expect(found.kind === 'found' && [found.value, found.optimal]).toEqual([
          bestOfOuter(model),
          true,
        ]);
      }
    }
  });

  test('stopped early, it still proves what it says', () => {
    fc.assert(
      fc.property(models([8, 4, 8]), fc.integer({ min: 0, max: 6 }), (model, nodeLimit) => {
        const whole = solveBoard(model);
        const early = solveBoard(model, { nodeLimit });
        if (whole.kind !== 'found' || early.kind !== 'found') return;
        expect(early.value).toBeLessThanOrEqual(whole.value);
        expect(early.bound).toBeGreaterThanOrEqual(whole.value);
        expect(boardValue(model, early.chosen)).toBe(early.value);
      }),
    );
  });

  test('one more candidate never makes the best board worse', () => {
    fc.assert(
      fc.property(models([7, 3, 7]), (model) => {
        const [rows, layers, columns] = model.sizes;
        if (rows === 1 || model.pinned[0].includes(rows - 1)) return;
        const cells = (rows - 1) * layers * columns;
        const fewer: ThreePiles = {
          ...model,
          sizes: [rows - 1, layers, columns],
          weights: model.weights.slice(0, cells),
          forbidden: model.forbidden.slice(0, cells),
        };
        const less = solveBoard(fewer);
        const more = solveBoard(model);
        if (less.kind === 'found' && more.kind === 'found') {
          expect(more.value).toBeGreaterThanOrEqual(less.value);
        }
      }),
    );
  });

  test('pins that make a forbidden combination are named', () => {
    const model: ThreePiles = {
      sizes: [2, 1, 2],
      weights: new Int32Array([1, 1, 0, 1]),
      forbidden: new Uint8Array([0, 0, 1, 0]),
      limits: [2, 1, 2],
      pinned: [[1], [0], [0]],
    };
    expect(solveBoard(model)).toEqual({ kind: 'pins-clash', combination: [1, 0, 0] });
    expect(solveBoard({ ...model, limits: [0, 1, 2] })).toEqual({ kind: 'too-many-pins', pile: 0 });
  });
});

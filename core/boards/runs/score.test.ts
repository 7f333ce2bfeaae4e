import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import {
  beginnings,
  boards,
  endings,
  sparseBoards,
  tableOf,
  vowels,
  wholeBoard,
} from '../../../test/run-boards.ts';
import type { CardId } from '../../language/card-id.ts';
import { countRun } from './counts.ts';
import { makeRunGoal } from './goal.ts';
import { edgeBetween, makeRunGraph, type RunGraph } from './graph.ts';
import { makeRun } from './run.ts';
import { pointsOf } from './score.ts';

const LOOK_ALIKES: readonly (readonly [CardId, CardId])[] = [
  ['b=B', 'd=D'],
  ['e=EH', 'i=IH'],
];

const wishes = fc.record(
  {
    flips: fc.integer({ min: 1, max: 40 }),
    realShare: fc.constantFrom(0, 0.25, 0.5, 1),
    seed: fc.integer(),
    focus: fc.subarray([...beginnings, ...vowels], { minLength: 1, maxLength: 3 }),
    focusShare: fc.constantFrom(0, 0.3, 0.6, 1),
    contrasts: fc.subarray([...LOOK_ALIKES]),
    avoid: fc
      .subarray(wholeBoard.words as string[], { maxLength: 300 })
      .map((words) => new Set(words)),
    rise: fc.boolean(),
  },
  { requiredKeys: ['flips', 'realShare', 'seed'] },
);

/** Every path of a graph up to so many nodes, no spelling twice: the plain twin of the search. */
function* everyPath(graph: RunGraph, flips: number): Generator<readonly number[]> {
  const path: number[] = [];
  function* onward(nodes: Iterable<number>): Generator<readonly number[]> {
    for (const node of nodes) {
      if (path.some((other) => graph.spelling[other] === graph.spelling[node])) continue;
      path.push(node);
      yield path;
      const edges = graph.leadsTo.subarray(graph.firstEdge[node], graph.firstEdge[node + 1]);
      if (path.length < flips) yield* onward(edges);
      path.pop();
    }
  }
  yield* onward(graph.index.keys());
}

describe('the score of a run', () => {
  test('lies between a walk by chance and what no run can exceed', () => {
    fc.assert(
      fc.property(boards, wishes, ({ table }, asked) => {
        const { score } = makeRun(table, asked, builtLexicon);
        expect(score.reached).toBeGreaterThanOrEqual(score.floor);
        expect(score.bound).toBeGreaterThanOrEqual(score.reached);
      }),
      { numRuns: 150 },
    );
  });

  test('is as high as that of the best of all paths, or near it, on boards small enough to try', () => {
    let best = 0;
    let reached = 0;
    fc.assert(
      fc.property(sparseBoards, wishes, fc.integer({ min: 1, max: 6 }), (table, asked, flips) => {
        const own = { ...asked, flips };
        const graph = makeRunGraph(table, own, builtLexicon);
        const goal = makeRunGoal(graph, own);
        let most = 0;
        for (const path of everyPath(graph, flips)) {
          most = Math.max(most, pointsOf(countRun(graph, path, goal.flips), goal));
        }
        const { score } = makeRun(table, own, builtLexicon);
        expect(score.reached).toBeLessThanOrEqual(most);
        expect(most).toBeLessThanOrEqual(score.bound);
        expect(score.reached).toBeGreaterThanOrEqual(0.8 * most);
        best += most;
        reached += score.reached;
      }),
      { numRuns: 120 },
    );
    expect(reached / best).toBeGreaterThan(0.99);
  });

  test('comes within a twentieth of the bound on a board of many words', () => {
    const table = tableOf([beginnings.slice(0, 12), vowels.slice(0, 6), endings.slice(0, 12)]);
    for (let seed = 0; seed < 40; seed++) {
      const { score } = makeRun(table, { flips: 30, realShare: 0.5, seed }, builtLexicon);
      expect(score.reached / score.bound).toBeGreaterThan(0.95);
    }
  });
});

test('edges join exactly the words that differ in one card and in spelling', () => {
  fc.assert(
    fc.property(boards, ({ table }) => {
      const graph = makeRunGraph(table, { flips: 9, realShare: 0.5, seed: 1 }, builtLexicon);
      const { index, piles, cardAt } = graph;
      const cards = [...index.keys()].map((word) => [
        ...cardAt.subarray(word * piles, word * piles + piles),
      ]);
      cards.slice(0, 40).forEach((own, word) => {
        const plain = cards.flatMap((others, other) => {
          const apart = others.filter((card, pile) => card !== own[pile]).length === 1;
          const spelled =
            table.words[index[other] as number] !== table.words[index[word] as number];
          return apart && spelled ? [other] : [];
        });
        const edges = graph.leadsTo.subarray(graph.firstEdge[word], graph.firstEdge[word + 1]);
        expect([...edges].sort((one, other) => one - other)).toEqual(plain);
        for (const other of plain) expect(edgeBetween(graph, word, other)).toBeGreaterThan(-1);
      });
    }),
    { numRuns: 40 },
  );
});

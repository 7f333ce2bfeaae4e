import fc from 'fast-check';
import { expect, test } from 'vitest';
import { builtLexicon } from '../../../test/built-lexicon.ts';
import { sparseBoards } from '../../../test/run-boards.ts';
import { areJoined, makeRunGraph } from './graph.ts';

test('as many spellings are in reach of a word as trying every word again and again finds', () => {
  fc.assert(
    fc.property(sparseBoards, (table) => {
      const graph = makeRunGraph(table, { flips: 9, realShare: 0.5, seed: 1 }, builtLexicon);
      const words = [...graph.index.keys()];
      for (const word of words) {
        const met = new Set([word]);
        for (let before = 0; before < met.size; ) {
          before = met.size;
          for (const other of words) {
            if ([...met].some((one) => areJoined(graph, one, other))) met.add(other);
          }
        }
        const spellings = new Set([...met].map((one) => graph.spelling[one]));
        expect(graph.reach[word]).toBe(spellings.size);
      }
    }),
  );
});

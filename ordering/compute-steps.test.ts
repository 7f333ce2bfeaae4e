import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { builtLexicon } from '../test/built-lexicon.ts';
import { parseCommonWords } from './common-words.ts';
import { computeSteps } from './compute-steps.ts';
import { makeWordTable } from './word-table.ts';

const table = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');
const current = table('./current-words.tsv');

// A guard against drift between method and table; it proves nothing about either.
test('the stored order is the one that the method computes', () => {
  const order = parseCommonWords(table('./common-words.tsv'));
  expect(SEQUENCE.steps).toEqual(computeSteps(order, parseCommonWords(current)));
});

test('what is said of each step is told of words as they are read now', () => {
  expect(current).toBe(makeWordTable(builtLexicon));
});

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { parseCommonWords } from './common-words.ts';
import { computeSteps } from './compute-steps.ts';

const table = readFileSync(new URL('./common-words.tsv', import.meta.url), 'utf8');

// A guard against drift between method and table; it proves nothing about either.
test('the stored order is the one that the method computes', () => {
  expect(SEQUENCE.steps).toEqual(computeSteps(parseCommonWords(table)));
});

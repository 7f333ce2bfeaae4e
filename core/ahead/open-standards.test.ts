import { expect, it } from 'vitest';
import { SEQUENCE } from '../sequence/built-in.ts';
import { openStandards } from './open-standards.ts';

it('names the standards of a grade that have steps to come, and none at the end of the order', () => {
  const last = SEQUENCE.steps.length;
  expect(openStandards(SEQUENCE, '1', last)).toEqual([]);
  const early = openStandards(SEQUENCE, '1', 30);
  const digraphs = early.find(({ code }) => code === 'RF.1.3.a');
  // sh, th, wh and ch are the steps 31 to 34 of the built-in order, tch is step 47.
  expect(digraphs?.steps).toEqual([31, 32, 33, 34, 47]);
  expect(openStandards(SEQUENCE, '1', 47).map(({ code }) => code)).not.toContain('RF.1.3.a');
  for (const { steps } of early) expect(Math.min(...steps)).toBeGreaterThan(30);
});

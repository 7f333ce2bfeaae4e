import { expect, it } from 'vitest';
import type { CardId } from '../language/card-id.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { stepOf } from '../sequence/step-of.ts';
import { openStandards } from './open-standards.ts';

it('names the standards of a grade that have steps to come, and none at the end of the order', () => {
  const last = SEQUENCE.steps.length;
  expect(openStandards(SEQUENCE, '1', last)).toEqual([]);
  const here = stepWith('sh=SH');
  const early = openStandards(SEQUENCE, '1', here);
  const digraphs = early.find(({ code }) => code === 'RF.1.3.a');
  const toCome: readonly CardId[] = ['ck=K', 'th=TH', 'wh=W', 'ch=CH', 'ng=NG', 'tch=CH'];
  const steps = toCome.map(stepWith).sort((one, other) => one - other);
  expect(digraphs?.steps).toEqual(steps);
  const done = openStandards(SEQUENCE, '1', Math.max(...steps));
  expect(done.map(({ code }) => code)).not.toContain('RF.1.3.a');
  for (const each of early) expect(Math.min(...each.steps)).toBeGreaterThan(here);
});

function stepWith(id: CardId): number {
  return stepOf(SEQUENCE, { kind: 'card', id }) ?? Number.NaN;
}

import { expect, it } from 'vitest';
import { byStage } from './by-stage.ts';
import type { Sequence, Step } from './sequence.ts';

const step = (number: number, stage: string, ...ids: readonly `${string}=${string}`[]): Step => ({
  number,
  stage,
  grade: 'K',
  title: ids.join(' '),
  items: ids.map((id) => ({ kind: 'card', id })),
  why: '',
});

const sequence: Sequence = {
  name: 'ours',
  steps: [
    step(1, 'First sounds', 'm=M', 'a=AE'),
    step(2, 'First sounds', 's=S'),
    step(3, 'Teams', 'sh=SH'),
  ],
};

it('puts cards under their stages in the order of teaching, and those of no step last', () => {
  expect(byStage(sequence, ['sh=SH', 'qu=K+W', 's=S', 'm=M'])).toEqual([
    { stage: 'First sounds', cards: ['m=M', 's=S'] },
    { stage: 'Teams', cards: ['sh=SH'] },
    { stage: '', cards: ['qu=K+W'] },
  ]);
  expect(byStage(sequence, [])).toEqual([]);
});

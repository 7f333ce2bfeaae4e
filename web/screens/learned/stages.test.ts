import { describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import type { Step } from '../../../core/sequence/sequence.ts';
import { stagesOf } from './stages.ts';

function step(number: number, stage: string, grade: Step['grade']): Step {
  return { number, stage, grade, title: '', items: [], why: '' };
}

describe('stages', () => {
  it('keep every step once, in order', () => {
    const numbers = stagesOf(SEQUENCE.steps).flatMap(({ steps }) =>
      steps.map(({ number }) => number),
    );
    expect(numbers).toEqual(SEQUENCE.steps.map(({ number }) => number));
  });

  it('say their grades in words', () => {
    const steps = [
      step(1, 'a', 'K'),
      step(2, 'b', '1'),
      step(3, 'c', 'K'),
      step(4, 'c', '1'),
      step(5, 'd', '1'),
      step(6, 'd', '3'),
    ];
    expect(stagesOf(steps).map(({ grades }) => grades)).toEqual([
      'Kindergarten',
      'Grade 1',
      'Kindergarten to grade 1',
      'Grades 1 to 3',
    ]);
  });

  it('met again after another one are stages of their own', () => {
    const steps = [step(1, 'a', 'K'), step(2, 'b', 'K'), step(3, 'a', 'K')];
    expect(stagesOf(steps).map(({ name }) => name)).toEqual(['a', 'b', 'a']);
  });
});

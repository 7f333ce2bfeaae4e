/** The fit of a class held against an exact sampler on small classes; `bench/judge-mastery.ts` takes more. */
import { expect, it } from 'vitest';
import { knowledgeFrom } from '../core/learners/knowledge.ts';
import { runClassroom } from './classroom/classroom.ts';
import { bothWays } from './classroom/exact-posterior.ts';
import { mean } from './classroom/judge.ts';
import { crossed } from './classroom/truths/crossed.ts';

it.each([0, 0.8, 1.6])(
  'every mean lies within 0.03 and every end within 0.05 of an exact sampler, pairs differing by %d',
  (pair) => {
    const { observations } = runClassroom({
      seed: 6001,
      truth: crossed({ pair }),
      pupils: 4,
      weeks: 2,
    });
    const all = bothWays(knowledgeFrom(observations).read, 3000, 1);
    expect(all.length).toBeGreaterThan(30);
    for (const { fitted, exact } of all) {
      expect(Math.abs(fitted[0] - exact[0])).toBeLessThanOrEqual(0.03);
      expect(Math.abs(fitted[1] - exact[1])).toBeLessThanOrEqual(0.05);
      expect(Math.abs(fitted[2] - exact[2])).toBeLessThanOrEqual(0.05);
    }
    const width = (way: 'fitted' | 'exact') => mean(all.map((one) => one[way][2] - one[way][1]));
    expect(width('fitted') / width('exact')).toBeLessThanOrEqual(1.15);
    expect(width('fitted') / width('exact')).toBeGreaterThanOrEqual(0.87);
  },
);

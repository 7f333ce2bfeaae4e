import type { Classroom } from './classroom.ts';

/** Which readings she writes down of a class. */
export type Written = 'mistakes beside class' | 'mistakes alone' | 'mistakes, and checks' | 'alone';

/** A class as such a teacher writes it down: what is true stays, and what is seen of it changes. */
export function writtenDown(classroom: Classroom, written: Written): Classroom {
  const kept = classroom.observations.flatMap((one, at) => {
    const truth = classroom.truths[at] ?? [];
    const together = { ...one, child: null };
    if (written === 'alone') return one.child === null ? [] : [{ one, truth }];
    // One child in ten is called on for a short check, and marked in full.
    if (written === 'mistakes, and checks' && one.child !== null && at % 10 === 0) {
      return [{ one: { ...one, from: 'check' as const }, truth }];
    }
    if (one.child !== null && !one.right) {
      return [{ one: { ...one, from: 'mistake' as const }, truth }];
    }
    return written === 'mistakes alone' ? [] : [{ one: together, truth: [] }];
  });
  return {
    ...classroom,
    observations: kept.map(({ one }) => one),
    truths: kept.map(({ truth }) => truth),
  };
}

import { estimateCard } from '../../core/learners/estimate.ts';
import { startTracker } from '../../core/learners/tracker.ts';
import type { Classroom } from './classroom.ts';

/** How many true chances of pupils and taught cards lay inside the intervals of their days. */
export function judgeIntervals(classes: readonly Classroom[]): {
  readonly share: number;
  readonly count: number;
  /** How wide the intervals were, on average. */
  readonly width: number;
} {
  let inside = 0;
  let count = 0;
  let width = 0;
  for (const { observations, states } of classes) {
    const tracker = startTracker();
    let at = 0;
    for (const { day, child, card, chance } of states) {
      for (let next = observations[at]; next && next.day <= day; next = observations[++at]) {
        tracker.observe(next);
      }
      const estimate = estimateCard(tracker.known, { of: 'child', id: child }, card, day + 1);
      count += 1;
      width += estimate.high - estimate.low;
      if (estimate.low <= chance && chance <= estimate.high) inside += 1;
    }
  }
  return { share: inside / count, count, width: width / count };
}

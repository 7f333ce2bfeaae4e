import type { Observation } from '../../core/learners/observation.ts';
import type { Forecaster } from './judge.ts';

/**
 * The share of right readings of a card by a child so far. It starts from
 * `share` as if `worth` readings had been seen before: without that, the first
 * forecast would be a division by zero and the second a certainty.
 */
export function runningAverage(share: number, worth: number): Forecaster {
  const counts = new Map<string, { right: number; all: number }>();
  const countOf = (child: string, card: string) => {
    const key = `${child} ${card}`;
    let count = counts.get(key);
    if (!count) {
      count = { right: share * worth, all: worth };
      counts.set(key, count);
    }
    return count;
  };
  return {
    expect: ({ child, cards }: Observation) =>
      cards.map((card) => {
        const { right, all } = countOf(child ?? '', card);
        return right / all;
      }),
    observe({ child, cards, right, broke }: Observation) {
      if (child === null || (!right && broke === null)) return;
      const last = right ? cards.length : (broke ?? 0);
      for (let at = 0; at < last; at++) {
        const count = countOf(child, cards[at] as string);
        count.all += 1;
        if (right || at < last - 1) count.right += 1;
      }
    },
  };
}

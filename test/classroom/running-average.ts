import type { Observation } from '../../core/learners/observation.ts';
import { creditOf } from './credit.ts';
import type { Forecaster } from './judge.ts';

/**
 * The share of right readings so far, by child and card or by card alone. It starts from
 * `share` as if `worth` readings had been seen before: without that, the first
 * forecast would be a division by zero and the second a certainty.
 */
export function runningAverage(
  share: number,
  worth: number,
  by: 'child and card' | 'card' = 'child and card',
): Forecaster {
  const counts = new Map<string, { right: number; all: number }>();
  const countOf = (child: string | null, card: string) => {
    const key = by === 'card' ? card : `${child} ${card}`;
    let count = counts.get(key);
    if (!count) {
      count = { right: share * worth, all: worth };
      counts.set(key, count);
    }
    return count;
  };
  const expect = ({ child, cards }: Observation) =>
    cards.map((card) => {
      const { right, all } = countOf(child, card);
      return right / all;
    });
  return {
    expect,
    observe(reading) {
      if (reading.child === null) return;
      const { well, wrong } = creditOf(reading, expect(reading));
      for (const [at, card] of reading.cards.entries()) {
        const count = countOf(reading.child, card);
        count.all += (well[at] as number) + (wrong[at] as number);
        count.right += well[at] as number;
      }
    },
  };
}

/** An exponentially weighted average by child and card: each reading takes a share `rate` of it. */
export function movingAverage(share: number, rate: number): Forecaster {
  const averages = new Map<string, number>();
  const expect = ({ child, cards }: Observation) =>
    cards.map((card) => averages.get(`${child} ${card}`) ?? share);
  return {
    expect,
    observe(reading) {
      if (reading.child === null) return;
      const before = expect(reading);
      const { well, wrong } = creditOf(reading, before);
      for (const [at, card] of reading.cards.entries()) {
        const seen = (well[at] as number) + (wrong[at] as number);
        const was = before[at] as number;
        const now = was + rate * ((well[at] as number) - seen * was);
        averages.set(`${reading.child} ${card}`, now);
      }
    },
  };
}

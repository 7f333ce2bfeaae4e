import { markingOf } from '../../core/learners/belief/marking.ts';
import type { Observation } from '../../core/learners/observation.ts';
import { startTracker } from '../../core/learners/tracker.ts';

/** One pupil with one card: the day that is being counted, and how the day before it surprised. */
interface Follow {
  day: number;
  surprise: number;
  variance: number;
  before: number | null;
}

/**
 * How much the surprises of one day tell of those of a pair's next: the mean product of successive days'
 * standardised surprises, held to two deviations, of the forecasts that are shown. Near nothing where all
 * that moves is followed, above it where knowledge jumps more than is followed, below where forecasts
 * overreact (Mehra 1970). It needs no truth, so that it can be asked of any log. Words that went wrong
 * without it being said where are left out; where many are, it comes out above nothing for that alone.
 */
export function whitenessOf(observations: readonly Observation[]): {
  readonly correlation: number;
  readonly count: number;
} {
  const tracker = startTracker(markingOf(observations, 'read'));
  const pairs = new Map<string, Follow>();
  let products = 0;
  let count = 0;
  const close = (pair: Follow): void => {
    if (pair.variance <= 0) return;
    const z = Math.max(-2, Math.min(2, pair.surprise / Math.sqrt(pair.variance)));
    if (pair.before !== null) {
      products += z * pair.before;
      count += 1;
    }
    pair.before = z;
  };
  for (const one of observations) {
    if (one.child !== null && one.task === 'read') {
      const expected = tracker.expect(one);
      const end = one.right ? one.cards.length : (one.broke ?? (one.cards.length === 1 ? 1 : 0));
      for (const [at, card] of one.cards.slice(0, end).entries()) {
        const p = expected[at] as number;
        const key = `${one.child} ${card}`;
        const pair = pairs.get(key) ?? { day: one.day, surprise: 0, variance: 0, before: null };
        pairs.set(key, pair);
        if (pair.day !== one.day) {
          close(pair);
          Object.assign(pair, { day: one.day, surprise: 0, variance: 0 });
        }
        pair.surprise += (one.right || at < end - 1 ? 1 : 0) - p;
        pair.variance += p * (1 - p);
      }
    }
    tracker.observe(one);
  }
  for (const pair of pairs.values()) close(pair);
  return { correlation: products / Math.max(1, count), count };
}

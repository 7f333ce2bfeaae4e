import { RESTLESS } from './numbers.ts';
import { BEFORE, SURPRISE, SURPRISE_CERTAINTY, SURPRISE_DAY } from './pair.ts';
import { CERTAINTY, PULL } from './pulls.ts';

/**
 * Do the surprises of a pair on one day tell of those of its next? Then something moves that is not
 * followed: surprises of a filter that follows correctly are white (Mehra 1970, On the identification of
 * variances and adaptive Kalman filtering). It is the one check of a model that needs no truth.
 */
export interface Restlessness {
  /** The sum of products of successive days' surprises, and how many there were. */
  products: number;
  count: number;
}

/** Counts in a surprise, a pull with its certainty, of the pair whose row this is. */
export function countSurprise(
  whole: Restlessness,
  pairs: Float64Array,
  pair: number,
  day: number,
  pulls: Float64Array,
): void {
  if (pairs[pair + SURPRISE_DAY] !== day) {
    endDay(whole, pairs, pair);
    pairs[pair + SURPRISE_DAY] = day;
    pairs[pair + SURPRISE] = 0;
    pairs[pair + SURPRISE_CERTAINTY] = 0;
  }
  pairs[pair + SURPRISE] = (pairs[pair + SURPRISE] as number) + (pulls[PULL] as number);
  pairs[pair + SURPRISE_CERTAINTY] =
    (pairs[pair + SURPRISE_CERTAINTY] as number) + (pulls[CERTAINTY] as number);
}

/** Compares the day that is over with the one before it. A day without certainty is no day. */
function endDay(whole: Restlessness, pairs: Float64Array, pair: number): void {
  const certainty = pairs[pair + SURPRISE_CERTAINTY] as number;
  if (certainty === 0) return;
  const before = pairs[pair + BEFORE] as number;
  const now = standardised(pairs[pair + SURPRISE] as number, certainty);
  if (!Number.isNaN(before)) {
    whole.products += now * before;
    whole.count += 1;
  }
  pairs[pair + BEFORE] = now;
}

function standardised(gradient: number, certainty: number): number {
  const z = gradient / Math.sqrt(certainty + 1e-9);
  return z < -2 ? -2 : Math.min(z, 2);
}

/** How much faster than usual knowledge moves in this class: 1 for as usual. */
export function restlessOf({ products, count }: Restlessness): number {
  const above = RESTLESS.gain * (products / (RESTLESS.held + count) - RESTLESS.usual);
  return Math.exp(Math.max(RESTLESS.least, Math.min(RESTLESS.most, above)));
}

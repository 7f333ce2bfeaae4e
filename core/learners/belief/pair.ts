import { NODES } from './grid.ts';

/**
 * The row of a child with a card: first the likelihood of its strength at each node, then these. In one
 * row, since they are read and written together.
 */

/** The day up to which time is counted in. */
export const TOUCHED = NODES;
/** How many readings told something of it. */
export const TOLD = NODES + 1;
/** How often it was practiced, on how many days, the last of them. */
export const TIMES = NODES + 2;
export const DAYS = NODES + 3;
export const LAST = NODES + 4;
/** Surprises of the day that is being counted, and the sum of those of the one before it by its deviation, NaN when there was none (restless.ts). */
export const SURPRISE_DAY = NODES + 5;
export const SURPRISE = NODES + 6;
export const SURPRISE_CERTAINTY = NODES + 7;
export const BEFORE = NODES + 8;
/** How likely it is known, when that was, and before what was learned from the last reading (known-or-not.ts). */
export const KNOWN = NODES + 9;
export const KNOWN_DAY = NODES + 10;
export const KNOWN_BEFORE = NODES + 11;
/** How much of right readings together was counted in, and up to which (marking.ts). */
export const SHARES = NODES + 12;
export const COUNTED = NODES + 13;
/** What its group did together while it was away: how often, on how many days, and the last of them. */
export const AWAY_TIMES = NODES + 14;
export const AWAY_DAYS = NODES + 15;
export const AWAY_LAST = NODES + 16;
/** The last day before that on which it was there for it. */
export const THERE_LAST = NODES + 17;
/** How much better the grid forecast this pair than known-or-not did: the sum of log-ratios. */
export const LEAD = NODES + 18;
/** Numbers in the row. */
export const PAIR_WIDTH = NODES + 19;

/** Makes a row of zeros that of a pair of which nothing was read, on a day. */
export function openPair(pairs: Float64Array, pair: number, day: number): void {
  pairs.fill(1, pair, pair + NODES);
  pairs[pair + TOUCHED] = day;
  pairs[pair + LAST] = Number.NEGATIVE_INFINITY;
  pairs[pair + SURPRISE_DAY] = Number.NaN;
  pairs[pair + BEFORE] = Number.NaN;
  pairs[pair + KNOWN] = Number.NaN;
  pairs[pair + AWAY_LAST] = Number.NEGATIVE_INFINITY;
  pairs[pair + THERE_LAST] = Number.NEGATIVE_INFINITY;
}

/** How many readings told something of a pair; none of one that nothing is known of, −1. */
export function toldOf(pairs: Float64Array, pair: number): number {
  return pair < 0 ? 0 : (pairs[pair + TOLD] as number);
}

/** Whether a pair's likelihood tells anything. */
export function isTold(pairs: Float64Array, pair: number): boolean {
  return (pairs[pair + TOLD] as number) > 0 || (pairs[pair + SHARES] as number) > 0;
}

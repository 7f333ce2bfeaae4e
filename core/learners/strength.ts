import type { Day } from './day.ts';
import type { TrackerSettings } from './tracker-settings.ts';

/** A normal belief about a strength, on the log-odds scale, and the practice behind it. */
export interface Strength {
  mean: number;
  variance: number;
  /** The day up to which drift is counted in. */
  day: Day;
  /** The last day of practice; −∞ before any. */
  practised: Day;
  /** How often it was practised, and on how many days. */
  times: number;
  days: number;
  /** How many readings told something of it. */
  told: number;
}

/** A strength of which only the expectation is known. */
export function startStrength(mean: number, variance: number, day: Day): Strength {
  return { mean, variance, day, practised: Number.NEGATIVE_INFINITY, times: 0, days: 0, told: 0 };
}

/**
 * Moves one of several strengths of whose sum a reading told: `step` is the gradient
 * and `shrink` the certainty of the sum, both already divided by what the sum's
 * own variance takes off.
 */
export function moveStrength(strength: Strength, step: number, shrink: number): void {
  strength.mean += strength.variance * step;
  strength.variance -= strength.variance ** 2 * shrink;
  strength.told += 1;
}

/** The strength lost `since` days after practice on so many days; none before any practice. */
export function lossOf(settings: TrackerSettings, since: number, days: number): number {
  if (since <= 0 || !Number.isFinite(since)) return 0;
  const { forgetting, forgettingDays, hold } = settings;
  return (forgetting * Math.log1p(since / forgettingDays)) / (1 + hold * days);
}

/**
 * The chance of a right reading when strength is normal: the logistic integral
 * by MacKay 1992, below the ceiling of slips.
 */
export function chanceOf(settings: Slips, mean: number, variance: number): number {
  return reached(settings, mean / Math.sqrt(1 + (Math.PI / 8) * variance));
}

/** The chance of a right reading at a strength that is known. */
export function reached({ slip }: Slips, strength: number): number {
  return (1 - slip) / (1 + Math.exp(-strength));
}

/** How steeply the chance rises with strength where it is `p`. */
export function slopeAt({ slip }: Slips, p: number): number {
  return (p * (1 - slip - p)) / (1 - slip);
}

type Slips = Pick<TrackerSettings, 'slip'>;

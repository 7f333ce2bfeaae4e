import type { Day } from './day.ts';
import type { TrackerSettings } from './tracker-settings.ts';

/** A normal belief about a strength, on the log-odds scale, and the practice behind it. */
export interface Strength {
  readonly mean: number;
  readonly variance: number;
  /** The day up to which drift is counted in. */
  readonly day: Day;
  /** The last day of practice; −∞ before any. */
  readonly practised: Day;
  /** How often it was practised, and on how many days. */
  readonly times: number;
  readonly days: number;
  /** How many readings told something of it. */
  readonly told: number;
}

/** Where each number of a strength stands in its row of a table (strength-table.ts). */
export const MEAN = 0;
export const VARIANCE = 1;
export const DAY = 2;
export const PRACTISED = 3;
export const TIMES = 4;
export const DAYS = 5;
export const TOLD = 6;

/**
 * Moves one of several strengths of whose sum a reading told: `step` is the gradient
 * and `shrink` the certainty of the sum, both already divided by what the sum's
 * own variance takes off.
 */
export function moveStrength(table: Float64Array, row: number, step: number, shrink: number): void {
  const variance = table[row + VARIANCE] as number;
  add(table, row + MEAN, variance * step);
  add(table, row + VARIANCE, -(variance ** 2 * shrink));
  add(table, row + TOLD, 1);
}

/** Time adds variance up to a day, though never beyond the `spread` of what is unknown. */
export function driftTo(
  table: Float64Array,
  row: number,
  day: Day,
  drift: number,
  spread: number,
): void {
  const since = day - (table[row + DAY] as number);
  if (since <= 0) return;
  const variance = table[row + VARIANCE] as number;
  table[row + VARIANCE] = Math.min(Math.max(spread, variance), variance + drift * since);
  table[row + DAY] = day;
}

/** The nth practice adds the nth part of the first, `gain`: strength grows with its logarithm. */
export function practiseStrength(table: Float64Array, row: number, day: Day, gain: number): void {
  add(table, row + TIMES, 1);
  add(table, row + MEAN, gain / (table[row + TIMES] as number));
  if ((table[row + PRACTISED] as number) < day) add(table, row + DAYS, 1);
  table[row + PRACTISED] = day;
}

function add(table: Float64Array, at: number, amount: number): void {
  table[at] = (table[at] as number) + amount;
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

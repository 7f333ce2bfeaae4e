import { GAIN, LOSS } from './numbers.ts';

/**
 * The practice of a child with a card as the model counts it: its own, and half of what its group did
 * together. Strength grows with the logarithm of practice, a power law of the odds (Newell & Rosenbloom
 * 1981), and is lost with that of the days since (Wixted & Ebbesen 1991), more slowly the more days it
 * was practiced on (spacing: Cepeda et al. 2006).
 */

/** ln(1 + practice), from readings of its own and together. */
export function practiced(times: number, together: number): number {
  const halves = times / GAIN.together + together;
  return halves < LOG_PRACTICE.length
    ? (LOG_PRACTICE[halves] as number)
    : Math.log1p(halves * GAIN.together);
}

/** Minus the share of loss after `since` days without practice, practiced on so many days; 0 before any. */
export function away(since: number, days: number, daysTogether: number): number {
  if (!(since > 0) || since === Number.POSITIVE_INFINITY) return 0;
  const lost =
    since < LOG_AWAY.length ? (LOG_AWAY[since] as number) : Math.log1p(since / LOSS.days);
  return -lost / (1 + LOSS.hold * (days + GAIN.together * daysTogether));
}

/** A logarithm costs as much as a loop over the grid: the first ones are kept. */
const LOG_PRACTICE = Float64Array.from({ length: 4096 }, (_, halves) =>
  Math.log1p(halves * GAIN.together),
);
const LOG_AWAY = Float64Array.from({ length: 512 }, (_, days) => Math.log1p(days / LOSS.days));

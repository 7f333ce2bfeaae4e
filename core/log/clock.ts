/** The latest time the log takes: the last one that a date can hold (ECMAScript time values). */
export const LATEST = 8_640_000_000_000_000;

/**
 * The time of the next event: now, or one millisecond after the last event
 * known, whichever is later. So events follow each other even when the clock
 * of the device is set back, or another device's goes ahead. `now` is
 * milliseconds, rounded down; `last` is the greatest `at` seen, 0 for none.
 *
 * Method: a hybrid logical clock (Kulkarni, Demirbas, Madappa, Avva & Leone,
 * "Logical Physical Clocks", OPODIS 2014), its counter folded into the
 * milliseconds, which no teacher outruns.
 */
export function tick(last: number, now: number): number {
  return Math.min(Math.max(Math.floor(now), last + 1), LATEST);
}

import type { DrillRecord } from '../log/class-state.ts';
import { PARTS, type Part } from '../log/event.ts';

/** So many of the last warm-ups count, and so few are too few to say (common practice, no source). */
const DRILLS_BACK = 10;
const ENOUGH = 2;

/** A longer wait at one card was an interruption, not reading, in milliseconds (common practice, no source). */
const LONGEST = 60_000;

/**
 * How long a group usually takes for one card, sound or word of each part, in seconds: the median of
 * its last warm-ups' means. A part that was run too seldom is not in it. `drills` as they were begun.
 */
export function usualSeconds(drills: readonly DrillRecord[]): ReadonlyMap<Part, number> {
  const usual = new Map<Part, number>();
  for (const part of PARTS) {
    const means = drills.flatMap((record) => meanSeconds(record, part)).slice(-DRILLS_BACK);
    if (means.length >= ENOUGH) usual.set(part, medianOf(means));
  }
  return usual;
}

/** The mean of a part in one warm-up, as a list of one; none where the part was hardly begun. */
function meanSeconds({ shown, ended }: DrillRecord, part: Part): readonly number[] {
  const waits = shown.flatMap(({ part: here, at }, place) => {
    const until = shown[place + 1]?.at ?? ended?.at;
    return here !== part || until === undefined || until - at > LONGEST ? [] : [until - at];
  });
  if (waits.length < 3) return [];
  return [waits.reduce((sum, wait) => sum + wait, 0) / waits.length / 1000];
}

function medianOf(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((one, other) => one - other);
  const middle = Math.floor(sorted.length / 2);
  const high = sorted[middle] as number;
  return sorted.length % 2 === 1 ? high : (high + (sorted[middle - 1] as number)) / 2;
}

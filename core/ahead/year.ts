/**
 * Where a group will stand in the order by a date, at the pace it had.
 *
 * Steps are taken to come by chance, as many on any school day as on any other,
 * at a pace of which only the steps so far tell (Poisson counts with a gamma
 * belief about their rate, Jeffreys' prior; the forecast is then negative
 * binomial: Gelman et al., Bayesian Data Analysis, 3rd ed., 2.6). A teacher's
 * steps come more evenly than that, so the range is rather too wide. It knows no
 * reason why the pace should change.
 */
import type { Day } from '../learners/day.ts';
import { countSchoolDays, type SchoolDays } from '../learners/school-days.ts';

/** A step at which a group stood from a day on. */
export interface StoodAt {
  readonly day: Day;
  readonly step: number;
}

/** Where it will stand by a day: the middle, and the 90% range. */
export interface StandAhead {
  readonly day: Day;
  readonly step: number;
  readonly low: number;
  readonly high: number;
}

/** The pace so far: steps forward on so many school days. */
export interface Pace {
  readonly steps: number;
  readonly days: number;
}

/** Fewer school days tell nothing of a year (common practice, no source). */
const LEAST_DAYS = 5;

/** The pace from where it stood, oldest first, up to today; null when that is too short to tell. */
export function paceOf(stood: readonly StoodAt[], today: Day, isSchool: SchoolDays): Pace | null {
  const [first] = stood;
  const last = stood.at(-1);
  if (first === undefined || last === undefined) return null;
  const days = countSchoolDays(first.day, today, isSchool);
  const steps = last.step - first.step;
  return days < LEAST_DAYS || steps < 1 ? null : { steps, days };
}

/** Where it will stand by each of these days, none beyond the last step of the order. */
export function standAhead(
  pace: Pace,
  now: StoodAt,
  days: readonly Day[],
  lastStep: number,
  isSchool: SchoolDays,
): readonly StandAhead[] {
  return days.map((day) => {
    const ahead = countSchoolDays(now.day, day, isSchool);
    const [low = 0, middle = 0, high = 0] = quantiles(pace.steps + 0.5, pace.days, ahead);
    const at = (steps: number): number => Math.min(lastStep, now.step + steps);
    return { day, step: at(middle), low: at(low), high: at(high) };
  });
}

const ENDS = [0.05, 0.5, 0.95] as const;

/** The ends and the middle of a negative binomial: steps in `ahead` days at a rate of shape `shape` over `days`. */
function quantiles(shape: number, days: number, ahead: number): readonly number[] {
  if (ahead === 0) return ENDS.map(() => 0);
  const more = ahead / (days + ahead);
  let chance = (1 - more) ** shape;
  let sum = chance;
  let count = 0;
  return ENDS.map((end) => {
    while (sum < end && count < MOST_STEPS) {
      count += 1;
      chance *= ((shape + count - 1) / count) * more;
      sum += chance;
    }
    return count;
  });
}

/** No order has as many steps. */
const MOST_STEPS = 5000;

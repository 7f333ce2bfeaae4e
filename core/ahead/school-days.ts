import { type Day, weekdayOf } from '../learners/day.ts';

/** Days without school from one to another, both of them free. */
export interface FreeDays {
  readonly from: Day;
  readonly to: Day;
}

/** Whether there is school: not on Saturday, Sunday, or a day that she entered as free. */
export function isSchoolDay(day: Day, free: readonly FreeDays[]): boolean {
  return weekdayOf(day) < SATURDAY && !free.some(({ from, to }) => from <= day && day <= to);
}

/** How many school days there are after one day up to another, the last one counted. */
export function schoolDaysAfter(day: Day, last: Day, free: readonly FreeDays[]): number {
  let count = 0;
  for (let at = day + 1; at <= last; at++) if (isSchoolDay(at, free)) count += 1;
  return count;
}

const SATURDAY = 5;

import { type Day, weekdayOf } from './day.ts';

/** Days without school, both ends among them. */
export interface Holiday {
  readonly first: Day;
  readonly last: Day;
}

/** Whether there is school on a day: Monday to Friday, but for holidays. */
export type SchoolDays = (day: Day) => boolean;

/** A week of five days, less these holidays. */
export function schoolDaysWithout(holidays: readonly Holiday[]): SchoolDays {
  return (day) =>
    weekdayOf(day) < 5 && !holidays.some(({ first, last }) => first <= day && day <= last);
}

/** How many school days there are after one day up to another, the last one counted. */
export function countSchoolDays(after: Day, last: Day, isSchool: SchoolDays): number {
  let count = 0;
  for (let day = after + 1; day <= last; day++) if (isSchool(day)) count += 1;
  return count;
}

/** Monday to Friday, the whole year. */
export const everyWeekday: SchoolDays = schoolDaysWithout([]);

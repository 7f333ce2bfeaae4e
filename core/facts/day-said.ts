import { type Day, makeDay, weekdayOf } from '../learners/day.ts';

/** A day as it stands in a sentence: `November 24`. */
export function daySaid(day: Day): string {
  const [, month, date] = makeDay(day).split('-').map(Number) as [number, number, number];
  return `${MONTHS[month - 1]} ${date}`;
}

/** A day with its weekday, short, as it stands in a list: `Thu, Dec 3`. */
export function dayShort(day: Day): string {
  const [, month, date] = makeDay(day).split('-').map(Number) as [number, number, number];
  return `${WEEKDAYS[weekdayOf(day)]}, ${MONTHS[month - 1]?.slice(0, 3)} ${date}`;
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

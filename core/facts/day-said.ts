import { type Day, makeDay } from '../learners/day.ts';

/** A day as it stands in a sentence: `November 24`. */
export function daySaid(day: Day): string {
  const [, month, date] = makeDay(day).split('-').map(Number) as [number, number, number];
  return `${MONTHS[month - 1]} ${date}`;
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

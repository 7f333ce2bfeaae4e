import { parseDay } from '../../core/learners/day.ts';
import { dateSaid } from './day-name.ts';

/** How old the last copy is, in a sentence, with a question when it is old: `Your last copy is from October 5.` */
export function copyAgeSaid(day: string, today: string): string {
  const isOld = (parseDay(today) ?? 0) - (parseDay(day) ?? 0) >= OLD;
  const from = day === today ? 'today' : dateSaid(day, today);
  return `Your last copy is from ${from}.${isOld ? ' Save a new one?' : ''}`;
}

/** Days after which a copy is called old: two weeks of school. */
const OLD = 14;

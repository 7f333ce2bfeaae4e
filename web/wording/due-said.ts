import type { Day } from '../../core/learners/day.ts';

/** When something should come back: `today`, `in 3 days`, `for 2 days`; empty when it has no day. */
export function dueSaid(due: Day | null, today: Day): string {
  if (due === null) return '';
  const days = due - today;
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days > 1) return `in ${days} days`;
  return days === -1 ? 'since yesterday' : `for ${-days} days`;
}

import type { DrillRecord } from '../log/class-state.ts';

/** How far a group has come with its warm-up on one day. */
export type GroupDay =
  | { readonly kind: 'fresh' }
  | { readonly kind: 'under-way' | 'done'; readonly record: DrillRecord };

/**
 * How a group's warm-up stands on a day, `YYYY-MM-DD`: the last one that was begun then and of which
 * something came up. It is under way until it was ended, however long ago she left it.
 */
export function groupDay(drills: readonly DrillRecord[], day: string): GroupDay {
  const record = drills.findLast((one) => one.day === day && one.shown.length > 0);
  if (!record) return { kind: 'fresh' };
  return { kind: record.ended === null ? 'under-way' : 'done', record };
}

/** The group's last warm-up, when it is of an earlier day and was left before its end; else null. */
export function leftBefore(drills: readonly DrillRecord[], day: string): DrillRecord | null {
  const last = drills.findLast(({ shown }) => shown.length > 0);
  return last && last.day < day && last.ended === null ? last : null;
}

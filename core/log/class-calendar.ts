import type { ChildId } from '../ids.ts';
import type { CalendarEvent } from './event.ts';

/** Days without school, both ends among them, `YYYY-MM-DD`. */
export interface DaysOff {
  readonly first: string;
  readonly last: string;
}

/** When a class has no school, and who was away when. */
export interface ClassCalendar {
  /** By their first day, then by their last. */
  readonly off: readonly DaysOff[];
  /** By day, `YYYY-MM-DD`: the children that were away, in the order of their ids. Days with none are not there. */
  readonly away: ReadonlyMap<string, readonly ChildId[]>;
}

/**
 * Reads the calendar from its events in force, in their order: of several on the same days off, or on one
 * child and day, the last holds.
 */
export function readCalendar(events: readonly CalendarEvent[]): ClassCalendar {
  const off = new Map<string, DaysOff>();
  const away = new Map<string, Set<ChildId>>();
  for (const event of events) {
    if (event.kind === 'no-school') {
      const { first, last, holds } = event.body;
      if (holds) off.set(`${first} ${last}`, { first, last });
      else off.delete(`${first} ${last}`);
      continue;
    }
    const { day, child } = event.body;
    const those = away.get(day) ?? new Set();
    away.set(day, those);
    if (event.body.away) those.add(child);
    else those.delete(child);
  }
  return {
    off: [...off].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, days]) => days),
    away: new Map(
      [...away]
        .filter(([, those]) => those.size > 0)
        .sort(([one], [other]) => (one < other ? -1 : 1))
        .map(([day, those]) => [day, [...those].sort()]),
    ),
  };
}

import type { EventId } from '../ids.ts';
import type { EventOf, LogEvent } from './event.ts';
import { compareEvents } from './event-order.ts';

/** By the id of an event: the latest undoing of it that is itself in force. */
export type Struck = ReadonlyMap<EventId, EventOf<'undone'>>;

/**
 * What has been undone, where an undoing can be undone in turn. One undoing
 * counts only for events before it, so that there are no circles; from the
 * latest back, each is settled by those already read. `undos` in their order.
 */
export function findStruck(undos: readonly EventOf<'undone'>[]): Struck {
  const struck = new Map<EventId, EventOf<'undone'>>();
  for (const undo of undos.toReversed()) {
    if (!isStruck(struck, undo) && !struck.has(undo.body.event)) struck.set(undo.body.event, undo);
  }
  return struck;
}

/** Whether an event has been undone and so does not count. */
export function isStruck(struck: Struck, event: LogEvent): boolean {
  const undo = struck.get(event.id);
  return undo !== undefined && compareEvents(event, undo) < 0;
}

/** The ids of events that are undone in one of the two and not in the other, or otherwise. */
export function changedIds(before: Struck, after: Struck): ReadonlySet<EventId> {
  const ids = new Set([...before.keys(), ...after.keys()]);
  return new Set([...ids].filter((id) => before.get(id) !== after.get(id)));
}

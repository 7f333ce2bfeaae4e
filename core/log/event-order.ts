import type { LogEvent } from './event.ts';

/** The one order of events: by time, then by id. Negative when `left` comes first; 0 for one event. */
export function compareEvents(left: LogEvent, right: LogEvent): number {
  if (left.at !== right.at) return left.at - right.at;
  if (left.id === right.id) return 0;
  return left.id < right.id ? -1 : 1;
}

/** Events in their order, each once. */
export function sortEvents<Event extends LogEvent>(events: readonly Event[]): readonly Event[] {
  if (isSorted(events)) return events;
  const sorted = [...events].sort(compareEvents);
  return sorted.filter((event, place) => sorted[place - 1]?.id !== event.id);
}

/** Ordered events with one more in its place; the same list when it is there already. */
export function insertEvent<Event extends LogEvent>(
  events: readonly Event[],
  event: Event,
): readonly Event[] {
  const before = events.findLastIndex((other) => compareEvents(other, event) <= 0);
  if (events[before]?.id === event.id) return events;
  return events.toSpliced(before + 1, 0, event);
}

/** Whether events are in their order, each once. */
function isSorted(events: readonly LogEvent[]): boolean {
  for (let place = 1; place < events.length; place++) {
    const before = events[place - 1] as LogEvent;
    const event = events[place] as LogEvent;
    if (before.id === event.id || compareEvents(before, event) > 0) return false;
  }
  return true;
}

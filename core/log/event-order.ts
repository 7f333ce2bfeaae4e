import type { LogEvent } from './event.ts';

/** The one order of events: by time, then by id. Negative when `left` comes first; 0 for one event. */
export function compareEvents(left: LogEvent, right: LogEvent): number {
  if (left.at !== right.at) return left.at - right.at;
  if (left.id === right.id) return 0;
  return left.id < right.id ? -1 : 1;
}

/** Events in their order, each once. */
export function sortEvents<Event extends LogEvent>(events: readonly Event[]): readonly Event[] {
  const sorted = inOrder(events) ? events : [...events].sort(compareEvents);
  const isRepeat = (event: Event, place: number): boolean => sorted[place - 1]?.id === event.id;
  return sorted.some(isRepeat) ? sorted.filter((event, place) => !isRepeat(event, place)) : sorted;
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

function inOrder(events: readonly LogEvent[]): boolean {
  for (let place = 1; place < events.length; place++) {
    if (compareEvents(events[place - 1] as LogEvent, events[place] as LogEvent) > 0) return false;
  }
  return true;
}

import type { EventId } from '../ids.ts';
import type { LogEvent } from './event.ts';
import { understand } from './understand.ts';

/** By the id of an event: the earliest time that was said of it. */
export type TimesSaid = ReadonlyMap<EventId, number>;

/** What `dated` events say, in whatever order they come. */
export function timesSaid(events: readonly LogEvent[]): TimesSaid {
  const times = new Map<EventId, number>();
  for (const event of events) {
    if (event.kind !== 'dated') continue;
    const known = understand(event);
    if (known?.kind !== 'dated') continue;
    const { event: id, at } = known.body;
    times.set(id, Math.min(at, times.get(id) ?? at));
  }
  return times;
}

/** An event at the time when it counts; the same value when nothing earlier was said of it. */
export function inTime<Event extends LogEvent>(event: Event, times: TimesSaid): Event {
  if (times.size === 0) return event;
  const at = times.get(event.id);
  return at === undefined || at >= event.at ? event : { ...event, at };
}

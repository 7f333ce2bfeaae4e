import type { EventId } from '../ids.ts';
import type { LogEvent } from './event.ts';
import { compareEvents } from './event-order.ts';

/**
 * All events of two logs, each once, in their order. Commutative, associative
 * and idempotent: however often and in whatever order logs are brought
 * together, the outcome is the same. Should one id stand for two different
 * events, which only a file changed by hand can do, the earlier one is kept; at
 * one time, the one whose text sorts first.
 */
export function mergeEvents(
  left: readonly LogEvent[],
  right: readonly LogEvent[],
): readonly LogEvent[] {
  const byId = new Map<EventId, LogEvent>();
  for (const event of [...left, ...right]) {
    const other = byId.get(event.id);
    byId.set(event.id, other === undefined ? event : first(other, event));
  }
  return [...byId.values()].sort(compareEvents);
}

function first(left: LogEvent, right: LogEvent): LogEvent {
  if (left === right) return left;
  if (left.at !== right.at) return left.at < right.at ? left : right;
  return textOf(left) <= textOf(right) ? left : right;
}

function textOf({ classId, by, kind, body }: LogEvent): string {
  return JSON.stringify([classId, by, kind, body]);
}

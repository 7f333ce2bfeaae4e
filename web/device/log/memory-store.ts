import type { ClassId, EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { type EventStore, isOfHead } from '../../../core/log/event-store.ts';
import { failureOf } from './store-error.ts';

/** Events kept in memory alone, until the page is closed. Fails only on what no store can keep. */
export function createMemoryStore(): EventStore {
  const byClass = new Map<ClassId, Map<EventId, LogEvent>>();
  const forgotten = new Set<ClassId>();
  return {
    async append(events) {
      const copies = copiesOf(events);
      if (copies === null) return failureOf('unkeepable');
      if (copies.some(({ classId }) => forgotten.has(classId))) return failureOf('forgotten');
      for (const event of copies) {
        const held = byClass.get(event.classId) ?? new Map<EventId, LogEvent>();
        byClass.set(event.classId, held);
        if (!held.has(event.id)) held.set(event.id, event);
      }
      return { kept: true };
    },
    async eventsOf(classId) {
      return { events: [...(byClass.get(classId)?.values() ?? [])] };
    },
    async classes() {
      const classes = [...byClass.keys()].sort().map((classId) => ({
        classId,
        events: [...(byClass.get(classId)?.values() ?? [])].filter(isOfHead),
      }));
      return { classes, forgotten: [...forgotten].sort() };
    },
    async forget(classId) {
      byClass.delete(classId);
      forgotten.add(classId);
      return { kept: true };
    },
    async recall(classId) {
      forgotten.delete(classId);
      return { kept: true };
    },
    async close() {},
  };
}

function copiesOf(events: readonly LogEvent[]): readonly LogEvent[] | null {
  try {
    return structuredClone(events);
  } catch {
    return null;
  }
}

import type { ClassId, EventId } from '../../../core/ids.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { type EventStore, isOfHead } from '../../../core/log/event-store.ts';
import { failureOf } from './store-error.ts';

/** Events kept in memory alone, until the page is closed. Fails only on what no store can keep. */
export function createMemoryStore(): EventStore {
  const byClass = new Map<ClassId, Map<EventId, LogEvent>>();
  const forgotten = new Set<ClassId>();
  const removed = new Map<ClassId, ReadonlySet<string>>();
  return {
    async append(events) {
      const copies = copiesOf(events);
      if (copies === null) return failureOf('unkeepable');
      if (copies.some(({ classId }) => forgotten.has(classId))) return failureOf('forgotten');
      for (const event of copies) {
        const erased = removed.get(event.classId) ?? NOTHING;
        if (isErased(event, erased)) {
          removed.set(event.classId, erasedWith([event], erased));
          continue;
        }
        const held = byClass.get(event.classId) ?? new Map<EventId, LogEvent>();
        byClass.set(event.classId, held);
        if (!held.has(event.id)) held.set(event.id, event);
      }
      return { kept: true };
    },
    async eventsOf(classId) {
      const events = [...(byClass.get(classId)?.values() ?? [])];
      const erased = removed.get(classId);
      return erased ? { events, erased } : { events };
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
    async remove(classId, ids) {
      const held = byClass.get(classId) ?? new Map<EventId, LogEvent>();
      const erased = erasedWith([...held.values()], [...(removed.get(classId) ?? []), ...ids]);
      removed.set(classId, erased);
      for (const event of held.values()) if (isErased(event, erased)) held.delete(event.id);
      if (held.size === 0) byClass.delete(classId);
      return { kept: true };
    },
    async recall(classId) {
      forgotten.delete(classId);
      return { kept: true };
    },
    async close() {},
  };
}

const NOTHING: ReadonlySet<string> = new Set();

function copiesOf(events: readonly LogEvent[]): readonly LogEvent[] | null {
  try {
    return structuredClone(events);
  } catch {
    return null;
  }
}

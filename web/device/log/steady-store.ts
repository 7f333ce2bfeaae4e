import { type ReadonlySignal, signal } from '@preact/signals';
import type { LogEvent } from '../../../core/log/event.ts';
import {
  type ClassHead,
  type EventStore,
  isOfHead,
  type StoreError,
} from '../../../core/log/event-store.ts';

/** A store with which the app goes on whatever happens to what is underneath. */
export interface SteadyStore extends EventStore {
  /**
   * Events given to it that are not kept yet, oldest first: those on their way,
   * and those that could not be kept. What a copy must hold.
   */
  readonly unsaved: ReadonlySignal<readonly LogEvent[]>;
  /** What is wrong; null while all is well. */
  readonly trouble: ReadonlySignal<StoreError | null>;
}

/**
 * Goes on in memory when a store fails. Events that could not be kept are held,
 * are given back with all others, and are offered to the store again with
 * each further append. Reading never fails: with the store out of reach it
 * gives what is held here, and `trouble` says so.
 */
export function keepGoing(store: EventStore): SteadyStore {
  const unsaved = signal<readonly LogEvent[]>([]);
  const trouble = signal<StoreError | null>(null);
  let failed: readonly LogEvent[] = [];
  return {
    unsaved,
    trouble,
    async append(events) {
      const batch = without(failed, events).concat(events);
      failed = [];
      unsaved.value = without(unsaved.value, events).concat(events);
      const outcome = await store.append(batch);
      if ('error' in outcome) {
        failed = without(batch, failed).concat(failed);
        trouble.value = outcome.error;
      } else {
        unsaved.value = without(unsaved.value, batch);
        trouble.value = null;
      }
      return outcome;
    },
    async eventsOf(classId) {
      const before = unsaved.value;
      const read = await store.eventsOf(classId);
      const held = without(before, unsaved.value)
        .concat(unsaved.value)
        .filter((event) => event.classId === classId);
      if ('events' in read) return { events: without(held, read.events).concat(read.events) };
      trouble.value = read.error;
      return { events: held };
    },
    async classes() {
      const read = await store.classes();
      if ('error' in read) trouble.value = read.error;
      return { classes: withHeld('classes' in read ? read.classes : [], unsaved.value) };
    },
    async forget(classId) {
      const outcome = await store.forget(classId);
      if ('error' in outcome) return outcome;
      const others = (event: LogEvent): boolean => event.classId !== classId;
      failed = failed.filter(others);
      unsaved.value = unsaved.value.filter(others);
      return outcome;
    },
    close: () => store.close(),
  };
}

function without(events: readonly LogEvent[], others: readonly LogEvent[]): LogEvent[] {
  if (events.length === 0) return [];
  const ids = new Set(others.map(({ id }) => id));
  return events.filter(({ id }) => !ids.has(id));
}

/** The list of classes with what is held of each, and those that are held alone. */
function withHeld(classes: readonly ClassHead[], held: readonly LogEvent[]): readonly ClassHead[] {
  const byId = new Map(classes.map((head) => [head.classId, head.events]));
  for (const event of held) {
    const events = byId.get(event.classId) ?? [];
    byId.set(event.classId, isOfHead(event) ? without(events, [event]).concat(event) : events);
  }
  return [...byId.entries()]
    .sort(([left], [right]) => (left < right ? -1 : 1))
    .map(([classId, events]) => ({ classId, events }));
}

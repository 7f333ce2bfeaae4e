import { type ReadonlySignal, signal } from '@preact/signals';
import type { EventId } from '../../../core/ids.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import {
  type ClassHead,
  type EventStore,
  isOfHead,
  type Kept,
  type Origin,
  type StoreError,
  type StoreFailure,
} from '../../../core/log/event-store.ts';

/** A store with which the app goes on whatever happens to what is underneath. */
export interface SteadyStore extends EventStore {
  /**
   * Events given to it that are not kept yet, oldest first: those on their way,
   * and those that could not be kept. What a copy must hold.
   */
  readonly unsaved: ReadonlySignal<readonly LogEvent[]>;
  /** Events that no store can keep, set aside so that all others go on. */
  readonly aside: ReadonlySignal<readonly LogEvent[]>;
  /** Lets go of events that were set aside, by their ids. */
  letGo(ids: readonly EventId[]): void;
  /** What is wrong; null while all is well. */
  readonly trouble: ReadonlySignal<StoreError | null>;
  /**
   * Adds events like `append`, but holds nothing of what cannot be kept: for a file that is brought in, and
   * for what comes from a server.
   */
  offer(events: readonly LogEvent[], origin?: Origin): Promise<Kept | StoreFailure>;
}

/**
 * Goes on in memory when a store fails. Events that could not be kept are held,
 * are given back with all others, and are offered to the store again with
 * each further append, after what is new, so that one that can never be kept
 * holds no other up: it is set aside, and `keepAside` is told. What is recorded of a forgotten class is let go. Reading never fails:
 * with the store out of reach it gives what is held here, and `trouble` says so.
 */
export function keepGoing(
  store: EventStore,
  keepAside: (events: readonly LogEvent[]) => unknown = () => {},
): SteadyStore {
  const unsaved = signal<readonly LogEvent[]>([]);
  const aside = signal<readonly LogEvent[]>([]);
  const trouble = signal<StoreError | null>(null);
  let failed: readonly Batch[] = [];
  return {
    unsaved,
    aside,
    trouble,
    async append(events) {
      unsaved.value = without(unsaved.value, events).concat(events);
      const waiting = failed;
      failed = [];
      const outcome = events.length === 0 ? kept : await give([events]);
      if ('error' in outcome && !isSettled(outcome)) {
        failed = [...waiting, ...failed];
        return outcome;
      }
      const before = waiting.length === 0 ? kept : await give(waiting);
      if (failed.length === 0) trouble.value = null;
      return events.length === 0 ? before : outcome;
    },
    letGo(ids) {
      aside.value = aside.value.filter(({ id }) => !ids.includes(id));
    },
    async offer(events, origin) {
      return store.append(events, origin);
    },
    async eventsOf(classId) {
      const before = unsaved.value;
      const read = await store.eventsOf(classId);
      const held = without(before, unsaved.value)
        .concat(unsaved.value)
        .filter((event) => event.classId === classId);
      if ('events' in read) {
        if (read.trouble) trouble.value = read.trouble;
        else if (failed.length === 0) trouble.value = null;
        return { ...read, events: without(held, read.events).concat(read.events) };
      }
      trouble.value = read.error;
      return { events: held };
    },
    async classes() {
      const read = await store.classes();
      if ('error' in read) trouble.value = read.error;
      const { classes, forgotten } = 'classes' in read ? read : { classes: [], forgotten: [] };
      return { classes: withHeld(classes, unsaved.value), forgotten };
    },
    async forget(classId) {
      const outcome = await store.forget(classId);
      if ('error' in outcome) return outcome;
      holdOnly((event) => event.classId !== classId);
      return outcome;
    },
    async remove(classId, ids) {
      const outcome = await store.remove(classId, ids);
      if ('error' in outcome) return outcome;
      const erased = erasedWith([...unsaved.value, ...aside.value], ids);
      holdOnly((event) => event.classId !== classId || !isErased(event, erased));
      return outcome;
    },
    recall: (classId) => store.recall(classId),
    close: () => store.close(),
  };

  function holdOnly(those: (event: LogEvent) => boolean): void {
    failed = failed.map((batch) => batch.filter(those)).filter((batch) => batch.length > 0);
    unsaved.value = unsaved.value.filter(those);
    aside.value = aside.value.filter(those);
  }

  /**
   * Gives batches to the store, each whole: all at once, and half by half where that fails because of one of
   * them. Those that may be kept later are held. Tells the last failure, if there was any.
   */
  async function give(batches: readonly Batch[]): Promise<Kept | StoreFailure> {
    const all = batches.flat();
    const outcome = await store.append(all);
    if ('kept' in outcome) {
      unsaved.value = without(unsaved.value, all);
      return outcome;
    }
    if (batches.length > 1 && ofOne.has(outcome.error.code)) {
      const middle = batches.length >> 1;
      const first = await give(batches.slice(0, middle));
      const rest = await give(batches.slice(middle));
      return 'error' in first ? first : rest;
    }
    if (isSettled(outcome)) {
      unsaved.value = without(unsaved.value, all);
      if (outcome.error.code === 'unkeepable') {
        aside.value = without(aside.value, all).concat(all);
        keepAside(all);
      }
      return outcome;
    }
    failed = [...batches, ...failed];
    trouble.value = outcome.error;
    return outcome;
  }
}

/** What was recorded together, and is kept together. */
type Batch = readonly LogEvent[];

const kept: Kept = { kept: true };

/** Failures that may be the fault of one batch among several. */
const ofOne: ReadonlySet<StoreError['code']> = new Set([
  'unkeepable',
  'forgotten',
  'full',
  'broken',
]);

/** Whether it is of no use to offer the same again. */
function isSettled({ error }: StoreFailure): boolean {
  return error.code === 'unkeepable' || error.code === 'forgotten';
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

import { type ReadonlySignal, signal } from '@preact/signals';
import { type ClassId, eventId } from '../../../core/ids.ts';
import { findAhead } from '../../../core/log/ahead.ts';
import { eventsIn } from '../../../core/log/class-events.ts';
import type { ClassState } from '../../../core/log/class-state.ts';
import { tick } from '../../../core/log/clock.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { EventSpec, LogEvent } from '../../../core/log/event.ts';
import type { Kept, StoreFailure } from '../../../core/log/event-store.ts';
import { applyEvents, replay } from '../../../core/log/replay.ts';
import type { Announcing } from './announce.ts';
import { datingsOf, type Stamping } from './stamping.ts';
import type { SteadyStore } from './steady-store.ts';

/** One class, open. */
export interface ClassLog {
  /** The class as it is now, what other windows did included. */
  readonly state: ReadonlySignal<ClassState>;
  /**
   * Adds what happened, all of it or none. It shows in `state` at once, so that
   * nothing waits for the disk; `kept` resolves when it is kept for good, or
   * with why it is not. Then it is held in `unsaved` of the store.
   */
  record(...specs: readonly EventSpec[]): Recorded;
  /** Stops listening to other windows. */
  close(): void;
}

/** What was recorded: an event for each thing said, in that order, with the ids to undo them by. */
export interface Recorded {
  readonly events: readonly LogEvent[];
  readonly kept: Promise<Kept | StoreFailure>;
}

/** What a class log needs. */
export interface ClassLogSpec extends Stamping {
  readonly store: SteadyStore & Announcing;
  readonly classId: ClassId;
}

/**
 * Opens a class; one never heard of is empty and begins with the first record. When a wrong clock stamped
 * some of it far ahead, it is said once and for all when that really was.
 */
export async function openClassLog(spec: ClassLogSpec): Promise<ClassLog> {
  const { store, classId, now, newId } = spec;
  const early: LogEvent[] = [];
  let take = (events: readonly LogEvent[]): void => {
    for (const event of events) early.push(event);
  };
  const stop = store.subscribe((events) => take(events));
  const removed: string[] = [];
  let remove = (ids: readonly string[]): void => {
    removed.push(...ids);
  };
  const stopRemoving = store.onRemoved((of, ids) => {
    if (of === classId) remove(ids);
  });
  const read = await store.eventsOf(classId);
  const kept = 'events' in read ? read.events : [];
  const found = without([...kept, ...early], removed);
  const said = datingsOf(findAhead(found, now()).right, classId, spec);
  const state = signal(replay(classId, [...found, ...said]));
  if (said.length > 0) void store.append(said);
  take = (events) => {
    state.value = applyEvents(state.peek(), events);
  };
  remove = (ids) => {
    state.value = replay(classId, without(eventsIn(state.peek()), ids));
  };
  return {
    state,
    record(...specs) {
      let { last } = state.peek();
      const events = specs.map(({ kind, body }): LogEvent => {
        last = tick(last, now());
        return { id: eventId(newId()), classId, at: last, by: spec.device, kind, body };
      });
      take(events);
      return { events, kept: store.append(events) };
    },
    close() {
      stop();
      stopRemoving();
    },
  };
}

/** Events without what was removed for good. */
function without(events: readonly LogEvent[], ids: readonly string[]): readonly LogEvent[] {
  const erased = erasedWith(events, ids);
  return events.filter((event) => !isErased(event, erased));
}

import { type ClassId, isClassId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, Kept, Origin, StoreFailure } from '../../../core/log/event-store.ts';
import { isListOf, isObject, isText } from '../../../core/log/is-value.ts';
import { parseEvent } from '../../../core/log/parse-event.ts';

/** A store that tells what other windows append. */
export interface Announcing {
  /** Calls the listener with the events that another window has appended; returns how to stop. */
  subscribe(listener: (events: readonly LogEvent[]) => void): () => void;
  /** Tells every listener of events that came otherwise than by `append`, in this window and in all others. */
  tell(events: readonly LogEvent[]): void;
  /** Calls the listener with whatever is recorded on this device, in this window or another; returns how to stop. */
  onRecorded(listener: (events: readonly LogEvent[]) => void): () => void;
  /** Calls the listener with a class of which something was removed for good, in this window or another; returns how to stop. */
  onRemoved(listener: (classId: ClassId, ids: readonly string[]) => void): () => void;
  /** Keeps what came from a server, and tells every listener of it. */
  receive(events: readonly LogEvent[]): Promise<Kept | StoreFailure>;
}

/** What windows tell each other of something that was removed. */
interface Removed {
  readonly removed: ClassId;
  readonly ids: readonly string[];
}

interface Offering {
  offer(events: readonly LogEvent[], origin?: Origin): Promise<Kept | StoreFailure>;
}

/**
 * Tells all other windows of this browser what was appended here, once the
 * store has answered. They are told even when it could not be kept, so that
 * two windows on one class show the same; keeping it stays the matter of the
 * window where it happened. Without BroadcastChannel nothing is told.
 */
export function announce<Store extends EventStore & Offering>(
  store: Store,
  name = 'sweepline-log',
): Store & Announcing {
  let channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(name);
  const listeners = new Set<(events: readonly LogEvent[]) => void>();
  const senders = new Set<(events: readonly LogEvent[]) => void>();
  const removers = new Set<(classId: ClassId, ids: readonly string[]) => void>();
  channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (isObject(data) && isClassId(data.removed)) {
      for (const remover of removers) remover(data.removed, idsIn(data.ids));
    }
    const events = Array.isArray(data) ? data.flatMap(eventIn) : [];
    if (events.length === 0) return;
    for (const listener of listeners) listener(events);
    for (const sender of senders) sender(events);
  });
  const post = (events: readonly LogEvent[] | Removed): void => {
    try {
      channel?.postMessage(events);
    } catch {
      // What no store can keep cannot be told either.
    }
  };
  const tell = (events: readonly LogEvent[]): void => {
    for (const listener of listeners) listener(events);
    post(events);
  };
  return {
    ...store,
    async append(events) {
      const outcome = await store.append(events);
      post(events);
      for (const sender of senders) sender(events);
      return outcome;
    },
    async offer(events) {
      const outcome = await store.offer(events);
      if ('error' in outcome) return outcome;
      post(events);
      for (const sender of senders) sender(events);
      return outcome;
    },
    tell,
    async receive(events) {
      const outcome = await store.offer(events, 'afar');
      if ('kept' in outcome) tell(events);
      return outcome;
    },
    async remove(classId, ids) {
      const outcome = await store.remove(classId, ids);
      // Where only the second copy could not be cleared, it is gone from the first all the same.
      post({ removed: classId, ids });
      for (const remover of removers) remover(classId, ids);
      return outcome;
    },
    onRemoved(listener) {
      removers.add(listener);
      return () => removers.delete(listener);
    },
    onRecorded(listener) {
      senders.add(listener);
      return () => senders.delete(listener);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async close() {
      channel?.close();
      channel = null;
      await store.close();
    },
  };
}

function idsIn(value: unknown): readonly string[] {
  return isListOf(isText)(value) ? value : [];
}

function eventIn(value: unknown): LogEvent[] {
  const read = parseEvent(value);
  return 'event' in read ? [read.event] : [];
}

import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, Kept, StoreFailure } from '../../../core/log/event-store.ts';
import { parseEvent } from '../../../core/log/parse-event.ts';

/** A store that tells what other windows append. */
export interface Announcing {
  /** Calls the listener with the events that another window has appended; returns how to stop. */
  subscribe(listener: (events: readonly LogEvent[]) => void): () => void;
  /** Tells every listener of events that came otherwise than by `append`, in this window and in all others. */
  tell(events: readonly LogEvent[]): void;
}

interface Offering {
  offer(events: readonly LogEvent[]): Promise<Kept | StoreFailure>;
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
  channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    const events = Array.isArray(data) ? data.flatMap(eventIn) : [];
    if (events.length > 0) for (const listener of listeners) listener(events);
  });
  const post = (events: readonly LogEvent[]): void => {
    try {
      channel?.postMessage(events);
    } catch {
      // What no store can keep cannot be told either.
    }
  };
  return {
    ...store,
    async append(events) {
      const outcome = await store.append(events);
      post(events);
      return outcome;
    },
    async offer(events) {
      const outcome = await store.offer(events);
      if ('kept' in outcome) post(events);
      return outcome;
    },
    tell(events) {
      for (const listener of listeners) listener(events);
      post(events);
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

function eventIn(value: unknown): LogEvent[] {
  const read = parseEvent(value);
  return 'event' in read ? [read.event] : [];
}

import { type ReadonlySignal, signal } from '@preact/signals';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, Kept, StoreFailure } from '../../../core/log/event-store.ts';
import { createMemoryStore } from './memory-store.ts';

/** A store with a spare one in memory. */
export interface SpareStore extends EventStore {
  /** Whether everything goes to the spare one, and ends with this window. */
  readonly inMemory: ReadonlySignal<boolean>;
  /** What the spare one holds, which is kept nowhere else. */
  heldInMemory(): readonly LogEvent[];
  /** Turns to the spare one; whoever waits for an answer has it at once. */
  workInMemory(): void;
  /** Takes what the spare one holds into the store and turns back to it, or says why not. */
  leaveMemory(): Promise<Kept | StoreFailure>;
}

/** For when a store does not answer: then she may go on in memory, and come back to it later. */
export function withSpare(store: EventStore, spare = createMemoryStore()): SpareStore {
  const inMemory = signal(false);
  const waiting = new Set<() => void>();
  let held: readonly LogEvent[] = [];
  return {
    inMemory,
    heldInMemory: () => held,
    workInMemory() {
      inMemory.value = true;
      for (const turn of waiting) turn();
    },
    async leaveMemory() {
      const outcome = await store.append(held);
      if ('kept' in outcome) {
        inMemory.value = false;
        held = [];
      }
      return outcome;
    },
    append: (events, origin) =>
      ask(async (place) => {
        const outcome = await place.append(events, origin);
        if (place === spare && 'kept' in outcome) held = [...held, ...events];
        return outcome;
      }),
    eventsOf: (classId) => ask((place) => place.eventsOf(classId)),
    classes: () => ask((place) => place.classes()),
    forget: (classId) =>
      ask(async (place) => {
        const outcome = await place.forget(classId);
        if (place === spare) held = held.filter((event) => event.classId !== classId);
        return outcome;
      }),
    remove: (classId, ids) =>
      ask(async (place) => {
        const outcome = await place.remove(classId, ids);
        const erased = erasedWith(held, ids);
        held = held.filter((event) => event.classId !== classId || !isErased(event, erased));
        return outcome;
      }),
    recall: (classId) => ask((place) => place.recall(classId)),
    close: () => store.close(),
  };

  function ask<Answer>(question: (place: EventStore) => Promise<Answer>): Promise<Answer> {
    if (inMemory.peek()) return question(spare);
    return new Promise((resolve, reject) => {
      const turn = () => {
        waiting.delete(turn);
        question(spare).then(resolve, reject);
      };
      waiting.add(turn);
      question(store)
        .then(resolve, reject)
        .finally(() => waiting.delete(turn));
    });
  }
}

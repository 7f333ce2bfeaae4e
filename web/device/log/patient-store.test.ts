import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { classId, eventId } from '../../../core/ids.ts';
import { STORE_LAWS } from '../../../test/event-store-contract.ts';
import { createMemoryStore } from './memory-store.ts';
import { withPatience } from './patient-store.ts';
import { withSpare } from './spare-store.ts';

const never = () => new Promise<never>(() => {});
const hanging = { ...createMemoryStore(), append: never, eventsOf: never, classes: never };
const note = {
  id: eventId('a'),
  classId: classId('room'),
  at: 1,
  by: 'desk',
  kind: 'noted',
  body: {},
};

describe('a patient store', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('answers `slow` where the store beneath never answers', async () => {
    const store = withPatience(hanging);
    const asked = Promise.all([
      store.append([note]),
      store.eventsOf(classId('room')),
      store.classes(),
    ]);
    await vi.runAllTimersAsync();
    for (const answer of await asked) expect(answer).toMatchObject({ error: { code: 'slow' } });
  });
});

describe('a store with a spare one', () => {
  it.each(STORE_LAWS)('$name, in memory as well', async ({ check }) => {
    await check(withSpare(withPatience(createMemoryStore())));
    const store = withSpare(hanging);
    store.workInMemory();
    await check(store);
  });

  it('answers from memory whoever waits when she turns to it', async () => {
    const store = withSpare(hanging);
    const asked = store.eventsOf(classId('room'));
    store.workInMemory();
    expect(await asked).toEqual({ events: [] });
    expect(store.inMemory.value).toBe(true);
  });

  it('takes what was done in memory along when the store answers again', async () => {
    const beneath = createMemoryStore();
    let isAway = true;
    const store = withSpare({
      ...beneath,
      append: (events) => (isAway ? never() : beneath.append(events)),
    });
    store.workInMemory();
    await store.append([note]);
    expect(store.heldInMemory()).toEqual([note]);
    isAway = false;
    expect(await store.leaveMemory()).toEqual({ kept: true });
    expect(store.heldInMemory()).toEqual([]);
    expect(store.inMemory.value).toBe(false);
    expect(await beneath.eventsOf(classId('room'))).toEqual({ events: [note] });
  });
});

import { describe, expect, it } from 'vitest';
import { classId, eventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import { STORE_LAWS } from '../../../test/event-store-contract.ts';
import { createMemoryStore } from './memory-store.ts';
import { keepGoing } from './steady-store.ts';
import { failureOf } from './store-error.ts';

const note = (id: string): LogEvent => ({
  id: eventId(id),
  classId: classId('class'),
  at: 1,
  by: 'desk',
  kind: 'noted',
  body: {},
});
const ids = (events: readonly LogEvent[]) => events.map(({ id }) => id).sort();

/** A store that refuses everything while `full` is true. */
function failing() {
  const store = createMemoryStore();
  const state = { full: true };
  const unless =
    <Args extends unknown[], Answer>(ask: (...args: Args) => Promise<Answer>) =>
    async (...args: Args) =>
      state.full ? failureOf('full') : ask(...args);
  const refusing: EventStore = {
    append: unless(store.append),
    eventsOf: unless(store.eventsOf),
    classes: unless(store.classes),
    forget: unless(store.forget),
    remove: unless(store.remove),
    recall: unless(store.recall),
    close: store.close,
  };
  const toldAside: LogEvent[] = [];
  const steady = keepGoing(refusing, (events) => toldAside.push(...events));
  return { state, store, steady, toldAside };
}

async function idsOf(store: EventStore): Promise<readonly string[]> {
  const read = await store.eventsOf(classId('class'));
  return 'events' in read ? ids(read.events) : [read.error.code];
}

describe('a steady store', () => {
  for (const { name, check } of STORE_LAWS.filter(({ name }) => !name.includes('or none'))) {
    it(`${name}, as the store beneath does`, () => check(keepGoing(createMemoryStore())));
  }

  it('says why an event is not kept, holds it, and gives it back with the others', async () => {
    const { steady } = failing();
    expect(await steady.append([note('a')])).toMatchObject({ error: { code: 'full' } });
    expect(steady.trouble.value?.code).toBe('full');
    expect(ids(steady.unsaved.value)).toEqual(['a']);
    expect(await idsOf(steady)).toEqual(['a']);
    expect(await steady.classes()).toEqual({
      classes: [{ classId: classId('class'), events: [] }],
      forgotten: [],
    });
  });

  it('keeps what it held with the next append, once there is room again', async () => {
    const { state, store, steady } = failing();
    await steady.append([note('a')]);
    await steady.append([note('b')]);
    expect(ids(steady.unsaved.value)).toEqual(['a', 'b']);
    state.full = false;
    await steady.append([note('c')]);
    expect(steady.unsaved.value).toEqual([]);
    expect(steady.trouble.value).toBeNull();
    expect(await idsOf(store)).toEqual(['a', 'b', 'c']);
  });

  it('counts an event as unsaved while it is on its way', async () => {
    const steady = keepGoing(createMemoryStore());
    const kept = steady.append([note('a')]);
    expect(ids(steady.unsaved.value)).toEqual(['a']);
    await kept;
    expect(steady.unsaved.value).toEqual([]);
  });

  it('loses nothing when many appends fail at once', async () => {
    const { state, store, steady } = failing();
    const names = Array.from({ length: 30 }, (_, n) => `n${n}`).sort();
    await Promise.all(names.map((name) => steady.append([note(name)])));
    expect(ids(steady.unsaved.value)).toEqual(names);
    state.full = false;
    await steady.append([]);
    expect(await idsOf(store)).toEqual(names);
    expect(steady.unsaved.value).toEqual([]);
  });

  it('sets aside what no store can keep, and keeps everything before and after it', async () => {
    const { state, store, steady, toldAside } = failing();
    await steady.append([note('a')]);
    await steady.append([{ ...note(eventId('b')), body: { cannot: () => 'be kept' } }]);
    await steady.append([note('c')]);
    state.full = false;
    expect(await steady.append([note('d')])).toEqual({ kept: true });
    expect(await idsOf(store)).toEqual(['a', 'c', 'd']);
    expect(ids(steady.aside.value)).toEqual(['b']);
    expect(ids(toldAside)).toEqual(['b']);
    expect(steady.unsaved.value).toEqual([]);
    expect(steady.trouble.value).toBeNull();
  });

  it('does not let what is too large hold up what is small', async () => {
    const store = createMemoryStore();
    const steady = keepGoing({
      ...store,
      append: async (events) => (events.length > 100 ? failureOf('full') : store.append(events)),
    });
    const large = Array.from({ length: 150 }, (_, n) => note(`large ${n}`));
    await steady.append(large);
    expect(await steady.append([note('small')])).toEqual({ kept: true });
    expect(await idsOf(store)).toEqual(['small']);
    expect(steady.unsaved.value).toHaveLength(150);
    expect(steady.trouble.value?.code).toBe('full');
  });

  it('holds nothing of what is only offered', async () => {
    const { steady } = failing();
    expect(await steady.offer([note('a')])).toMatchObject({ error: { code: 'full' } });
    expect(steady.unsaved.value).toEqual([]);
    expect(await idsOf(steady)).toEqual([]);
  });

  it('lets go of what is recorded of a forgotten class', async () => {
    const store = createMemoryStore();
    const steady = keepGoing(store);
    await store.forget(classId('class'));
    expect(await steady.append([note('a')])).toMatchObject({ error: { code: 'forgotten' } });
    expect(steady.unsaved.value).toEqual([]);
    expect(await idsOf(steady)).toEqual([]);
  });
});

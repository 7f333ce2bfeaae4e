import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classId, eventId, groupId } from '../../../core/ids.ts';
import { LATEST } from '../../../core/log/clock.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { makeLog } from '../../../core/log/log-file.ts';
import { mergeEvents } from '../../../core/log/merge.ts';
import { replay } from '../../../core/log/replay.ts';
import type { PacedBy } from '../../../core/paced.ts';
import { arbitraryEvents } from '../../../test/arbitrary-events.ts';
import { classYear } from '../../../test/class-year.ts';
import { createMemoryStore } from './memory-store.ts';
import { failureOf } from './store-error.ts';
import { exportLog, importLog } from './transfer.ts';

const note = (id: string, of = 'class'): LogEvent => ({
  id: eventId(id),
  classId: classId(of),
  at: 1,
  by: 'desk',
  kind: 'noted',
  body: { drillId: null, groupId: groupId('g'), text: id },
});

let lastId = 0;
const here = { device: 'desk', now: () => Date.UTC(2026, 10, 30), newId: () => `new ${lastId++}` };

async function allOf(store: ReturnType<typeof createMemoryStore>, of = 'class') {
  const read = await store.eventsOf(classId(of));
  return 'events' in read ? mergeEvents(read.events, []) : [];
}

describe('bringing a file in', () => {
  it('takes what is new, and a second time changes nothing', () =>
    fc.assert(
      fc.asyncProperty(arbitraryEvents(), fc.nat(40), async (events, shared) => {
        const store = createMemoryStore();
        await store.append(events.slice(0, shared));
        const file = makeLog(events);
        const known = Math.min(shared, events.length);
        const first = await importLog(store, file, null, here);
        expect(first).toMatchObject({ known, added: events.length - known, damaged: [] });
        const after = await allOf(store);
        expect(after).toEqual(mergeEvents(events, []));
        expect(await importLog(store, file, null, here)).toMatchObject({
          added: 0,
          known: events.length,
        });
        expect(await allOf(store)).toEqual(after);
      }),
      { numRuns: 50 },
    ));

  it('brings nothing back of what was removed for good, and says how much stayed out', async () => {
    const store = createMemoryStore();
    const file = makeLog([note('a'), note('b'), note('c')]);
    await store.append([note('a'), note('b')]);
    await store.remove(classId('class'), ['a']);
    expect(await importLog(store, file, null, here)).toMatchObject({
      added: 1,
      known: 1,
      erased: 1,
    });
    expect((await allOf(store)).map(({ id }) => id)).toEqual(['b', 'c']);
  });

  it('takes the good lines of a damaged file and gives back the others', async () => {
    const store = createMemoryStore();
    const saved = makeLog([note('a'), note('b')]);
    const file = saved.slice(0, saved.indexOf('\n{"end"') - 20);
    const outcome = await importLog(store, file, null, here);
    expect(outcome).toMatchObject({
      added: 1,
      damaged: [{ line: 3, code: 'broken-off' }],
      isWhole: false,
    });
    expect(await allOf(store)).toEqual([note('a')]);
  });

  it('asks before it brings a deleted class back', async () => {
    const store = createMemoryStore();
    await store.append([note('a')]);
    const file = makeLog([note('a'), note('b')]);
    await store.forget(classId('class'));
    expect(await importLog(store, file, null, here)).toMatchObject({ error: { code: 'deleted' } });
    expect(await allOf(store)).toEqual([]);
    expect(await importLog(store, file, null, here, { recalls: true })).toMatchObject({ added: 2 });
    expect(await allOf(store)).toEqual([note('a'), note('b')]);
  });

  it('tells of one id that stands for two events, and lets what is here stand', async () => {
    const store = createMemoryStore();
    await store.append([note('a')]);
    const file = makeLog([
      { ...note(eventId('a')), body: { drillId: null, groupId: groupId('g'), text: 'other' } },
    ]);
    expect(await importLog(store, file, null, here)).toMatchObject({ known: 1, twofold: 1 });
    expect(await allOf(store)).toEqual([note('a')]);
  });

  it('makes one class on any number of devices, whatever file reaches whom, how often and in which order', () =>
    fc.assert(
      fc.asyncProperty(
        arbitraryEvents(),
        fc.integer({ min: 2, max: 5 }),
        fc.infiniteStream(fc.nat()),
        async (events, many, chance) => {
          const stores = Array.from({ length: many }, createMemoryStore);
          const any = () => stores[chance.next().value % many] as (typeof stores)[number];
          for (const event of events) await any().append([event]);
          const files = await Promise.all(stores.map(async (store) => makeLog(await allOf(store))));
          for (const store of stores) {
            const order = [...files, ...files].sort(() => (chance.next().value % 2) - 0.5);
            for (const file of order) await importLog(store, file, null, here);
          }
          for (const store of stores) expect(await allOf(store)).toEqual(mergeEvents(events, []));
        },
      ),
      { numRuns: 40 },
    ));

  it('takes several classes from one file', async () => {
    const store = createMemoryStore();
    const outcome = await importLog(store, makeLog([note('a'), note('b', 'other')]), null, here);
    expect(outcome).toMatchObject({ added: 2, classIds: ['class', 'other'] });
    expect(await allOf(store, 'other')).toHaveLength(1);
  });

  it('opens a locked file with its passphrase, asks for it, and refuses another', async () => {
    const store = createMemoryStore();
    const saved = await exportLog([note('a')], 'moss');
    expect(saved).toMatchObject({ readsBack: true });
    if ('error' in saved) throw new Error(saved.error.code);
    expect(saved.text).not.toContain('noted');
    expect(await importLog(store, saved.text, null, here)).toMatchObject({
      error: { code: 'locked' },
    });
    expect(await importLog(store, saved.text, 'fern', here)).toMatchObject({
      error: { code: 'wrong-passphrase' },
    });
    expect(await allOf(store)).toEqual([]);
    expect(await importLog(store, saved.text, 'moss', here)).toMatchObject({ added: 1 });
  });

  it('needs no passphrase for a file without one', async () => {
    const saved = await exportLog([note('a')], null);
    expect(saved).toEqual({ text: makeLog([note('a')]), readsBack: true });
    expect(await importLog(createMemoryStore(), makeLog([note('a')]), 'moss', here)).toMatchObject({
      added: 1,
    });
  });

  it('sets right what a wrong clock stamped, so that it wins over nothing that comes later', async () => {
    const store = createMemoryStore();
    const now = here.now();
    const right = [eventId('a'), eventId('b'), eventId('c')].map((id, n) => ({
      ...note(id),
      at: now - n * 1000,
    }));
    const file = makeLog([...right, { ...note(eventId('far')), at: LATEST }]);
    expect(await importLog(store, file, null, here)).toMatchObject({ added: 4, setRight: 1 });
    expect(replay(classId('class'), await allOf(store)).last).toBe(now + 1);
    expect(await importLog(store, file, null, here)).toMatchObject({ added: 0, setRight: 0 });
  });

  it('brings nothing in where the clock of this device may be the wrong one', async () => {
    const store = createMemoryStore();
    const now = here.now();
    const file = makeLog(
      [eventId('a'), eventId('b'), eventId('c')].map((id, n) => ({
        ...note(id),
        at: now + n * 1e9,
      })),
    );
    const outcome = await importLog(store, file, null, here);
    expect(outcome).toMatchObject({ error: { code: 'ahead' } });
    expect(await allOf(store)).toEqual([]);
  });

  it('says why when the file is none, or nothing can be kept', async () => {
    expect(await importLog(createMemoryStore(), 'a,b', null, here)).toMatchObject({
      error: { code: 'not-a-log' },
    });
    const full = { ...createMemoryStore(), append: async () => failureOf('full') };
    expect(await importLog(full, makeLog([note('a')]), null, here)).toMatchObject({
      error: { code: 'full' },
    });
  });
});

describe('a file that is stopped on its way', () => {
  const year = classYear(classId('room'), 3000);
  /** Stops at the so-many-th pause. */
  const stopsAt = (pauses: number): PacedBy => {
    let left = pauses;
    return async (work) => {
      for (;;) {
        if (left-- === 0) return null;
        const step = work.next();
        if (step.done) return step.value;
      }
    };
  };

  it('has brought nothing in, wherever it was stopped, and all when it was not', async () => {
    const copy = makeLog(year);
    let stopped = 0;
    for (let pauses = 0; ; pauses += 1) {
      const store = createMemoryStore();
      let isKeeping = false;
      const onKeeping = () => {
        isKeeping = true;
      };
      const outcome = await importLog(store, copy, null, here, {
        pace: stopsAt(pauses),
        onKeeping,
      });
      const read = await store.eventsOf(classId('room'));
      const { length } = 'events' in read ? read.events : [];
      if ('error' in outcome) {
        expect(outcome.error.code).toBe('stopped');
        expect(length).toBe(0);
        expect(isKeeping).toBe(false);
        stopped += 1;
      } else {
        expect(length).toBe(year.length);
        expect(isKeeping).toBe(true);
        break;
      }
    }
    expect(stopped).toBeGreaterThan(10);
  });

  it('makes no file when it is stopped while it is saved or compared', async () => {
    let stopped = 0;
    for (let pauses = 0; ; pauses += 1) {
      const outcome = await exportLog(year, null, stopsAt(pauses));
      if (!('error' in outcome)) break;
      expect(outcome.error.code).toBe('stopped');
      stopped += 1;
    }
    expect(stopped).toBeGreaterThan(20);
  });
});

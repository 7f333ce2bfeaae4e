import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { classId, eventId, groupId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import { STORE_LAWS } from '../../../test/event-store-contract.ts';
import { createMemoryStore } from './memory-store.ts';
import { encodePage } from './page.ts';
import { type Found, type SecondCopySpec, withSecondCopy as withCopy } from './second-copy.ts';
import { type Drawer, parseSheet } from './sheet.ts';
import { failureOf } from './store-error.ts';

/** The same, but quick to look again. */
const withSecondCopy = (store: EventStore, spec: SecondCopySpec) =>
  withCopy(store, { lookAgainAfter: 1, compareAfter: 0, ...spec });

function makeDrawer(): Drawer & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>();
  return {
    texts,
    names: async () => [...texts.keys()],
    read: async (name) => texts.get(name) ?? '',
    add: async (name, line) => void texts.set(name, `${texts.get(name) ?? ''}\n${line}`),
    remove: async (name) => void texts.delete(name),
  };
}

const noDrawer: Drawer = {
  names: () => Promise.reject(new Error('none')),
  read: () => Promise.reject(new Error('none')),
  add: () => Promise.reject(new Error('none')),
  remove: () => Promise.reject(new Error('none')),
};

const room = classId('room');

const note = (id: string, of = 'room', at = 1): LogEvent => ({
  id: eventId(id),
  classId: classId(of),
  at,
  by: 'device',
  kind: 'noted',
  body: { drillId: null, groupId: groupId('all'), text: `„${id}“` },
});

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function idsOf(store: EventStore, of = 'room'): Promise<readonly string[]> {
  const read = await store.eventsOf(classId(of));
  return 'events' in read ? read.events.map(({ id }) => id).sort() : [];
}

describe('a store with a second copy', () => {
  it.each(STORE_LAWS)('$name', ({ check }) =>
    check(withSecondCopy(createMemoryStore(), { drawer: makeDrawer(), session: 'window' })),
  );

  it.each(STORE_LAWS)('without a drawer: $name', ({ check }) =>
    check(withSecondCopy(createMemoryStore(), { drawer: noDrawer, session: 'window' })),
  );

  it('gives everything back after the store was lost, whatever was opened and closed before', async () => {
    const session = fc.array(
      fc.array(fc.constantFrom('room', 'hall/2', '..'), { maxLength: 300 }),
      {
        maxLength: 4,
      },
    );
    await fc.assert(
      fc.asyncProperty(fc.array(session, { maxLength: 5 }), async (sessions) => {
        const drawer = makeDrawer();
        const kept = createMemoryStore();
        let count = 0;
        for (const [number, batches] of sessions.entries()) {
          const store = withSecondCopy(kept, { drawer, session: `window ${number}` });
          await store.eventsOf(room);
          for (const batch of batches) {
            await store.append(batch.map((classId) => note(`e${count}`, classId, count++)));
          }
          await store.close();
        }
        const again = withSecondCopy(createMemoryStore(), { drawer, session: 'later' });
        expect(await again.classes()).toEqual(await kept.classes());
        for (const classId of ['room', 'hall/2', '..']) {
          expect(await idsOf(again, classId)).toEqual(await idsOf(kept, classId));
        }
      }),
      { numRuns: 40 },
    );
  });

  it('begins the next sheet with what may have missed the drawer', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const first = withSecondCopy(kept, { drawer, session: 'first' });
    await first.append([note('a', 'room', 1_000_000)]);
    await first.close();
    await kept.append([note('b', 'room', 1_000_001)]);
    const second = withSecondCopy(kept, { drawer, session: 'second' });
    await second.eventsOf(room);
    await second.close();
    expect(await idsOf(withSecondCopy(createMemoryStore(), { drawer, session: 'third' }))).toEqual([
      'a',
      'b',
    ]);
  });

  it('takes nothing for lost that is still on its way to the drawer, here or in another window', async () => {
    const quick = makeDrawer();
    const slow: Drawer = {
      ...quick,
      add: async (name, line) => {
        await pause(300);
        await quick.add(name, line);
      },
    };
    const kept = createMemoryStore();
    const found: Found[] = [];
    const onFound = (what: Found) => found.push(what);
    const lookAgainAfter = 700;
    const one = withSecondCopy(kept, { drawer: slow, session: 'one', onFound, lookAgainAfter });
    const other = withSecondCopy(kept, { drawer: slow, session: 'other', onFound, lookAgainAfter });
    const bringing = one.append(Array.from({ length: 900 }, (_, n) => note(`e${n}`, 'room', n)));
    await pause(20);
    await Promise.all([one.eventsOf(room), other.eventsOf(room), bringing]);
    await Promise.all([one.close(), other.close()]);
    expect(found).toEqual([]);
    const later = withSecondCopy(createMemoryStore(), { drawer: quick, session: 'later' });
    expect((await idsOf(later)).length).toBe(900);
  });

  it('says when the drawer had lost what the store has', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const first = withSecondCopy(kept, { drawer, session: 'first' });
    await first.append(Array.from({ length: 40 }, (_, n) => note(`e${n}`, 'room', n)));
    await first.close();
    drawer.texts.clear();
    const found: Found[] = [];
    const again = withSecondCopy(kept, {
      drawer,
      session: 'again',
      onFound: (what) => found.push(what),
    });
    await again.eventsOf(room);
    await again.close();
    expect(found.map(({ copied }) => copied)).toEqual([40]);
  });

  it('copies a class that was there before it, and keeps its sheets few', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    await kept.append(Array.from({ length: 3000 }, (_, n) => note(`e${n}`, 'room', n * 1e6)));
    for (let opening = 0; opening < 120; opening++) {
      const store = withSecondCopy(kept, { drawer, session: `window ${opening}` });
      await store.eventsOf(room);
      await store.close();
      expect(drawer.texts.size).toBeLessThan(50);
    }
    const lost = withSecondCopy(createMemoryStore(), { drawer, session: 'later' });
    expect(await idsOf(lost)).toEqual(await idsOf(kept));
  });

  it('does not read a class again at each opening that was brought in at once', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const many = Array.from({ length: 1500 }, (_, n) => note(`e${n}`));
    for (const session of ['first', 'second', 'third']) {
      const store = withSecondCopy(kept, { drawer, session });
      if (session === 'first') await store.append(many);
      await store.eventsOf(room);
      await store.close();
    }
    const sheets = (await drawer.names()).map((name) => parseSheet(name)?.kind);
    expect(sheets).toEqual(['full', 'full']);
    const lost = withSecondCopy(createMemoryStore(), { drawer, session: 'later' });
    expect(await idsOf(lost)).toHaveLength(1500);
  });

  it('loses nothing that another window adds while all sheets are written again', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    for (let opening = 0; opening < 45; opening++) {
      await withSecondCopy(kept, { drawer, session: `${opening}` }).append([note(`e${opening}`)]);
    }
    const other = withSecondCopy(kept, { drawer, session: 'other' });
    await other.append([note('before')]);
    const slow: Drawer = {
      ...drawer,
      async add(name, line) {
        await other.append([note('meanwhile')]);
        await drawer.add(name, line);
      },
    };
    const here = withSecondCopy(kept, { drawer: slow, session: 'here' });
    await here.eventsOf(room);
    await here.close();
    expect(drawer.texts.size).toBeLessThan(5);
    const lost = withSecondCopy(createMemoryStore(), { drawer, session: 'later' });
    expect(await idsOf(lost)).toEqual(await idsOf(kept));
  });

  it('is forgotten with the class, and brings no class back where others are', async () => {
    const drawer = makeDrawer();
    const store = withSecondCopy(createMemoryStore(), { drawer, session: 'window' });
    await store.append([note('a'), note('b', 'hall')]);
    await store.forget(room);
    expect([...drawer.texts.keys()]).toEqual(['hall/window', 'room/~gone']);
    expect(await idsOf(store)).toEqual([]);
  });

  it('copies again a class that was forgotten and brought back in the same window', async () => {
    const drawer = makeDrawer();
    const store = withSecondCopy(createMemoryStore(), { drawer, session: 'window' });
    await store.append([note('a')]);
    await store.forget(room);
    await store.recall(room);
    await store.append([note('a'), note('b')]);
    const lost = withSecondCopy(createMemoryStore(), { drawer, session: 'later' });
    expect(await idsOf(lost)).toEqual(['a', 'b']);
  });

  it('tells when everything came back, and only then', async () => {
    const drawer = makeDrawer();
    const told: string[] = [];
    const open = (session: string, store = createMemoryStore()) =>
      withSecondCopy(store, { drawer, session, onFound: () => told.push(session) });
    const first = open('first');
    await first.classes();
    await first.append([note('a')]);
    await first.eventsOf(room);
    expect(told).toEqual([]);
    const second = open('second');
    await second.classes();
    await second.classes();
    expect(told).toEqual(['second']);
  });

  it('never takes a store for lost while a first class comes or the last one goes', async () => {
    const drawer = makeDrawer();
    const told: string[] = [];
    const kept = createMemoryStore();
    const asked: Promise<unknown>[] = [];
    const open = (session: string, store: EventStore = kept) =>
      withSecondCopy(store, { drawer, session, onFound: () => told.push(session) });
    const whileAsked = async <Outcome>(work: () => Promise<Outcome>): Promise<Outcome> => {
      asked.push(open('other').classes());
      await pause(5);
      asked.push(open('other').classes());
      const outcome = await work();
      asked.push(open('other').classes());
      await pause(5);
      asked.push(open('other').classes());
      return outcome;
    };
    const watched: EventStore = {
      ...kept,
      append: (events) => whileAsked(() => kept.append(events)),
      forget: (classId) => whileAsked(() => kept.forget(classId)),
    };
    const store = open('window', watched);
    await store.append([note('a')]);
    await store.append([note('b')]);
    await store.forget(room);
    await Promise.all(asked);
    expect(asked).toHaveLength(12);
    expect(told).toEqual([]);
    expect(await kept.classes()).toEqual({ classes: [], forgotten: ['room'] });
  });

  it.each(['no copy yet', 'a copy'])(
    'leaves no copy of a class that another window forgot while it was opened here: %s',
    async (before) => {
      const drawer = makeDrawer();
      const kept = createMemoryStore();
      const first = before === 'a copy' ? { drawer, session: 'first' } : null;
      await (first ? withSecondCopy(kept, first) : kept).append([note('a')]);
      const here = withSecondCopy(kept, { drawer, session: 'here' });
      const other = withSecondCopy(kept, { drawer, session: 'other' });
      const opened = here.eventsOf(room);
      await other.forget(room);
      await opened;
      await here.close();
      expect([...drawer.texts.keys()]).toEqual(['room/~gone']);
    },
  );

  it('says so, and deletes nothing, when a sheet cannot be thrown away', async () => {
    vi.useFakeTimers();
    const drawer = { ...makeDrawer(), remove: () => Promise.reject(new Error('held')) };
    const store = withSecondCopy(createMemoryStore(), { drawer, session: 'window' });
    await store.append([note('a')]);
    const forgetting = store.forget(room);
    await vi.runAllTimersAsync();
    expect(await forgetting).toMatchObject({ error: { code: 'busy' } });
    expect(await idsOf(store)).toEqual(['a']);
    vi.useRealTimers();
  });

  it('opens nothing as empty whose events are on a great many open sheets alone', async () => {
    const drawer = makeDrawer();
    const ids = Array.from({ length: 40 }, (_, n) => `e${n}`);
    for (const id of ids) drawer.texts.set(`room/window ${id}`, `\n${encodePage([note(id)])}`);
    const store = withSecondCopy(createMemoryStore(), { drawer, session: 'window' });
    expect(await idsOf(store)).toEqual(ids.sort());
  });

  it('opens nothing with as many events as were lost for whole', async () => {
    const drawer = makeDrawer();
    drawer.texts.set('room/old-0~2', `\n${encodePage([note('a'), note('b')])}`);
    const first = withSecondCopy(createMemoryStore(), { drawer, session: 'first' });
    expect(await idsOf(first)).toEqual(['a', 'b']);
    await first.close();
    expect([...drawer.texts.keys()]).toEqual([expect.stringMatching(/^room\/first-0~2~m/)]);
    const poorer = createMemoryStore();
    await poorer.append([note('c'), note('d')]);
    const third = withSecondCopy(poorer, { drawer, session: 'third' });
    expect(await idsOf(third)).toEqual(['a', 'b', 'c', 'd']);
  });

  it('keeps a sheet that cannot be read for a while, whatever is put in order meanwhile', async () => {
    const drawer = makeDrawer();
    drawer.texts.set('room/old-0~2', `\n${encodePage([note('a'), note('b')])}`);
    for (let n = 0; n < 20; n++)
      drawer.texts.set(`room/window ${n}`, `\n${encodePage([note(`e${n}`)])}`);
    const failing: Drawer = {
      ...drawer,
      read: (name) =>
        name.startsWith('room/old') ? Promise.reject(new Error('fails')) : drawer.read(name),
    };
    const store = withSecondCopy(createMemoryStore(), { drawer: failing, session: 'here' });
    await store.eventsOf(room);
    await store.close();
    const later = withSecondCopy(createMemoryStore(), { drawer, session: 'later' });
    expect(await idsOf(later)).toHaveLength(22);
  });

  it('waits for a drawer that is only slow, so that no class opens without what it lost', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const all = Array.from({ length: 30_000 }, (_, n) => note(`e${n}`));
    await kept.append(all);
    const first = withSecondCopy(kept, { drawer, session: 'first' });
    await first.eventsOf(room);
    await first.close();
    expect(drawer.texts.size).toBeGreaterThan(0);
    vi.useFakeTimers();
    const slow: Drawer = {
      ...drawer,
      read: async (name) => {
        await new Promise((resolve) => setTimeout(resolve, 2000));
        return drawer.read(name);
      },
    };
    const store = withSecondCopy(createMemoryStore(), { drawer: slow, session: 'later' });
    const opening = idsOf(store);
    await vi.runAllTimersAsync();
    expect(await opening).toHaveLength(all.length);
    vi.useRealTimers();
  });

  it('opens with what the store has when the drawer never answers', async () => {
    vi.useFakeTimers();
    const drawer = makeDrawer();
    const never = () => new Promise<never>(() => {});
    for (const dead of [
      { ...drawer, names: never },
      { ...drawer, read: never },
    ]) {
      const kept = createMemoryStore();
      await kept.append([note('a')]);
      drawer.texts.set('room/other-0~2', encodePage([note('a'), note('b')]));
      const store = withSecondCopy(kept, { drawer: dead, session: 'window' });
      const opening = idsOf(store);
      await vi.runAllTimersAsync();
      expect(await opening).toEqual(['a']);
    }
    vi.useRealTimers();
  });

  it('leaves no copy of a class that is forgotten while its copy is being begun', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    await kept.append(Array.from({ length: 3000 }, (_, n) => note(`e${n}`)));
    const store = withSecondCopy(kept, { drawer, session: 'window' });
    await store.eventsOf(room);
    await store.forget(room);
    await store.close();
    expect([...drawer.texts.keys()]).toEqual(['room/~gone']);
  });

  it('waits until another window has let go of a sheet that is to be forgotten', async () => {
    const drawer = makeDrawer();
    const store = withSecondCopy(createMemoryStore(), { drawer, session: 'window' });
    await store.append([note('a')]);
    let refusals = 2;
    const held: Drawer = {
      ...drawer,
      remove: (name) => (refusals-- > 0 ? Promise.reject(new Error('held')) : drawer.remove(name)),
    };
    const other = withSecondCopy(createMemoryStore(), { drawer: held, session: 'other' });
    await other.forget(room);
    expect([...drawer.texts.keys()]).toEqual(['room/~gone']);
  });

  it('gives what is left where a sheet is damaged', async () => {
    const drawer = makeDrawer();
    const store = withSecondCopy(createMemoryStore(), { drawer, session: 'window' });
    await store.append([note('a')]);
    await store.close();
    await drawer.add('room/torn', '{"texts":["');
    await drawer.add('room/torn', encodePage([note('b')]));
    expect(await idsOf(withSecondCopy(createMemoryStore(), { drawer, session: 'later' }))).toEqual([
      'a',
      'b',
    ]);
  });

  it('puts back whatever part the store lost, at any opening, and says how much', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(2200), fc.boolean()), { minLength: 1, maxLength: 4 }),
        fc.infiniteStream(fc.nat(2)),
        async (sessions, chance) => {
          const drawer = makeDrawer();
          const all: LogEvent[] = [];
          let kept = createMemoryStore();
          for (const [number, [count, loses]] of sessions.entries()) {
            const told: number[] = [];
            const before = all.length;
            if (loses && before > 0) {
              kept = createMemoryStore();
              const left = all.filter(() => chance.next().value !== 0);
              await kept.append(left);
            }
            const store = withSecondCopy(kept, {
              drawer,
              session: `window${number}`,
              onFound: ({ lost }) => told.push(lost.length),
            });
            const there = await idsOf(kept);
            expect(await idsOf(store)).toEqual(all.map(({ id }) => id).sort());
            const lost = before - there.length;
            expect(told).toEqual(lost > 0 ? [lost] : []);
            const fresh = Array.from({ length: count }, (_, n) =>
              note(`e${number}-${n}`, 'room', n + 1),
            );
            for (let from = 0; from < count; from += 700) {
              await store.append(fresh.slice(from, from + 700));
            }
            all.push(...fresh);
            await store.close();
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  it('gives a class back although another was begun after the store was lost', async () => {
    const drawer = makeDrawer();
    const first = withSecondCopy(createMemoryStore(), { drawer, session: 'first' });
    await first.append([note('a'), note('b')]);
    await first.close();
    const kept = createMemoryStore();
    await kept.append([note('c', 'hall')]);
    const second = withSecondCopy(kept, { drawer, session: 'second' });
    await second.classes();
    expect(await idsOf(kept)).toEqual(['a', 'b']);
    expect(await idsOf(kept, 'hall')).toEqual(['c']);
  });

  it('takes up what only the store has, when the drawer lost its part', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const first = withSecondCopy(kept, { drawer, session: 'first' });
    await first.append([note('a'), note('b')]);
    await first.close();
    drawer.texts.clear();
    const second = withSecondCopy(kept, { drawer, session: 'second' });
    await second.eventsOf(room);
    await second.close();
    const lost = withSecondCopy(createMemoryStore(), { drawer, session: 'third' });
    expect(await idsOf(lost)).toEqual(['a', 'b']);
  });

  it.each([
    ['all', () => false],
    ['half', (place: number) => place % 2 === 0],
  ] as const)(
    'takes it up at once when the drawer lost %s, not when it has looked again',
    async (_, isLeft) => {
      const drawer = makeDrawer();
      const kept = createMemoryStore();
      const all = Array.from({ length: 3000 }, (_, n) => note(`e${n}`, 'room', n));
      await kept.append(all);
      const left = all.filter((_, place) => isLeft(place));
      if (left.length > 0) drawer.texts.set('room/before', `\n${encodePage(left)}`);
      const never = { lookAgainAfter: 1e8, compareAfter: 1e8 };
      const second = withCopy(kept, { drawer, session: 'second', ...never });
      expect(await idsOf(second)).toHaveLength(3000);
      await pause(0);
      const lost = withSecondCopy(createMemoryStore(), { drawer, session: 'third' });
      expect(await idsOf(lost)).toHaveLength(3000);
    },
  );

  it('gives what the drawer has while the store cannot be reached', async () => {
    const drawer = makeDrawer();
    const first = withSecondCopy(createMemoryStore(), { drawer, session: 'first' });
    await first.append([note('a')]);
    await first.close();
    const away: EventStore = { ...createMemoryStore(), eventsOf: async () => failureOf('broken') };
    const second = withSecondCopy(away, { drawer, session: 'second' });
    expect(await second.eventsOf(room)).toMatchObject({
      events: [{ id: 'a' }],
      trouble: { code: 'broken' },
    });
  });

  it('never brings a forgotten class back: not from a sheet left over, not by a window that wakes, not after the store was lost', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const here = withSecondCopy(kept, { drawer, session: 'here' });
    const asleep = withSecondCopy(kept, { drawer, session: 'asleep' });
    await here.append([note('a')]);
    await asleep.eventsOf(room);
    await here.forget(room);
    expect(await asleep.append([note('b')])).toMatchObject({ error: { code: 'forgotten' } });
    await asleep.close();
    expect([...drawer.texts.keys()]).toEqual(['room/~gone']);
    await drawer.add('room/left', encodePage([note('c')]));
    for (const store of [kept, createMemoryStore()]) {
      const next = withSecondCopy(store, { drawer, session: 'next' });
      expect(await next.classes()).toEqual({ classes: [], forgotten: ['room'] });
      expect(await idsOf(next)).toEqual([]);
      await next.close();
    }
    expect([...drawer.texts.keys()]).toEqual(['room/~gone']);
  });

  it('leaves nothing of what is removed on any sheet, and brings none of it back', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const other = withSecondCopy(kept, { drawer, session: 'other' });
    await other.append([note('gone'), note('stays')]);
    await other.close();
    const here = withSecondCopy(kept, { drawer, session: 'here' });
    await here.append([note('later'), note('hall', 'hall')]);
    await drawer.add('room/~aside-other-0', 'a damaged one with gone on it');
    expect(await here.remove(room, ['gone'])).toEqual({ kept: true });
    await here.close();
    const texts = [...drawer.texts].filter(([name]) => !name.endsWith('~erased'));
    expect(texts.map(([, text]) => text).join()).not.toContain('gone');
    // A sheet that comes back from somewhere, first beside the store and then after that was lost.
    for (const store of [kept, createMemoryStore()]) {
      await drawer.add('room/left', encodePage([note('gone'), note('left')]));
      const next = withSecondCopy(store, { drawer, session: 'next' });
      expect(await idsOf(next)).toEqual(['later', 'left', 'stays']);
      await next.append([note('gone')]);
      await next.close();
      expect(await idsOf(next)).toEqual(['later', 'left', 'stays']);
      expect(drawer.texts.has('room/left')).toBe(false);
    }
  });

  it('says so while another window holds a sheet with something that was removed', async () => {
    const drawer = makeDrawer();
    const held: Drawer = { ...drawer, remove: () => Promise.reject(new Error('held')) };
    vi.useFakeTimers();
    const store = withSecondCopy(createMemoryStore(), { drawer: held, session: 'window' });
    await store.append([note('gone'), note('stays')]);
    const removing = store.remove(room, ['gone']);
    await vi.runAllTimersAsync();
    expect(await removing).toMatchObject({ error: { code: 'busy' } });
    vi.useRealTimers();
    expect(await idsOf(store)).toEqual(['stays']);
  });

  it('reports a damaged sheet once, keeps it aside, and is whole again', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    const found: Found[] = [];
    const open = (session: string, store: EventStore = kept) =>
      withSecondCopy(store, { drawer, session, onFound: (one) => found.push(one) });
    const first = open('first');
    await first.append([note('a')]);
    await first.append([note('b')]);
    await first.close();
    const sheet = drawer.texts.get('room/first') as string;
    drawer.texts.set('room/first', sheet.replace('"a"', '"x"'));
    for (const session of ['second', 'third']) {
      const store = open(session);
      expect(await idsOf(store)).toEqual(['a', 'b']);
      await store.close();
    }
    expect(found).toMatchObject([{ damaged: 1, lost: [] }]);
    expect(await idsOf(open('fourth', createMemoryStore()))).toEqual(['a', 'b']);
  });

  it('says when one id stands for two events', async () => {
    const drawer = makeDrawer();
    const kept = createMemoryStore();
    await kept.append([note('a')]);
    await drawer.add('room/other', encodePage([note('a', 'room', 7)]));
    const found: Found[] = [];
    const store = withSecondCopy(kept, { drawer, session: 's', onFound: (one) => found.push(one) });
    await store.eventsOf(room);
    await store.close();
    expect(found).toMatchObject([{ twofold: 1, lost: [] }]);
  });
});

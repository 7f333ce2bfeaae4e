import { expect, it } from 'vitest';
import { classId, type EventId, eventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import { makeRandom, type Random } from '../../../core/random.ts';
import { createMemoryStore } from './memory-store.ts';
import { type SecondCopySpec, withSecondCopy as withCopy } from './second-copy.ts';
import type { Drawer } from './sheet.ts';
import { failureOf } from './store-error.ts';

/** The same, but quick to look again. */
const withSecondCopy = (store: EventStore, spec: SecondCopySpec) =>
  withCopy(store, { lookAgainAfter: 1, compareAfter: 0, ...spec });

/**
 * Windows at work while every call to either copy may fail, hang or be half done, by a seeded chance; between
 * them one copy is lost whole, never both before a quiet opening. Nothing said to be kept may be missing.
 */
it.each([...Array.from({ length: 60 }, (_, seed) => seed), 437, 640, 958])(
  'keeps its word whatever fails, seed %i',
  async (seed) => {
    const random = makeRandom(seed);
    const texts = new Map<string, string>();
    let disk = createMemoryStore();
    const kept = new Set<EventId>();
    let count = 0;
    for (let session = 0; session < 8; session++) {
      const store = withSecondCopy(faultyStore(disk, random), {
        drawer: faultyDrawer(texts, random),
        session: `window${session}`,
      });
      await store.eventsOf(classId('room'));
      for (let acts = random.below(30); acts > 0; acts--) {
        const events = Array.from({ length: 1 + random.below(3) }, () => note(`e${count++}`));
        if ('kept' in (await store.append(events))) for (const { id } of events) kept.add(id);
        if (random.below(8) === 0) await store.eventsOf(classId('room'));
      }
      if (random.below(3) > 0) await store.close();
      const quiet = withSecondCopy(disk, { drawer: drawerOf(texts), session: `quiet${session}` });
      const read = await quiet.eventsOf(classId('room'));
      const found = new Set('events' in read ? read.events.map(({ id }) => id) : []);
      expect([...kept].filter((id) => !found.has(id))).toEqual([]);
      await quiet.close();
      const lost = random.below(3);
      if (lost === 0) disk = createMemoryStore();
      if (lost === 1) texts.clear();
    }
    expect(kept.size).toBeGreaterThan(0);
  },
);

function note(id: string): LogEvent {
  return {
    id: eventId(id),
    classId: classId('room'),
    at: 1,
    by: 'desk',
    kind: 'noted',
    body: { text: `„${id}“` },
  };
}

function drawerOf(texts: Map<string, string>): Drawer {
  return {
    names: async () => [...texts.keys()],
    read: async (name) => texts.get(name) ?? '',
    add: async (name, line) => void texts.set(name, `${texts.get(name) ?? ''}\n${line}`),
    remove: async (name) => void texts.delete(name),
  };
}

/** One call in four fails: at once, after a while, or when it was half done. */
function faultyDrawer(texts: Map<string, string>, random: Random): Drawer {
  const sound = drawerOf(texts);
  const unless = async <Value>(work: () => Promise<Value>, half = () => {}): Promise<Value> => {
    const fault = random.below(12);
    if (fault === 0) throw new Error('fails');
    if (fault === 1) await new Promise((resolve) => setTimeout(resolve, 3));
    if (fault === 1) throw new Error('hung');
    if (fault === 2) {
      half();
      throw new Error('half done');
    }
    return work();
  };
  return {
    names: () => unless(sound.names),
    read: (name) => unless(() => sound.read(name)),
    add: (name, line) =>
      unless(
        () => sound.add(name, line),
        () => void sound.add(name, line.slice(0, random.below(line.length))),
      ),
    remove: (name) => unless(() => sound.remove(name)),
  };
}

/** One call in six fails; an append that failed may have been done all the same. */
function faultyStore(store: EventStore, random: Random): EventStore {
  const isFaulty = (): boolean => random.below(6) === 0;
  return {
    ...store,
    async append(events) {
      if (!isFaulty()) return store.append(events);
      if (random.below(2) === 0) await store.append(events);
      return failureOf('broken');
    },
    eventsOf: async (classId) => (isFaulty() ? failureOf('slow') : store.eventsOf(classId)),
    classes: async () => (isFaulty() ? failureOf('slow') : store.classes()),
  };
}

import fc from 'fast-check';
import { type ClassId, classId, eventId } from '../core/ids.ts';
import type { LogEvent } from '../core/log/event.ts';
import type { EventStore } from '../core/log/event-store.ts';
import { mergeEvents } from '../core/log/merge.ts';
import { replay } from '../core/log/replay.ts';
import { arbitraryEvents } from './arbitrary-events.ts';

/** A law of event stores; `check` is given an empty one and rejects, saying how, when it is broken. */
export interface StoreLaw {
  readonly name: string;
  readonly check: (store: EventStore) => Promise<void>;
}

const [room, other, a] = [classId('class'), classId('other'), classId('room a')];

/** What every event store must do. Uses nothing but the store, so that it runs in a browser as well. */
export const STORE_LAWS: readonly StoreLaw[] = [
  {
    name: 'gives back what was appended, event for event',
    async check(store) {
      const events = [
        note('a', {
          text: 'ă – “short a” \u2028 \u0000 \ud83d\ude80',
          deep: [{ list: [null, 1.5] }],
        }),
        { ...note('b', {}), kind: 'of a newer version' },
      ];
      await keep(store, events);
      await holds(store, room, events);
    },
  },
  {
    name: 'has no events of a class never heard of',
    check: (store) => holds(store, classId('nobody'), []),
  },
  {
    name: 'leaves an event as it is when it comes again, even otherwise',
    async check(store) {
      await keep(store, [note('a', { text: 'first' }), note('a', { text: 'in one batch' })]);
      await keep(store, [note('a', { text: 'again' }), note('b', {})]);
      await holds(store, room, [note('a', { text: 'first' }), note('b', {})]);
    },
  },
  {
    name: 'appends all of several events or none',
    async check(store) {
      const outcome = await store.append([note('a', {}), note('b', { cannot: () => 'be kept' })]);
      if (!('error' in outcome)) throw new Error('A function was said to be kept.');
      await holds(store, room, []);
      await keep(store, [note('c', {})]);
      await holds(store, room, [note('c', {})]);
    },
  },
  {
    name: 'keeps what was handed over, not what became of it since',
    async check(store) {
      const body = { text: 'now' };
      const kept = store.append([note('a', body)]);
      await kept;
      body.text = 'later';
      await holds(store, room, [note('a', { text: 'now' })]);
    },
  },
  {
    name: 'holds each event once, however few and many are mixed',
    async check(store) {
      const events = Array.from({ length: 9000 }, (_, n) => note(`n${n}`, { n }));
      await keep(store, events.slice(0, 20));
      await keep(store, events.slice(10, 6000));
      await keep(store, events.slice(5990, 6010));
      await holds(store, room, events.slice(0, 6010));
      await keep(store, events);
      await holds(store, room, events);
    },
  },
  {
    name: 'holds each event once while loose ones gather and are read in between',
    async check(store) {
      const events = Array.from({ length: 1500 }, (_, n) => note(`n${n}`, { n }));
      for (let from = 0; from < events.length; from += 300) {
        await keep(store, events.slice(Math.max(0, from - 50), from + 300));
        await store.eventsOf(room);
      }
      await holds(store, room, events);
      await keep(store, events.slice(0, 3));
      await holds(store, room, events);
    },
  },
  {
    name: 'keeps all of many appends at once',
    async check(store) {
      const events = Array.from({ length: 60 }, (_, n) => note(`n${n}`, { n }));
      await Promise.all(events.map((event) => keep(store, [event])));
      await holds(store, room, events);
    },
  },
  {
    name: 'holds apart what is of several classes, and lists them',
    async check(store) {
      const rooms = ['b', 'a', 'a\u0000', ''].map((id) => classId(`room ${id}`));
      await keep(
        store,
        rooms.flatMap((id, n) => [named(id, `Room ${n}`), { ...note(`n${n}`, {}), classId: id }]),
      );
      const listed = await store.classes();
      if (!('classes' in listed)) throw new Error(listed.error.code);
      same(
        listed.classes.map(({ classId, events }) => [classId, replay(classId, events).name]),
        [classId('room '), a, classId('room a\u0000'), classId('room b')].map((id) => [
          id,
          `Room ${rooms.indexOf(id)}`,
        ]),
      );
      await holds(store, a, [named(a, 'Room 1'), { ...note('n1', {}), classId: a }]);
    },
  },
  {
    name: 'lists a class by its name as it is after undoing',
    async check(store) {
      const undone = { ...note('u', { event: 'name of class' }), at: 9, kind: 'undone' };
      await keep(store, [named(room, 'Oops'), undone]);
      await keep(
        store,
        Array.from({ length: 700 }, (_, n) => note(`n${n}`, { n })),
      );
      const listed = await store.classes();
      if (!('classes' in listed)) throw new Error(listed.error.code);
      same(
        listed.classes.map(({ events }) => replay(room, events).name),
        [''],
      );
    },
  },
  {
    name: 'forgets a class wholly and no other',
    async check(store) {
      const many = Array.from({ length: 700 }, (_, n) => note(`n${n}`, { n }));
      await keep(store, [...many, named(room, 'Room 1'), named(other, 'Room 2')]);
      await keep(store, [note('loose', {})]);
      const outcome = await store.forget(room);
      if ('error' in outcome) throw new Error(outcome.error.code);
      await holds(store, room, []);
      await holds(store, other, [named(other, 'Room 2')]);
      const listed = await store.classes();
      same('classes' in listed && listed.classes.map(({ classId }) => classId), ['other']);
    },
  },
  {
    name: 'keeps nothing of a forgotten class, until it is called back',
    async check(store) {
      await keep(store, [note('a', {}), named(other, 'Room 2')]);
      await store.forget(room);
      for (const batch of [[note('b', {})], [named(other, 'Room 3'), note('c', {})]]) {
        const outcome = await store.append(batch);
        same('error' in outcome && outcome.error.code, 'forgotten');
      }
      await holds(store, room, []);
      await holds(store, other, [named(other, 'Room 2')]);
      same(await forgottenIn(store), ['class']);
      await store.recall(room);
      await keep(store, [note('d', {})]);
      await holds(store, room, [note('d', {})]);
      same(await forgottenIn(store), []);
    },
  },
  {
    name: 'removes for good what was said of a child, and brings none of it back',
    async check(store) {
      const child = (id: string, field: string, value: unknown, n = 0): LogEvent => ({
        ...note(`${id} ${field} ${n}`, { of: 'child', id, field, value }),
        kind: 'set',
      });
      const mark = { ...note('mark', { child: 'r', cards: ['a=AE'] }), kind: 'marked' };
      const heard = { ...note('heard', { mark: 'mark', field: 'heard' }), kind: 'amended' };
      const gone = [child('r', 'name', 'Robin'), mark, heard];
      const many = Array.from({ length: 700 }, (_, n) => note(`n${n}`, { n }));
      const stay = [...many, child('s', 'name', 'Sam'), named(room, 'Room 1')];
      await keep(store, [...gone, ...stay]);
      await keep(store, [note('loose', {}), child('r', 'name', 'R. B.', 1)]);
      const outcome = await store.remove(room, ['r']);
      if ('error' in outcome) throw new Error(outcome.error.code);
      await holds(store, room, [...stay, note('loose', {})]);
      // From an old file, from another device that was away, and said of that again.
      const away = { ...note('away', { child: 'r', day: '2026-03-02' }), kind: 'away' };
      await keep(store, [...gone, child('r', 'name', 'Robin', 2), away, note('late', {})]);
      await keep(store, [{ ...note('undone', { event: 'away' }), kind: 'undone' }]);
      await holds(store, room, [...stay, note('loose', {}), note('late', {})]);
    },
  },
  {
    name: 'holds what merging gives, for any logs in any batches',
    async check(store) {
      let run = 0;
      const batches = fc.infiniteStream(fc.nat(6));
      await fc.assert(
        fc.asyncProperty(arbitraryEvents(), batches, async (log, sizes) => {
          const id = classId(`class ${run++}`);
          const events = log.map((event) => ({ ...event, classId: id }));
          let from = 0;
          for (const size of sizes.take(8)) {
            await keep(store, events.slice(Math.max(0, from - 2), from + size));
            from += size;
          }
          await holds(store, id, mergeEvents(events.slice(0, from), []));
        }),
        { numRuns: 30 },
      );
    },
  },
];

function note(id: string, body: unknown): LogEvent {
  return { id: eventId(id), classId: room, at: 5, by: 'desk', kind: 'noted', body };
}

function named(id: ClassId, value: string): LogEvent {
  const body = { of: 'class', id, field: 'name', value };
  return { id: eventId(`name of ${id}`), classId: id, at: 1, by: 'desk', kind: 'set', body };
}

async function keep(store: EventStore, events: readonly LogEvent[]): Promise<void> {
  const outcome = await store.append(events);
  if ('error' in outcome) throw new Error(`Not kept: ${outcome.error.code}`);
}

async function forgottenIn(store: EventStore): Promise<readonly string[]> {
  const listed = await store.classes();
  return 'classes' in listed ? listed.forgotten : [listed.error.code];
}

async function holds(store: EventStore, id: ClassId, events: readonly LogEvent[]): Promise<void> {
  const read = await store.eventsOf(id);
  if ('error' in read) throw new Error(`Not read: ${read.error.code}`);
  same(sorted(read.events), sorted(events));
}

function sorted(events: readonly LogEvent[]): readonly unknown[] {
  return [...events]
    .sort((left, right) => (left.id < right.id ? -1 : 1))
    .map(({ id, classId, at, by, kind, body }) => ({ id, classId, at, by, kind, body }));
}

function same(found: unknown, expected: unknown): void {
  const [left, right] = [JSON.stringify(found), JSON.stringify(expected)];
  if (left !== right) {
    throw new Error(`Found ${left?.slice(0, 500)}; expected ${right?.slice(0, 500)}`);
  }
}

import type { IDBPDatabase } from 'idb';
import type { ClassId, EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type {
  ClassesRead,
  EventStore,
  Origin,
  StoreFailure,
} from '../../../core/log/event-store.ts';
import { isEvent } from '../../../core/log/parse-event.ts';
import {
  type Change,
  CLASS_STORES,
  type Connection,
  change,
  connect,
  type LogSchema,
  ofClass,
  STORES,
} from './database.ts';
import { readClass, setAside } from './read-class.ts';
import { leftOf, removeEvents } from './remove-events.ts';
import { addEvents, SEAL_FROM, sealLoose } from './sealing.ts';
import { failureOf, storeFailure } from './store-error.ts';

/**
 * Events kept in the browser's IndexedDB; `name` is the database's, where no connection to it is given.
 *
 * Problem: an append must be on the disk within a few milliseconds, and a
 * class of 60,000 events must open within 300. Method: an event is first a
 * record of its own, in a strict transaction; when many have gathered, they
 * are sealed into pages of a thousand, in one transaction that adds them
 * there and takes the records away. Read as records, 60,000 events take two seconds; as
 * pages, several times as fast. The alternative, keeping the class as
 * last seen beside the events, would be a second truth.
 */
export function createIndexedStore(name?: string, connection = connect(name)): EventStore {
  let tidying: Promise<unknown> = Promise.resolve();
  const tidy = (work: () => Promise<unknown>) => tidying.then(work).catch(() => {});
  return {
    append: (events, origin = 'here') =>
      answer(connection, async (db) => {
        await change(db, async (tx) => {
          // All that can be asked at once is, since each question costs a way to the database and back.
          const asked = [...byClass(events)].map(([classId, all]) =>
            Promise.all([
              tx.objectStore('forgotten').getKey([classId]),
              tx.objectStore('shared').getKey([classId]),
              leftOf(tx, classId, all).then(async (own) => ({
                own,
                fresh: await addEvents(tx, classId, own),
              })),
            ]),
          );
          const found = await Promise.all(asked);
          if (found.some(([forgotten]) => forgotten !== undefined)) throw new Forgotten();
          for (const [, shared, { own, fresh }] of found) {
            if (shared !== undefined) await noteForSending(tx, shared[0], fresh, own, origin);
          }
        });
        return kept;
      }),
    eventsOf: (classId) =>
      answer(connection, async (db) => {
        const { events, loose, repeats, bad, damaged } = await readClass(db, classId);
        if (bad.length > 0) tidying = tidy(() => setAside(db, classId, bad));
        if (loose >= SEAL_FROM) tidying = tidy(() => sealLoose(db, classId, repeats));
        const erased = new Set(
          (await db.getAllKeys('erased', ofClass(classId))).map(([, id]) => id),
        );
        return { events, damaged, erased };
      }),
    classes: () => answer(connection, readHeads),
    forget: (classId) =>
      answer(connection, async (db) => {
        await change(db, (tx) =>
          Promise.all([
            ...CLASS_STORES.map((store) => tx.objectStore(store).delete(ofClass(classId))),
            tx.objectStore('outbox').delete(ofClass(classId)),
            tx.objectStore('shared').delete([classId]),
            tx.objectStore('forgotten').put({ classId }),
            forgetAside(tx, classId),
          ]),
        );
        return kept;
      }),
    remove: (classId, ids) =>
      answer(connection, async (db) => {
        // What is being moved onto pages meanwhile is on one then.
        await tidying;
        await change(db, (tx) => removeEvents(tx, classId, ids));
        return kept;
      }),
    recall: (classId) =>
      answer(connection, async (db) => {
        await change(db, (tx) => tx.objectStore('forgotten').delete([classId]));
        return kept;
      }),
    async close() {
      await tidying;
      await connection.close();
    },
  };
}

/** Throws away what was set aside of a class; what could not even be told to be of a class stays. */
async function forgetAside(tx: Change, classId: ClassId): Promise<void> {
  let cursor = await tx.objectStore('aside').openCursor();
  while (cursor) {
    const { value } = cursor;
    if (value.classId === classId) await cursor.delete();
    cursor = await cursor.continue();
  }
}

/** Does something with the database; whatever is thrown becomes a failure with a code. */
async function answer<Value>(
  connection: Connection,
  ask: (db: IDBPDatabase<LogSchema>) => Promise<Value>,
): Promise<Value | StoreFailure> {
  try {
    return await ask(await connection.open());
  } catch (thrown) {
    return thrown instanceof Forgotten ? failureOf('forgotten') : storeFailure(thrown);
  }
}

/** Thrown so that nothing of the transaction is kept: one of the classes was forgotten. */
class Forgotten extends Error {}

const kept = { kept: true } as const;

/** Every class, found by leaping from each to the first record of the next. */
async function readHeads(db: IDBPDatabase<LogSchema>): Promise<ClassesRead> {
  const tx = db.transaction([...STORES]);
  const ids = new Set<ClassId>();
  for (const store of ['loose', 'pages'] as const) {
    let cursor = await tx.objectStore(store).openKeyCursor();
    while (cursor) {
      const [classId] = cursor.key;
      ids.add(classId);
      cursor = await cursor.continue([classId, []] as never);
    }
  }
  const heads = (await tx.objectStore('heads').getAll()).filter(isEvent);
  const forgotten = await tx.objectStore('forgotten').getAll();
  return {
    classes: [...ids].sort().map((classId) => ({
      classId,
      events: heads.filter((event) => event.classId === classId),
    })),
    forgotten: forgotten.map(({ classId }) => classId).sort(),
  };
}

/** Of a shared class: what is new here is to be sent, and what came from afar is not. */
async function noteForSending(
  tx: Change,
  classId: ClassId,
  fresh: readonly LogEvent[],
  all: readonly LogEvent[],
  origin: Origin,
): Promise<void> {
  const outbox = tx.objectStore('outbox');
  await Promise.all(
    origin === 'here'
      ? fresh.map(({ id }) => outbox.put({ classId, id, why: null }))
      : all.map(({ id }) => outbox.delete([classId, id])),
  );
}

/** Events by class, each id once: of two with one id, the first. */
function byClass(events: readonly LogEvent[]): ReadonlyMap<ClassId, readonly LogEvent[]> {
  const classes = new Map<ClassId, Map<EventId, LogEvent>>();
  for (const event of events) {
    const own = classes.get(event.classId) ?? new Map<EventId, LogEvent>();
    classes.set(event.classId, own);
    if (!own.has(event.id)) own.set(event.id, event);
  }
  return new Map([...classes].map(([classId, own]) => [classId, [...own.values()]]));
}

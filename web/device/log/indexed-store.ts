import type { IDBPDatabase } from 'idb';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, StoreFailure } from '../../../core/log/event-store.ts';
import { type Connection, change, connect, type LogSchema, ofClass, STORES } from './database.ts';
import { addEvents, eventsOn, SEAL_FROM, sealLoose } from './sealing.ts';
import { storeFailure } from './store-error.ts';

/**
 * Events kept in the browser's IndexedDB; `name` is the database's.
 *
 * Problem: an append must be on the disk within a few milliseconds, and a
 * class of 60,000 events must open within 300. Method: an event is first a
 * record of its own, in a strict transaction; when many have gathered, they
 * are sealed into pages of a thousand, in one transaction that adds them
 * there and takes the records away. Read as records, 60,000 events take two seconds; as
 * pages, several times as fast. The alternative, keeping the class as
 * last seen beside the events, would be a second truth.
 */
export function createIndexedStore(name = 'sweepline-log'): EventStore {
  const connection = connect(name);
  let sealing: Promise<unknown> = Promise.resolve();
  return {
    append: (events) =>
      answer(connection, async (db) => {
        await change(db, async (tx) => {
          for (const [classId, own] of byClass(events)) await addEvents(tx, classId, own);
        });
        return { kept: true } as const;
      }),
    eventsOf: (classId) =>
      answer(connection, async (db) => {
        const { events, loose, repeats } = await readClass(db, classId);
        if (loose >= SEAL_FROM) {
          sealing = sealing.then(() => sealLoose(db, classId, repeats)).catch(() => {});
        }
        return { events };
      }),
    classes: () => answer(connection, async (db) => ({ classes: await readHeads(db) })),
    forget: (classId) =>
      answer(connection, async (db) => {
        await change(db, (tx) =>
          Promise.all(STORES.map((store) => tx.objectStore(store).delete(ofClass(classId)))),
        );
        return { kept: true } as const;
      }),
    async close() {
      await sealing;
      await connection.close();
    },
  };
}

/** Does something with the database; whatever is thrown becomes a failure with a code. */
async function answer<Value>(
  connection: Connection,
  ask: (db: IDBPDatabase<LogSchema>) => Promise<Value>,
): Promise<Value | StoreFailure> {
  try {
    return await ask(await connection.open());
  } catch (thrown) {
    return storeFailure(thrown);
  }
}

/** All events of a class, how many of them are loose, and which loose ones are on a page besides. */
async function readClass(db: IDBPDatabase<LogSchema>, classId: string) {
  const tx = db.transaction(['pages', 'loose']);
  const [pages, loose] = await Promise.all([
    tx.objectStore('pages').getAll(ofClass(classId)),
    tx.objectStore('loose').getAll(ofClass(classId)),
  ]);
  const sealed = eventsOn(pages);
  const byId = new Map(loose.map((event) => [event.id, event]));
  const repeats = new Set(sealed.filter(({ id }) => byId.has(id)).map(({ id }) => id));
  const events = [...sealed, ...loose.filter(({ id }) => !repeats.has(id))];
  return { events, loose: loose.length, repeats };
}

/** Every class, found by leaping from each to the first record of the next. */
async function readHeads(db: IDBPDatabase<LogSchema>) {
  const tx = db.transaction([...STORES]);
  const ids = new Set<string>();
  for (const store of ['loose', 'pages'] as const) {
    let cursor = await tx.objectStore(store).openKeyCursor();
    while (cursor) {
      const [classId] = cursor.key;
      ids.add(classId);
      cursor = await cursor.continue([classId, []] as never);
    }
  }
  const heads = await tx.objectStore('heads').getAll();
  return [...ids].sort().map((classId) => ({
    classId,
    events: heads.filter((event) => event.classId === classId),
  }));
}

/** Events by class, each id once: of two with one id, the first. */
function byClass(events: readonly LogEvent[]): ReadonlyMap<string, readonly LogEvent[]> {
  const classes = new Map<string, Map<string, LogEvent>>();
  for (const event of events) {
    const own = classes.get(event.classId) ?? new Map<string, LogEvent>();
    classes.set(event.classId, own);
    if (!own.has(event.id)) own.set(event.id, event);
  }
  return new Map([...classes].map(([classId, own]) => [classId, [...own.values()]]));
}

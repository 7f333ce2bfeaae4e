import type { IDBPDatabase } from 'idb';
import type { ClassId, EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { change, type LogSchema, ofClass } from './database.ts';
import { eventOf } from './loose-record.ts';
import { readPage } from './page.ts';
import { addEvents } from './sealing.ts';

/** A class as the database has it. */
export interface ClassRecords {
  readonly events: readonly LogEvent[];
  /** How many of them are records of their own. */
  readonly loose: number;
  /** Those that are on a page besides, by id. */
  readonly repeats: ReadonlySet<EventId>;
  /** The keys of what could not be read. */
  readonly bad: readonly BadRecord[];
  /** How many records could not be read. */
  readonly damaged: number;
}

/** Where a record stands that could not be read. */
export interface BadRecord {
  readonly store: 'loose' | 'pages';
  readonly key: IDBValidKey;
}

/** All events of a class. What cannot be read is left out and told, page by page and record by record. */
export async function readClass(
  db: IDBPDatabase<LogSchema>,
  classId: ClassId,
): Promise<ClassRecords> {
  const { pages, loose } = await fetchClass(db, classId);
  const bad: BadRecord[] = [...pages.bad, ...loose.bad];
  let damaged = bad.length;
  const sealed: LogEvent[] = [];
  for (const { classId: of, page, text } of pages.records) {
    const read = readPage(of, text);
    for (const event of read.events) sealed.push(event);
    if (read.damaged === 0) continue;
    damaged += read.damaged;
    bad.push({ store: 'pages', key: [of, page] });
  }
  const byId = new Map<EventId, LogEvent>();
  for (const record of loose.records) {
    const event = eventOf(record);
    if (event) byId.set(event.id, event);
    else {
      damaged += 1;
      bad.push({ store: 'loose', key: [record.classId, record.id] });
    }
  }
  const repeats = new Set<EventId>();
  for (const { id } of sealed) if (byId.has(id)) repeats.add(id);
  const events = sealed;
  for (const event of byId.values()) if (!repeats.has(event.id)) events.push(event);
  return { events, loose: loose.records.length, repeats, bad, damaged };
}

/**
 * Moves what could not be read out of the way, and keeps the good events of a damaged page. What cannot
 * even be fetched is only taken away.
 */
export function setAside(
  db: IDBPDatabase<LogSchema>,
  classId: ClassId,
  bad: readonly BadRecord[],
): Promise<void> {
  return change(db, async (tx) => {
    for (const { store, key } of bad) {
      const records = tx.objectStore(store);
      const record = await records.get(key as never);
      if (record === undefined) continue;
      await tx.objectStore('aside').add({ classId, record });
      await records.delete(key as never);
      if ('text' in record) await addEvents(tx, classId, readPage(classId, record.text).events);
    }
  });
}

/** The records of a class: all at once, or one by one where that fails. */
async function fetchClass(db: IDBPDatabase<LogSchema>, classId: ClassId) {
  const tx = db.transaction(['pages', 'loose']);
  const range = ofClass(classId);
  try {
    const [pages, loose] = await Promise.all([
      tx.objectStore('pages').getAll(range),
      tx.objectStore('loose').getAll(range),
    ]);
    return { pages: { records: pages, bad: [] }, loose: { records: loose, bad: [] } };
  } catch {
    // Loose ones first: those that are sealed meanwhile are on a page then.
    const loose = await fetchEach(db, 'loose', range);
    return { loose, pages: await fetchEach(db, 'pages', range) };
  }
}

async function fetchEach<Store extends 'loose' | 'pages'>(
  db: IDBPDatabase<LogSchema>,
  store: Store,
  range: IDBKeyRange,
) {
  const records: LogSchema[Store]['value'][] = [];
  const bad: BadRecord[] = [];
  for (const key of await db.getAllKeys(store, range)) {
    const record = await db.get(store, key).catch(() => null);
    if (record) records.push(record);
    else if (record === null) bad.push({ store, key });
  }
  return { records, bad };
}

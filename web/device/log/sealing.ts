import { type IDBPDatabase, unwrap } from 'idb';
import type { ClassId, EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { isOfHead } from '../../../core/log/event-store.ts';
import { type Change, change, type LogSchema, ofClass, type PageRecord } from './database.ts';
import { eventOf, looseRecord } from './loose-record.ts';
import { encodePage, readPage } from './page.ts';

/** From so many on, events are sealed into pages; reading a loose one costs about 35 µs. */
export const SEAL_FROM = 512;

/**
 * Events on a full page, about 64 KB. Many small pages are slow to fetch and large ones slow to parse:
 * of 512, 1024, 2048, 4096 and 8192 this was the fastest in Chromium 156.
 */
const pageSize = 1024;

/** Adds events of one class that may be there already: few as records, many as pages; gives those it added. */
export async function addEvents(
  tx: Change,
  classId: ClassId,
  events: readonly LogEvent[],
): Promise<readonly LogEvent[]> {
  return events.length < SEAL_FROM ? addLoose(tx, events) : addSealed(tx, classId, events);
}

async function addLoose(tx: Change, events: readonly LogEvent[]): Promise<readonly LogEvent[]> {
  const loose = unwrap(tx.objectStore('loose'));
  const isNew = await Promise.all(
    events.map(async (event) => isAdded(loose.add(looseRecord(event)))),
  );
  const fresh = events.filter((_, place) => isNew[place]);
  await addHeads(tx, fresh);
  return fresh;
}

async function addSealed(
  tx: Change,
  classId: ClassId,
  events: readonly LogEvent[],
): Promise<readonly LogEvent[]> {
  const loose = tx.objectStore('loose');
  const [pages, keys] = await Promise.all([
    tx.objectStore('pages').getAll(ofClass(classId)),
    Promise.all(events.map(({ id }) => loose.getKey([classId, id]))),
  ]);
  const sealed = new Set(eventsOn(pages).map(({ id }) => id));
  const fresh = events.filter(({ id }, place) => keys[place] === undefined && !sealed.has(id));
  await Promise.all([addHeads(tx, fresh), ...putPages(tx, classId, pages.at(-1), fresh)]);
  return fresh;
}

async function addHeads(tx: Change, fresh: readonly LogEvent[]): Promise<void> {
  const heads = unwrap(tx.objectStore('heads'));
  await Promise.all(fresh.filter(isOfHead).map(async (event) => isAdded(heads.add(event))));
}

/** Whether a record was added; where there is one by its key already, that one stays, and nothing else is hurt. */
function isAdded(request: IDBRequest): Promise<boolean> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(true);
    request.onerror = (event) => {
      if (request.error?.name !== 'ConstraintError') {
        reject(request.error);
        return;
      }
      event.preventDefault();
      event.stopPropagation();
      resolve(false);
    };
  });
}

/**
 * Moves the loose events of a class onto pages, all or none. `repeats` are
 * known to be on a page already and are only taken away.
 */
export function sealLoose(
  db: IDBPDatabase<LogSchema>,
  classId: ClassId,
  repeats: ReadonlySet<EventId>,
): Promise<void> {
  return change(db, async (tx) => {
    const loose = tx.objectStore('loose');
    const range = ofClass(classId);
    const last = await tx.objectStore('pages').openCursor(range, 'prev');
    const records = await loose.getAll(range);
    const events = records.map(eventOf).filter((event) => event !== null);
    const fresh = events.filter(({ id }) => !repeats.has(id));
    // One that cannot be read stays where it is until it is set aside.
    const gone =
      events.length === records.length
        ? [loose.delete(range)]
        : events.map(({ id }) => loose.delete([classId, id]));
    await Promise.all([...putPages(tx, classId, last?.value, fresh), ...gone]);
  });
}

/** All events on pages of one class that can be read. */
function eventsOn(pages: readonly PageRecord[]): readonly LogEvent[] {
  return pages.flatMap(({ classId, text }) => readPage(classId, text).events);
}

/** Fills up the last page, then new ones. */
function putPages(
  tx: Change,
  classId: ClassId,
  last: PageRecord | undefined,
  events: readonly LogEvent[],
): readonly Promise<unknown>[] {
  if (events.length === 0) return [];
  const { events: begun, damaged } = last
    ? readPage(classId, last.text)
    : { events: [], damaged: 0 };
  const isFull = damaged > 0 || begun.length >= pageSize;
  const all = isFull ? events : [...begun, ...events];
  const first = last === undefined ? 0 : last.page + Number(isFull);
  return Array.from({ length: Math.ceil(all.length / pageSize) }, (_, place) =>
    tx.objectStore('pages').put({
      classId,
      page: first + place,
      text: encodePage(all.slice(place * pageSize, (place + 1) * pageSize)),
    }),
  );
}

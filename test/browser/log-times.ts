import { classId, eventId } from '../../core/ids.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { replay } from '../../core/log/replay.ts';
import { createDeviceStore, openClass } from '../../web/device/log/device-log.ts';
import { createFileDrawer } from '../../web/device/log/file-drawer.ts';
import { createIndexedStore } from '../../web/device/log/indexed-store.ts';
import { encodePage } from '../../web/device/log/page.ts';
import { classYear } from '../class-year.ts';

/**
 * Keeps a class of so many events in both copies, most of it brought in at once as from a file, the last days
 * bit by bit. The next opening, in another page, puts the second copy in order for all that come later.
 */
export async function keepClassYear(size: number): Promise<void> {
  const store = createDeviceStore();
  const events = classYear(classId('class'), size);
  await store.append(events.slice(0, -400));
  for (let from = size - 400; from < size; from += 40) {
    await store.append(events.slice(from, from + 40));
  }
  await store.close();
}

/** Milliseconds until the class is open as the app opens it, its second copy looked at. */
export async function timeOpeningBoth(): Promise<number> {
  const started = performance.now();
  const store = createDeviceStore();
  const { state, close } = await openClass(store, classId('class'));
  const took = performance.now() - started;
  if (state.value.drills.size === 0) throw new Error('The class is not whole.');
  close();
  await store.close();
  return took;
}

/**
 * Milliseconds to open that class from nothing, and of these to read it and to
 * replay it; `parse` is the yardstick: as many events from one JSON text in memory.
 */
export async function timeOpening(
  size: number,
): Promise<Readonly<Record<'open' | 'read' | 'parse', number>>> {
  const started = performance.now();
  const store = createIndexedStore();
  const answer = await store.eventsOf(classId('class'));
  const events = 'events' in answer ? answer.events : [];
  const read = performance.now() - started;
  const state = replay(classId('class'), events);
  const open = performance.now() - started;
  if (events.length !== size || state.drills.size === 0) throw new Error('The class is not whole.');
  const text = JSON.stringify(events);
  const again = performance.now();
  JSON.parse(text);
  return { open, read, parse: performance.now() - again };
}

/**
 * Milliseconds until a mark is committed, its second copy too, means of 20; `least` is the
 * yardstick: a number in a store without strictness. `strict` is that number with strictness, `alone` the mark
 * in the database alone, `file` its line in a file alone. All by turns, so that they meet the same moods of
 * the disk.
 */
export async function timeAppends(): Promise<readonly AppendTimes[]> {
  const store = createDeviceStore();
  await store.classes();
  const bare = createIndexedStore('bare');
  const drawer = createFileDrawer('bare');
  const db = await openYardstick();
  const put = (durability: IDBTransactionDurability) => (n: number) =>
    new Promise<void>((resolve) => {
      const tx = db.transaction('numbers', 'readwrite', { durability });
      tx.objectStore('numbers').put(n, n);
      tx.oncomplete = () => resolve();
    });
  const rows: AppendTimes[] = [];
  for (let batch = 0; batch < 15; batch++) {
    const mark = await each((n) => store.append([markOf(20 * batch + n)]));
    const least = await each(put('relaxed'));
    const strict = await each(put('strict'));
    const alone = await each((n) => bare.append([markOf(20 * batch + n)]));
    const file = await each((n) => drawer.add('sheet', encodePage([markOf(20 * batch + n)])));
    rows.push({ mark, least, strict, alone, file });
  }
  await bare.close();
  await store.close();
  return rows;
}

/** What a mark costs, and its parts. */
type AppendTimes = Readonly<Record<'mark' | 'least' | 'strict' | 'alone' | 'file', number>>;

/** Milliseconds that it takes once, of twenty in a row: the page's clock goes by tenths, which is too coarse for one. */
async function each(work: (n: number) => Promise<unknown>): Promise<number> {
  const started = performance.now();
  for (let n = 0; n < 20; n++) await work(n);
  return (performance.now() - started) / 20;
}

function markOf(n: number): LogEvent {
  const cards = ['sh=SH', 'a=AE', 'p=P'];
  const moment = { drillId: 'drill', part: 'blending', place: n };
  return {
    id: eventId(`mark ${n}`),
    classId: classId('class'),
    at: 2e12 + n,
    by: 'device-of-the-desk-1',
    kind: 'marked',
    body: { ...moment, cards, broke: 2, heard: null, child: null },
  };
}

function openYardstick(): Promise<IDBDatabase> {
  return new Promise((resolve) => {
    const opening = indexedDB.open('yardstick', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('numbers');
    opening.onsuccess = () => resolve(opening.result);
  });
}

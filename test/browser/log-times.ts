import { classId, eventId } from '../../core/ids.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { replay } from '../../core/log/replay.ts';
import { createDeviceStore } from '../../web/device/log/device-log.ts';
import { createIndexedStore } from '../../web/device/log/indexed-store.ts';
import { classYear } from '../class-year.ts';

/** Keeps a class of so many events, most of it brought in at once as from a file, the last days bit by bit. */
export async function keepClassYear(size: number): Promise<void> {
  const store = createIndexedStore();
  const events = classYear(classId('class'), size);
  await store.append(events.slice(0, -400));
  for (let from = size - 400; from < size; from += 40) {
    await store.append(events.slice(from, from + 40));
  }
  await store.close();
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
 * Milliseconds until a mark is committed, its second copy too, medians of 20; `least` is the
 * yardstick: a number in a store without strictness. The two by turns, so that
 * both meet the same moods of the disk.
 */
export async function timeAppends(): Promise<
  readonly Readonly<Record<'mark' | 'least', number>>[]
> {
  const store = createDeviceStore();
  await store.classes();
  const db = await openYardstick();
  const rows: { readonly mark: number; readonly least: number }[] = [];
  for (let batch = 0; batch < 15; batch++) {
    const mark = await median((n) => store.append([markOf(20 * batch + n)]));
    const least = await median(
      (n) =>
        new Promise<void>((resolve) => {
          const tx = db.transaction('numbers', 'readwrite', { durability: 'relaxed' });
          tx.objectStore('numbers').put(n, n);
          tx.oncomplete = () => resolve();
        }),
    );
    rows.push({ mark, least });
  }
  await store.close();
  return rows;
}

async function median(work: (n: number) => Promise<unknown>): Promise<number> {
  const times: number[] = [];
  for (let n = 0; n < 20; n++) {
    const started = performance.now();
    await work(n);
    times.push(performance.now() - started);
  }
  return times.sort((left, right) => left - right)[9] ?? 0;
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

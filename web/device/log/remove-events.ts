import type { ClassId } from '../../../core/ids.ts';
import { erasedWith, isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { type Change, ofClass } from './database.ts';
import { eventOf } from './loose-record.ts';
import { encodePage, readPage } from './page.ts';

/** What was removed of a class for good, by ids. */
async function erasedOf(tx: Change, classId: ClassId): Promise<ReadonlySet<string>> {
  const keys = await tx.objectStore('erased').getAllKeys(ofClass(classId));
  return new Set(keys.map(([, id]) => id));
}

/** Those of some events that were not removed; the ids of the others are noted. */
export async function leftOf(
  tx: Change,
  classId: ClassId,
  events: readonly LogEvent[],
): Promise<readonly LogEvent[]> {
  const before = await erasedOf(tx, classId);
  if (before.size === 0) return events;
  const erased = erasedWith(events, before);
  for (const id of erased) {
    if (!before.has(id)) await tx.objectStore('erased').put({ classId, id });
  }
  return events.filter((event) => !isErased(event, erased));
}

/**
 * Takes what these ids stand for out of every record of a class, and notes their ids. What was set aside and
 * names one of them goes whole.
 */
export async function removeEvents(
  tx: Change,
  classId: ClassId,
  ids: readonly string[],
): Promise<void> {
  const range = ofClass(classId);
  const [loose, pages, before] = await Promise.all([
    tx.objectStore('loose').getAll(range),
    tx.objectStore('pages').getAll(range),
    erasedOf(tx, classId),
  ]);
  const single = loose.map(eventOf).filter((event) => event !== null);
  const sealed = pages.map(({ page, text }) => ({ page, ...readPage(classId, text) }));
  const all = [...single, ...sealed.flatMap(({ events }) => events)];
  const erased = erasedWith(all, [...before, ...ids]);
  const asked: Promise<unknown>[] = [];
  for (const event of single) {
    if (isErased(event, erased)) asked.push(tx.objectStore('loose').delete([classId, event.id]));
  }
  for (const { page, events } of sealed) {
    const left = events.filter((event) => !isErased(event, erased));
    if (left.length === events.length) continue;
    const store = tx.objectStore('pages');
    if (left.length === 0) asked.push(store.delete([classId, page]));
    else asked.push(store.put({ classId, page, text: encodePage(left) }));
  }
  for (const { id } of all) {
    if (!erased.has(id)) continue;
    asked.push(tx.objectStore('heads').delete([classId, id]));
    asked.push(tx.objectStore('outbox').delete([classId, id]));
  }
  for (const id of erased) {
    if (!before.has(id)) asked.push(tx.objectStore('erased').put({ classId, id }));
  }
  await Promise.all(asked);
  await removeAside(tx, classId, erased);
}

async function removeAside(
  tx: Change,
  classId: ClassId,
  erased: ReadonlySet<string>,
): Promise<void> {
  let cursor = await tx.objectStore('aside').openCursor();
  while (cursor) {
    const { value } = cursor;
    const text = JSON.stringify(value) ?? '';
    if (value.classId === classId && [...erased].some((id) => text.includes(id))) {
      await cursor.delete();
    }
    cursor = await cursor.continue();
  }
}

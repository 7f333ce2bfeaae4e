import { makeLog, parseLog } from '../../../core/log/log-file.ts';
import type { Shelf } from '../shelf.ts';
import type { SpareStore } from './spare-store.ts';
import type { SteadyStore } from './steady-store.ts';

const NAME = 'on-the-way';

/**
 * What was recorded but is not yet on the disk when a page is left, or is held in memory alone: a page that
 * goes away takes it along. So it leaves those events on the shelf, which takes them at once, and
 * the next start hands them to the store again. Handing over twice changes nothing.
 */
export function leaveOnShelf(
  store: Pick<SteadyStore, 'unsaved'> & Pick<SpareStore, 'heldInMemory'>,
  shelf: Shelf,
): void {
  const events = [...store.heldInMemory(), ...store.unsaved.peek()];
  if (events.length === 0) return;
  const left = parseLog(shelf.read(NAME) ?? '');
  const before = 'events' in left ? left.events : [];
  shelf.write(NAME, makeLog([...before, ...events]));
}

/**
 * Hands the store what the last page left on the shelf. They count at once; the shelf holds them
 * until the store has them for good. Resolves when it has, or could not be brought to.
 */
export async function takeFromShelf(
  store: Pick<SteadyStore, 'append'> & Pick<SpareStore, 'inMemory'>,
  shelf: Shelf,
): Promise<void> {
  const text = shelf.read(NAME);
  if (text === null) return;
  const read = parseLog(text);
  if ('error' in read || read.damaged.length > 0) shelf.setAside(NAME, text);
  const events = 'events' in read ? read.events : [];
  const classIds = [...new Set(events.map(({ classId }) => classId))];
  // Each class by itself: of one that was deleted since, nothing is kept, and nothing stays here.
  const outcomes = await Promise.all(
    classIds.map((classId) => store.append(events.filter((event) => event.classId === classId))),
  );
  const isDone = outcomes.every((one) => 'kept' in one || one.error.code === 'forgotten');
  if (isDone && !store.inMemory.peek() && shelf.read(NAME) === text) shelf.remove(NAME);
}

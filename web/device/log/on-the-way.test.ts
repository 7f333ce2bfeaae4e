import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { classId, eventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import type { Shelf } from '../shelf.ts';
import { createMemoryStore } from './memory-store.ts';
import { leaveOnShelf, takeFromShelf } from './on-the-way.ts';
import { keepGoing } from './steady-store.ts';

function emptyShelf(): Shelf & { readonly held: Map<string, string> } {
  const held = new Map<string, string>();
  return {
    held,
    read: (name) => held.get(name) ?? null,
    write: (name, text) => held.set(name, text),
    remove: (name) => held.delete(name),
    setAside: (name, text) => held.set(`${name} aside`, text),
  };
}

const named = (id: string, name: string): LogEvent => ({
  id: eventId(id),
  classId: classId('room'),
  at: 1_800_000_000_000,
  by: 'desk',
  kind: 'set',
  body: { of: 'class', id: 'room', field: 'name', value: name },
});

const leaving = (shelf: Shelf, ...events: readonly LogEvent[]) =>
  leaveOnShelf({ unsaved: signal(events), heldInMemory: () => [] }, shelf);

/** A store as a page has it; `inMemory` when nothing that is given to it outlasts the page. */
const steady = (store: EventStore, inMemory = false) => ({
  ...keepGoing(store),
  inMemory: signal(inMemory),
});

async function idsIn(store: ReturnType<typeof keepGoing>): Promise<readonly string[]> {
  const read = await store.eventsOf(classId('room'));
  return 'events' in read ? read.events.map(({ id }) => id).sort() : [];
}

describe('what is not on the disk yet when a page is left', () => {
  it('is there for the next page at once, and the shelf is empty once it is kept', async () => {
    const shelf = emptyShelf();
    leaving(shelf, named('a', 'Room 4'), named('b', 'Room 5'));
    const store = steady(createMemoryStore());
    const taken = takeFromShelf(store, shelf);
    expect(store.unsaved.value.map(({ id }) => id)).toEqual(['a', 'b']);
    await taken;
    expect(await idsIn(store)).toEqual(['a', 'b']);
    expect(shelf.held.size).toBe(0);
  });

  it('is of every page that was left, and counts once though it was kept after all', async () => {
    const shelf = emptyShelf();
    leaving(shelf, named('a', 'Room 4'));
    leaving(shelf, named('b', 'Room 5'), named('a', 'Room 4'));
    const store = steady(createMemoryStore());
    await store.append([named('b', 'Room 5')]);
    await takeFromShelf(store, shelf);
    expect(await idsIn(store)).toEqual(['a', 'b']);
  });

  it('stays on the shelf for as long as the store refuses it', async () => {
    const shelf = emptyShelf();
    leaving(shelf, named('a', 'Room 4'));
    const error = { code: 'full', message: 'There is no more room.' } as const;
    const inMemory = signal(false);
    await takeFromShelf({ inMemory, append: async () => ({ error }) }, shelf);
    expect(shelf.held.size).toBe(1);
    await takeFromShelf({ inMemory, append: async () => ({ kept: true }) }, shelf);
    expect(shelf.held.size).toBe(0);
  });

  it('stays on the shelf while the page works from memory, with what was done there', async () => {
    const shelf = emptyShelf();
    leaving(shelf, named('a', 'Room 4'));
    await takeFromShelf(steady(createMemoryStore(), true), shelf);
    leaveOnShelf({ unsaved: signal([]), heldInMemory: () => [named('b', 'Room 5')] }, shelf);
    const store = steady(createMemoryStore());
    await takeFromShelf(store, shelf);
    expect(await idsIn(store)).toEqual(['a', 'b']);
    expect(shelf.held.size).toBe(0);
  });

  it('is put aside whole when a line of it cannot be read, and the good lines count', async () => {
    const shelf = emptyShelf();
    leaving(shelf, named('a', 'Room 4'), named('b', 'Room 5'));
    const left = shelf.held.get('on-the-way') as string;
    const cut = left.slice(0, left.indexOf('\n{"end"') - 20);
    shelf.write('on-the-way', cut);
    const store = steady(createMemoryStore());
    await takeFromShelf(store, shelf);
    expect(await idsIn(store)).toEqual(['a']);
    expect(shelf.held.get('on-the-way aside')).toBe(cut);
  });

  it('leaves nothing behind when all is kept', () => {
    const shelf = emptyShelf();
    leaving(shelf);
    expect(shelf.held.size).toBe(0);
  });

  it('is let go when its class was deleted meanwhile, and other classes are kept', async () => {
    const shelf = emptyShelf();
    leaving(shelf, named('a', 'Room 4'), {
      ...named(eventId('b'), 'Room 5'),
      classId: classId('hall'),
    });
    const memory = createMemoryStore();
    await memory.forget(classId('hall'));
    const store = steady(memory);
    await takeFromShelf(store, shelf);
    expect(await idsIn(store)).toEqual(['a']);
    expect(shelf.held.size).toBe(0);
    expect(store.unsaved.value).toEqual([]);
  });
});

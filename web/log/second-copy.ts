import type { LogEvent } from '../../core/log/event.ts';
import type { EventStore } from '../../core/log/event-store.ts';
import { decodePage, encodePage } from './page.ts';

/** Where texts are kept by name. It may lose some, and refuse: then its promises reject. */
export interface Drawer {
  names(): Promise<readonly string[]>;
  read(name: string): Promise<string | null>;
  write(name: string, text: string): Promise<void>;
  remove(name: string): Promise<void>;
}

/**
 * A store with a second copy of its events beside it, from which they come back.
 *
 * Problem: a browser that finds its own database damaged, as it may after it was
 * killed in the middle of writing, throws all of it away and begins an empty one.
 * Method: every event is written into a drawer at the same time, on sheets of
 * the window at work; when the store has no class at all and the
 * drawer has, the events are put back. Events are merged by their ids, so that
 * nothing is put back twice. What was kept last may have missed the drawer
 * all the same, so it begins the sheet of the next opening; when sheets
 * have become many, all events are written anew and the old sheets go.
 * Alternative: a second database, which the browser would throw away with the
 * first. A drawer that fails does no harm. `session` names this window.
 */
export function withSecondCopy(store: EventStore, drawer: Drawer, session: string): EventStore {
  const sheets = new Map<string, Sheet>();
  const begun = new Set<string>();
  let names = 0;
  let writing: Promise<unknown> = Promise.resolve();
  return {
    async append(events) {
      const classIds = new Set(events.map(({ classId }) => classId));
      const copied = Promise.all(
        [...classIds].map((classId) =>
          put(
            classId,
            events.filter((one) => one.classId === classId),
          ),
        ),
      );
      const outcome = await store.append(events);
      if ('error' in outcome) await takeOut(events);
      await copied;
      return outcome;
    },
    async eventsOf(classId) {
      let read = await store.eventsOf(classId);
      const isEmpty = 'events' in read && read.events.length === 0;
      if (isEmpty && (await putBack(await store.classes()))) read = await store.eventsOf(classId);
      if ('events' in read && read.events.length > 0) begin(classId, read.events);
      return read;
    },
    async classes() {
      const read = await store.classes();
      return (await putBack(read)) ? store.classes() : read;
    },
    async forget(classId) {
      const outcome = await store.forget(classId);
      if ('error' in outcome) return outcome;
      sheets.delete(classId);
      await afterwards(async () => removeAll(await sheetsOf(classId)));
      return outcome;
    },
    async close() {
      await writing;
      await store.close();
    },
  };

  /** Does something with the drawer once all before is done; never rejects. */
  function afterwards(work: () => Promise<unknown>): Promise<unknown> {
    writing = writing.then(work).catch(() => {});
    return writing;
  }

  /**
   * Puts events on the sheet of their class; resolves once they are there, or cannot be. Several that
   * come while the drawer is busy are written once.
   */
  function put(classId: string, events: readonly LogEvent[]): Promise<unknown> {
    let sheet = sheets.get(classId);
    if (!sheet || sheet.events.length >= FULL) {
      sheet = { name: newName(classId), events: [], due: null };
      sheets.set(classId, sheet);
    }
    const own = sheet;
    own.events = own.events.concat(events);
    own.due ??= afterwards(() => {
      own.due = null;
      return drawer.write(own.name, encodePage(own.events));
    });
    return own.due;
  }

  /** Takes events that could not be kept from the sheets again. */
  function takeOut(events: readonly LogEvent[]): Promise<unknown> {
    const ids = new Set(events.map(({ id }) => id));
    for (const sheet of sheets.values()) {
      sheet.events = sheet.events.filter(({ id }) => !ids.has(id));
    }
    return Promise.all([...sheets.keys()].map((classId) => put(classId, [])));
  }

  /** Sees to it, once for each class, that what was done last is in the drawer, and that sheets stay few. */
  function begin(classId: string, events: readonly LogEvent[]): void {
    if (begun.has(classId)) return;
    begun.add(classId);
    const last = events.reduce((latest, { at }) => Math.max(latest, at), 0);
    const lately = events.filter(({ at }) => at > last - LATELY);
    afterwards(async () => {
      const old = await sheetsOf(classId);
      const pages = Math.ceil(events.length / PAGE);
      if (old.length > 0 && old.length <= MOST_SHEETS + pages) {
        put(classId, lately); // not waited for: it is written after this
        return;
      }
      for (let page = 0; page < pages; page++) {
        const text = encodePage(events.slice(page * PAGE, (page + 1) * PAGE));
        await drawer.write(newName(classId), text);
      }
      await removeAll(old);
    });
  }

  function newName(classId: string): string {
    return `${encodeURIComponent(classId)}/${session}-${names++}`;
  }

  async function sheetsOf(classId: string): Promise<readonly string[]> {
    const all = await drawer.names();
    return all.filter((name) => classOf(name) === classId);
  }

  async function removeAll(old: readonly string[]): Promise<void> {
    for (const name of old) await drawer.remove(name);
  }

  /** Puts all events back where `read` says that the store has no class; tells whether it did. */
  async function putBack(read: Awaited<ReturnType<EventStore['classes']>>): Promise<boolean> {
    if ('error' in read || read.classes.length > 0) return false;
    try {
      const events: LogEvent[] = [];
      for (const name of await drawer.names()) {
        for (const event of eventsOn(classOf(name), await drawer.read(name))) events.push(event);
      }
      return events.length > 0 && 'kept' in (await store.append(events));
    } catch {
      return false;
    }
  }
}

/** What is written on now for a class. */
interface Sheet {
  readonly name: string;
  events: readonly LogEvent[];
  /** Its next writing; null when nothing waits for one. */
  due: Promise<unknown> | null;
}

/** A sheet of so many events is full: each mark writes its sheet anew. */
const FULL = 128;
/** So long before the last event what was done may have missed the drawer, in milliseconds. */
const LATELY = 120_000;
/** Events on one sheet when all are written anew. */
const PAGE = 1024;
/** So many sheets beyond those pages may gather. */
const MOST_SHEETS = 40;

function classOf(name: string): string {
  return decodeURIComponent(name.slice(0, name.indexOf('/')));
}

/** The events on a sheet; none where it is gone or damaged. */
function eventsOn(classId: string, text: string | null): readonly LogEvent[] {
  try {
    return text === null ? [] : decodePage(classId, text);
  } catch {
    return [];
  }
}

import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore } from '../../../core/log/event-store.ts';
import { decodePage, encodePage } from './page.ts';
import { failureOf } from './store-error.ts';

/** Where sheets of lines are kept by name. It may lose some, and refuse: then its promises reject. */
export interface Drawer {
  /** The names of all sheets, in no certain order. */
  names(): Promise<readonly string[]>;
  /** A sheet whole; before each of its lines stands a line break. */
  read(name: string): Promise<string>;
  /** Adds a line to a sheet, which begins empty; resolves once it is there for good. */
  add(name: string, line: string): Promise<void>;
  /** Throws a sheet away. Rejects while another window is writing on it, and for seconds after that. */
  remove(name: string): Promise<void>;
}

/** What a second copy needs to know. */
export interface SecondCopySpec {
  readonly drawer: Drawer;
  /** A name for this window that no other ever had. */
  readonly session: string;
  /** Is told when the store had lost everything and it was put back. */
  readonly onPutBack?: () => void;
}

/**
 * A store with a second copy of its events beside it, from which they come back.
 *
 * Problem: a browser that finds its own database damaged, as it may after it was killed in the middle of
 * writing, throws all of it away and begins an empty one. Method: every event is added at the same time
 * to a sheet in a drawer, one for each class and window, and counts as kept once it is in both; when the
 * store has no class at all and the drawer has, the events are put back. Events are merged by their ids,
 * so that nothing is put back twice. So that nobody takes the store for lost, the drawer never has a class
 * before the store, nor longer: a window's first events of a class go to the store before the drawer, what
 * is forgotten leaves the drawer first, and the store is asked once more after the drawer. What was done
 * last may have reached the store and missed the drawer all the same, so it begins the sheet of the next
 * opening. When sheets have become many, all events are written anew, with what was added to the old sheets
 * meanwhile, and those go; one on which another window has just written stays.
 * Alternative: a second database, which the browser would throw away with the first. A drawer that fails
 * does no harm.
 */
export function withSecondCopy(store: EventStore, spec: SecondCopySpec): EventStore {
  const { drawer, session, onPutBack } = spec;
  const copied = new Map<string, Set<string>>();
  const begun = new Set<string>();
  const underWay = new Set<Promise<unknown>>();
  return {
    async append(events) {
      if (events.some(({ classId }) => !copied.has(classId))) {
        const outcome = await store.append(events);
        if ('kept' in outcome) await copy(events);
        return outcome;
      }
      const copying = copy(events);
      const outcome = await store.append(events);
      const fresh = await copying;
      if ('error' in outcome) await takeBack(fresh);
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
      await Promise.all(underWay);
      copied.delete(classId);
      begun.delete(classId);
      if (!(await throwAway(classId))) return failureOf('busy');
      const outcome = await store.forget(classId);
      await throwAway(classId);
      return outcome;
    },
    async close() {
      await Promise.all(underWay);
      await store.close();
    },
  };

  /** Does something with the drawer; resolves when it is done, or cannot be. */
  function quietly(work: () => Promise<unknown>): Promise<unknown> {
    const done = work()
      .catch(() => {})
      .finally(() => underWay.delete(done));
    underWay.add(done);
    return done;
  }

  /** Adds the events that are not in the drawer yet to the sheets of their classes; gives those it added. */
  async function copy(events: readonly LogEvent[]): Promise<readonly LogEvent[]> {
    const added: LogEvent[] = [];
    await ofEachClass(events, async (classId, own) => {
      const there = copied.get(classId) ?? new Set();
      copied.set(classId, there);
      const fresh = own.filter(({ id }) => !there.has(id));
      if (fresh.length === 0) return;
      await drawer.add(sheetOf(classId, session), encodePage(fresh));
      for (const event of fresh) {
        there.add(event.id);
        added.push(event);
      }
    });
    return added;
  }

  /** Strikes out events that the store could not keep. */
  function takeBack(events: readonly LogEvent[]): Promise<unknown> {
    return ofEachClass(events, async (classId, own) => {
      const ids = own.map(({ id }) => id);
      for (const id of ids) copied.get(classId)?.delete(id);
      await drawer.add(sheetOf(classId, session), STRUCK_OUT + JSON.stringify(ids));
    });
  }

  function ofEachClass(
    events: readonly LogEvent[],
    work: (classId: string, own: readonly LogEvent[]) => Promise<unknown>,
  ): Promise<unknown> {
    const classIds = [...new Set(events.map(({ classId }) => classId))];
    return Promise.all(
      classIds.map((classId) =>
        quietly(() =>
          work(
            classId,
            events.filter((event) => event.classId === classId),
          ),
        ),
      ),
    );
  }

  /** Sees to it, once for each class, that what was done last is in the drawer, and that sheets stay few. */
  function begin(classId: string, events: readonly LogEvent[]): void {
    if (begun.has(classId)) return;
    begun.add(classId);
    quietly(async () => {
      const old = await sheetsOf(classId);
      const pages = Math.ceil(events.length / PAGE);
      if (old.length > 0 && old.length <= MOST_SHEETS + pages) {
        const last = events.reduce((latest, { at }) => Math.max(latest, at), 0);
        await copy(events.filter(({ at }) => at > last - LATELY));
      } else {
        await writeAnew(classId, events, old);
      }
      const now = await store.classes();
      const isForgotten = 'classes' in now && now.classes.every((head) => head.classId !== classId);
      if (isForgotten) await throwAway(classId);
    });
  }

  /** Writes these events on fresh sheets, with what else is on the old ones, which then go. */
  async function writeAnew(
    classId: string,
    events: readonly LogEvent[],
    old: readonly string[],
  ): Promise<void> {
    for (let page = 0; page * PAGE < events.length; page++) {
      const own = events.slice(page * PAGE, (page + 1) * PAGE);
      await drawer.add(sheetOf(classId, `${session}-${page}`), encodePage(own));
    }
    const written = new Set(events.map(({ id }) => id));
    for (const name of old.filter((name) => name !== sheetOf(classId, session))) {
      const there = eventsOn(classId, await drawer.read(name).catch(() => ''));
      await copy(there.filter(({ id }) => !written.has(id)));
      await drawer.remove(name).catch(() => {});
    }
  }

  /** Throws a class's sheets away; tells whether none is left. */
  async function throwAway(classId: string): Promise<boolean> {
    const names = await sheetsOf(classId).catch(() => []);
    try {
      for (const name of names) await insist(() => drawer.remove(name));
      return true;
    } catch {
      return false;
    }
  }

  async function sheetsOf(classId: string): Promise<readonly string[]> {
    return (await drawer.names()).filter((name) => classOf(name) === classId);
  }

  /** Puts all events back where `read` says that the store has no class; tells whether it did. */
  async function putBack(read: Awaited<ReturnType<EventStore['classes']>>): Promise<boolean> {
    if ('error' in read || read.classes.length > 0) return false;
    const events: LogEvent[] = [];
    await quietly(async () => {
      for (const name of await drawer.names()) {
        const sheet = await drawer.read(name).catch(() => '');
        for (const event of eventsOn(classOf(name), sheet)) events.push(event);
      }
    });
    if (events.length === 0) return false;
    const again = await store.classes();
    const isLost = 'classes' in again && again.classes.length === 0;
    if (!isLost || 'error' in (await store.append(events))) return false;
    onPutBack?.();
    return true;
  }
}

/** So long before the last event what was done may have missed the drawer, in milliseconds. */
const LATELY = 120_000;
/** Begins a line that strikes out events above it, by their ids. */
const STRUCK_OUT = '-';
/** Events on one sheet when all are written anew. */
const PAGE = 1024;
/** So many sheets beyond those pages may gather. */
const MOST_SHEETS = 40;
/** So often, and after so many milliseconds, it is tried again to remove a sheet that is being written on. */
const TRIES = 14;
const TRY_AFTER = 500;

function sheetOf(classId: string, name: string): string {
  return `${encodeURIComponent(classId)}/${name}`;
}

function classOf(name: string): string {
  return decodeURIComponent(name.slice(0, name.indexOf('/')));
}

/** The events on a sheet, without those struck out later and those of torn lines. */
function eventsOn(classId: string, sheet: string): readonly LogEvent[] {
  const byId = new Map<string, LogEvent>();
  for (const line of sheet.split('\n')) {
    try {
      if (line.startsWith(STRUCK_OUT)) {
        for (const id of JSON.parse(line.slice(STRUCK_OUT.length))) byId.delete(id);
      } else {
        for (const event of decodePage(classId, line)) byId.set(event.id, event);
      }
    } catch {
      // The line was torn when the browser was killed: what it held was not said to be kept.
    }
  }
  return [...byId.values()];
}

async function insist(work: () => Promise<unknown>): Promise<void> {
  for (let tries = 1; ; tries++) {
    try {
      await work();
      return;
    } catch (thrown) {
      if (tries === TRIES) throw thrown;
      await new Promise((resolve) => setTimeout(resolve, TRY_AFTER));
    }
  }
}

import type { ClassId, EventId } from '../../../core/ids.ts';
import { isErased } from '../../../core/log/erased.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { EventStore, EventsRead, StoreFailure } from '../../../core/log/event-store.ts';
import { saySame } from '../../../core/log/say-same.ts';
import { withPatience } from './patient-drawer.ts';
import { type Drawer, markOf, type Sheet } from './sheet.ts';
import { type ClassSheets, createSheets, type Glance } from './sheets.ts';
import { failureOf } from './store-error.ts';

/** What a second copy needs to know. */
export interface SecondCopySpec {
  readonly drawer: Drawer;
  /** A name for this window that no other ever had. */
  readonly session: string;
  /** Is told what was found amiss when the two copies were united. */
  readonly onFound?: (found: Found) => void;
  /** After so many milliseconds it is looked again whether events that the drawer has not have come to it. */
  readonly lookAgainAfter?: number;
  /** So many milliseconds after a class that looked whole was opened, the sheets are read and compared. */
  readonly compareAfter?: number;
}

/** What was amiss in the two copies of a class. */
export interface Found {
  readonly classId: ClassId;
  /** Events that the store had not and that were put back. */
  readonly lost: readonly LogEvent[];
  /** How many of them it must have lost; none when they were only on their way when the browser ended. */
  readonly putBack: number;
  /** Events that the second copy had lost and that were copied again. */
  readonly copied: number;
  /** Records and lines that could not be read, in either copy. */
  readonly damaged: number;
  /** Events that are told of in two ways under one id; the store's counts. */
  readonly twofold: number;
}

/**
 * A store with a second copy of its events beside it; every opening unites the two.
 *
 * Problem: a browser that finds its own database damaged, as it may after it was killed in the middle of
 * writing, throws all of it away, or what was written last, and says nothing. Method: every event is added
 * at the same time to a sheet in a drawer, one for each class and window, and counts as kept once it is in
 * both. When a class is opened, what one copy lacks is taken from the other, by the events' ids. Most
 * openings find both whole, and waiting for every sheet would double their time: so first only the names of
 * the sheets are looked at, which tell how many events the full ones hold and the mark of their ids, and the
 * few open ones are read. When the store has just these, the class opens; a while later the sheets are read whole and
 * compared behind it. When anything differs, the class opens once it is put back; what the drawer lost is
 * copied to it at once, since a browser may throw its database away as late as some starts after it was killed
 * (docs/testing.md). So that nobody takes the store
 * for lost, a window's first events of a class go to the store before the drawer, and what is forgotten
 * leaves the drawer first. A forgotten class, and what was removed of one, is remembered in both copies, so
 * that no sheet left over brings it back. When open sheets have become many, what is on them alone is written onto full ones.
 * Alternative: a second database, which the browser would throw away with the first. A drawer that fails
 * or hangs does no harm; one that is only slow is waited for, since a class that opened without what it
 * lost would look as if that had never been.
 */
export function withSecondCopy(store: EventStore, spec: SecondCopySpec): EventStore {
  const { drawer, session, onFound, lookAgainAfter = ANOTHER_LOOK, compareAfter = A_WHILE } = spec;
  const sheets = createSheets(withPatience(drawer, PATIENCE), session);
  const onSheets = new Map<ClassId, Set<EventId>>();
  const underWay = new Set<Promise<unknown>>();
  const toCompare = new Map<ClassId, () => void>();
  const uniting = new Map<ClassId, Promise<EventsRead | null>>();
  return {
    async append(events, origin) {
      const isNew = events.some(({ classId }) => !onSheets.has(classId));
      const copying = isNew ? null : copy(events);
      const outcome = await store.append(events, origin);
      if ('kept' in outcome) await (copying ?? copy(events));
      else if (outcome.error.code === 'forgotten') await drop(events);
      else if (copying) await takeBack(await copying);
      return outcome;
    },
    async eventsOf(classId) {
      const glance = orNull(sheets.glance(classId));
      const read = await store.eventsOf(classId);
      const seen = await glance;
      if (seen === null) return read;
      if (isWhole(read, seen)) {
        if ('events' in read && tellsNothing(seen)) {
          void quietly(() => copyMissing(classId, read.events, new Map()));
        }
        compareLater(classId);
        return read;
      }
      const damaged = ('damaged' in read && read.damaged) || 0;
      const elsewhere = await unite(classId, damaged);
      if ('error' in read) return elsewhere ?? read;
      return store.eventsOf(classId);
    },
    async classes() {
      const read = await store.classes();
      if ('error' in read) return read;
      const here = new Set([...read.forgotten, ...read.classes.map(({ classId }) => classId)]);
      const found = (await orNull(sheets.all())) ?? [];
      const unknown = new Set(found.map(({ classId }) => classId).filter((id) => !here.has(id)));
      for (const classId of read.forgotten) void quietly(() => clear(classId, found));
      if (unknown.size === 0) return read;
      await Promise.all([...unknown].map((classId) => unite(classId)));
      return store.classes();
    },
    async forget(classId) {
      await settled();
      onSheets.delete(classId);
      if (!(await sheets.throwAway(classId))) return failureOf('busy');
      const outcome = await store.forget(classId);
      if ('error' in outcome) return outcome;
      await quietly(() => sheets.markGone(classId));
      await sheets.throwAway(classId);
      return outcome;
    },
    async remove(classId, ids) {
      await settled();
      const outcome = await store.remove(classId, ids);
      if ('error' in outcome) return outcome;
      return (await quietly(() => writeOnlyKept(classId))) ? outcome : failureOf('busy');
    },
    async recall(classId) {
      await quietly(() => sheets.unmarkGone(classId));
      return store.recall(classId);
    },
    async close() {
      await settled();
      await store.close();
    },
  };

  /** Does something with the drawer; resolves when it is done, to null when it cannot be. */
  function quietly<Value>(work: () => Promise<Value>): Promise<Value | null> {
    const done = work()
      .catch(() => null)
      .finally(() => underWay.delete(done));
    underWay.add(done);
    return done;
  }

  /** Leaves nothing in the drawer but what the store has; whether that could be done. */
  async function writeOnlyKept(classId: ClassId): Promise<boolean> {
    // Without a drawer nothing is left in it.
    if ((await orNull(sheets.all())) === null) return true;
    const read = await store.eventsOf(classId);
    if ('error' in read) return false;
    await sheets.markErased(classId, [...(read.erased ?? [])]);
    onSheets.delete(classId);
    const isDone = await sheets.writeOnly(classId, read.events);
    onSheets.set(classId, new Set(read.events.map(({ id }) => id)));
    const now = await store.eventsOf(classId);
    if ('events' in now) await copy(now.events);
    return isDone;
  }

  /** Resolves when nothing is under way, what was begun meanwhile included. */
  async function settled(): Promise<void> {
    for (const goOn of toCompare.values()) goOn();
    while (underWay.size > 0) await Promise.all(underWay);
  }

  /** Compares the copies of a class when the screen has been drawn; at once when the store is closed before. */
  function compareLater(classId: ClassId): void {
    if (toCompare.has(classId)) return;
    const waited = new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, compareAfter);
      toCompare.set(classId, () => {
        clearTimeout(timer);
        resolve();
      });
    });
    void quietly(async () => {
      await waited;
      toCompare.delete(classId);
      await unite(classId);
    });
  }

  /** Adds the events that are not in the drawer yet to the sheets of their classes; gives those it added. */
  async function copy(events: readonly LogEvent[]): Promise<readonly LogEvent[]> {
    const added: LogEvent[] = [];
    await ofEachClass(events, async (classId, own) => {
      const there = onSheets.get(classId) ?? new Set();
      onSheets.set(classId, there);
      const fresh = own.filter(({ id }) => !there.has(id));
      if (fresh.length === 0) return;
      for (const { id } of fresh) there.add(id);
      try {
        await sheets.add(classId, fresh);
      } catch (thrown) {
        for (const { id } of fresh) onSheets.get(classId)?.delete(id);
        throw thrown;
      }
      for (const event of fresh) added.push(event);
    });
    return added;
  }

  /** Strikes out events that the store could not keep. */
  function takeBack(events: readonly LogEvent[]): Promise<unknown> {
    return ofEachClass(events, async (classId, own) => {
      const ids = own.map(({ id }) => id);
      for (const id of ids) onSheets.get(classId)?.delete(id);
      await sheets.strike(classId, ids);
    });
  }

  /** Throws away what was added to a class that was forgotten meanwhile. */
  function drop(events: readonly LogEvent[]): Promise<unknown> {
    return ofEachClass(events, async (classId) => {
      onSheets.delete(classId);
      await sheets.throwAway(classId);
    });
  }

  function ofEachClass(
    events: readonly LogEvent[],
    work: (classId: ClassId, own: readonly LogEvent[]) => Promise<unknown>,
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

  /** Unites the copies of a class, which is never done twice at once; see `reunite`. */
  function unite(classId: ClassId, damaged = 0): Promise<EventsRead | null> {
    const going = uniting.get(classId);
    if (going) return going;
    const work = quietly(() => reunite(classId, damaged)).finally(() => uniting.delete(classId));
    uniting.set(classId, work);
    return work;
  }

  /**
   * Puts back into the store what the drawer alone has, then lets the drawer be put in order behind. Gives
   * what is known of the class when the store cannot be reached or cannot take it; else null.
   */
  async function reunite(classId: ClassId, damagedHere: number): Promise<EventsRead | null> {
    const there = await sheets.readAll(classId);
    const read = await store.eventsOf(classId);
    if ('error' in read) {
      return there.events.size > 0
        ? { events: [...there.events.values()], trouble: read.error }
        : null;
    }
    const here = new Map(read.events.map((event) => [event.id, event]));
    if (there.isGone && here.size === 0) {
      await store.forget(classId);
      await sheets.throwAway(classId);
      return null;
    }
    const known = read.erased ?? new Set();
    const untold = there.erased.filter((id) => !known.has(id));
    if (untold.length > 0 && 'kept' in (await store.remove(classId, untold))) {
      return reunite(classId, damagedHere);
    }
    const alone = [...there.events.values()].filter(({ id }) => !here.has(id));
    const lost = alone.filter((event) => !isErased(event, known));
    if (lost.length > 0) {
      const outcome = await store.append(lost);
      if ('error' in outcome) {
        if (outcome.error.code === 'forgotten') await sheets.throwAway(classId);
        else return { events: [...read.events, ...lost], trouble: outcome.error };
        return null;
      }
    }
    const damaged = damagedHere + there.sheets.reduce((sum, sheet) => sum + sheet.damaged, 0);
    const last = lastOn(there);
    const isCutShort = here.size > 0 && lost.every(({ id }) => last.has(id));
    const putBack = isCutShort ? 0 : lost.length;
    if (lost.length > 0 || damaged > 0)
      onFound?.({ classId, lost, putBack, copied: 0, damaged, twofold: 0 });
    void quietly(async () => {
      await putInOrder(classId, there, here, lost);
      if (lost.length < alone.length) await writeOnlyKept(classId);
    });
    return null;
  }

  /** Copies what the drawer has not, keeps its sheets whole and few, and looks for ids that stand for two events. */
  async function putInOrder(
    classId: ClassId,
    there: ClassSheets,
    here: ReadonlyMap<EventId, LogEvent>,
    lost: readonly LogEvent[],
  ): Promise<void> {
    const isThere = here.size + lost.length > 0;
    if (isThere)
      onSheets.set(classId, new Set([...there.events.keys(), ...(onSheets.get(classId) ?? [])]));
    await copyMissing(classId, [...here.values()], there.events);
    await sheets.tidy(classId, there, [...here.values(), ...lost]);
    if (there.isGone) await sheets.unmarkGone(classId);
    let twofold = 0;
    let looked = 0;
    for (const [id, event] of there.events) {
      const other = here.get(id);
      if (other && !saySame(event, other)) twofold += 1;
      if (++looked % AT_ONCE === 0) await pause(0);
    }
    if (twofold > 0) onFound?.({ classId, lost: [], putBack: 0, copied: 0, damaged: 0, twofold });
    const now = await store.classes();
    if ('forgotten' in now && now.forgotten.includes(classId)) await sheets.throwAway(classId);
  }

  /**
   * Copies what the drawer has not, at once, since until then the class lies in one copy alone. Many of the
   * events may only have been on their way there, from another window that has just brought in a file: so it
   * is looked again until no more come from there, before it is told that the drawer had lost them.
   */
  async function copyMissing(
    classId: ClassId,
    here: readonly LogEvent[],
    there: ReadonlyMap<EventId, LogEvent>,
  ): Promise<void> {
    const missing = here.filter(({ id }) => !there.has(id));
    let copied: LogEvent[] = [];
    for (let from = 0; from < missing.length; from += AT_ONCE) {
      copied = copied.concat(await copy(missing.slice(from, from + AT_ONCE)));
    }
    while (copied.length > ON_THE_WAY) {
      await pause(lookAgainAfter);
      const elsewhere = await sheets.onOthers(classId);
      const still = copied.filter(({ id }) => !elsewhere.has(id));
      if (still.length === copied.length) {
        onFound?.({ classId, lost: [], putBack: 0, copied: still.length, damaged: 0, twofold: 0 });
        return;
      }
      copied = still;
    }
  }

  /** Throws away the sheets that were left of a forgotten class, and has the drawer remember it. */
  async function clear(classId: ClassId, found: readonly Sheet[]): Promise<void> {
    const own = found.filter((sheet) => sheet.classId === classId);
    if (own.some(({ kind }) => kind !== 'gone')) await sheets.throwAway(classId);
    if (!own.some(({ kind }) => kind === 'gone')) await sheets.markGone(classId);
  }
}

/** So long an answer of the drawer is waited for, in milliseconds. */
const PATIENCE = 3000;
/** So many of the last events may be on their way to one of the copies when the browser is killed. */
const ON_THE_WAY = 4;
/** Long enough for a file of some thousand events that another window has brought in, in milliseconds. */
const ANOTHER_LOOK = 1000;
/** Long enough for the screens to be there, in milliseconds. */
const A_WHILE = 1500;
/** So many events are compared, or copied, before other work has its turn. */
const AT_ONCE = 1024;

/** Whether a store has just the events of which a glance at the drawer tells, or the drawer tells of none. */
function isWhole(read: EventsRead | StoreFailure, glance: Glance): boolean {
  const { count, mark, open, isGone } = glance;
  if ('error' in read || isGone || (read.damaged ?? 0) > 0) return false;
  const asked = new Map(open.map((event) => [event.id, event]));
  if (tellsNothing(glance)) return true;
  if (mark === null || read.events.length !== count + asked.size) return false;
  return markOf(read.events) === (mark + markOf(asked.values())) >>> 0;
}

/** Whether the drawer has no event of a class: it lost them, or never had them. */
function tellsNothing({ count, open }: Glance): boolean {
  return count + open.length === 0;
}

/** The ids of the last few events of every open sheet. */
function lastOn({ sheets }: ClassSheets): ReadonlySet<string> {
  const open = sheets.filter(({ kind }) => kind === 'open');
  return new Set(open.flatMap(({ events }) => events.slice(-ON_THE_WAY).map(({ id }) => id)));
}

/** What comes of some work, or null when it cannot be done. */
function orNull<Value>(work: Promise<Value>): Promise<Value | null> {
  return work.catch(() => null);
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}

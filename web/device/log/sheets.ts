import type { ClassId, EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { encodePage } from './page.ts';
import { DrawerHangs } from './patient-drawer.ts';
import {
  asideSheet,
  type Drawer,
  erasedSheet,
  fullSheet,
  goneSheet,
  openSheet,
  parseSheet,
  readSheet,
  type Sheet,
  type SheetRead,
  strikingLine,
  struckOn,
} from './sheet.ts';

/** What the drawer tells of a class without being read whole. */
export interface Glance {
  /** How many events the full sheets hold together. */
  readonly count: number;
  /** The mark of these events, see `markOf`; null when a full sheet tells none. */
  readonly mark: number | null;
  /** What is on the open ones. */
  readonly open: readonly LogEvent[];
  /** Whether the class was forgotten. */
  readonly isGone: boolean;
}

/** All that the drawer has of a class. */
export interface ClassSheets {
  readonly sheets: readonly (Sheet & SheetRead)[];
  /** Every event by its id. */
  readonly events: ReadonlyMap<EventId, LogEvent>;
  /** What was removed of it for good, by ids. */
  readonly erased: readonly string[];
  readonly isGone: boolean;
}

/** The sheets of all classes in a drawer; `session` names this window. Every promise may reject. */
export function createSheets(drawer: Drawer, session: string) {
  let written = 0;
  return {
    all,
    /**
     * Looks at the names, and at the sheets that are still added to. However many these are: as long as no
     * full one is written, they alone know what the class was.
     */
    async glance(classId: ClassId): Promise<Glance> {
      const sheets = await ofClass(classId);
      const open = sheets.filter(({ kind }) => kind === 'open');
      const reads = await Promise.all(open.map(read));
      const full = sheets.filter(({ kind }) => kind === 'full');
      return {
        count: full.reduce((sum, { count }) => sum + count, 0),
        mark: full.reduce<number | null>(
          (sum, { mark }) => (sum === null || mark === null ? null : (sum + mark) >>> 0),
          0,
        ),
        open: reads.flatMap((found) => found?.events ?? []),
        isGone: sheets.some(isGone),
      };
    },
    /** Reads every sheet of a class; one that cannot be read now is left out, and stays as it is. */
    async readAll(classId: ClassId): Promise<ClassSheets> {
      const all = await ofClass(classId);
      const sheets: (Sheet & SheetRead)[] = [];
      const events = new Map<EventId, LogEvent>();
      for (const sheet of all.filter(holdsEvents)) {
        const found = await read(sheet);
        if (!found) continue;
        sheets.push({ ...sheet, ...found });
        for (const event of found.events) if (!events.has(event.id)) events.set(event.id, event);
      }
      const struck = all.filter(({ kind }) => kind === 'erased');
      const erased = await Promise.all(struck.map(({ name }) => drawer.read(name).then(struckOn)));
      return { sheets, events, erased: erased.flat(), isGone: all.some(isGone) };
    },
    /** The ids of all events on sheets to which this window does not add. */
    async onOthers(classId: ClassId): Promise<ReadonlySet<EventId>> {
      const own = openSheet(classId, session);
      const others = (await ofClass(classId)).filter(({ name }) => name !== own);
      const reads = await Promise.all(others.filter(holdsEvents).map(read));
      return new Set(reads.flatMap((found) => found?.events ?? []).map(({ id }) => id));
    },
    /** Adds events to this window's open sheet. */
    add: (classId: ClassId, events: readonly LogEvent[]) =>
      drawer.add(openSheet(classId, session), encodePage(events)),
    /** Strikes out events on this window's open sheet. */
    strike: (classId: ClassId, ids: readonly EventId[]) =>
      drawer.add(openSheet(classId, session), strikingLine(ids)),
    /**
     * Writes on full sheets what the open ones alone hold, or all events again where full ones are damaged,
     * scattered, hold the same, or tell no mark; nothing while the sheets are whole and few, and the open
     * ones, which every opening reads, short.
     */
    async tidy(classId: ClassId, there: ClassSheets, events: readonly LogEvent[]): Promise<void> {
      const full = there.sheets.filter(({ kind }) => kind === 'full');
      const open = there.sheets.filter(({ kind }) => kind === 'open');
      const onFull = new Set(full.flatMap((sheet) => sheet.events.map(({ id }) => id)));
      const isDamaged = (sheet: SheetRead): boolean => sheet.damaged > 0;
      const asSaid = full.reduce((sum, { count }) => sum + count, 0) === onFull.size;
      const most = MOST_SHEETS + 2 * Math.ceil(events.length / PAGE);
      const isMarked = full.every(({ mark }) => mark !== null);
      if (!asSaid || !isMarked || full.length > most || full.some(isDamaged)) {
        await writeAnew(classId, events, there.sheets);
      } else if (open.length > MOST_SHEETS || open.some(isDamaged) || isMuch(open, onFull)) {
        const fresh = events.filter(({ id }) => !onFull.has(id));
        await writeAnew(classId, fresh, open);
      } else {
        const isSpent = ({ name, events }: Sheet & SheetRead): boolean =>
          name !== openSheet(classId, session) && events.every(({ id }) => onFull.has(id));
        await writeAnew(classId, [], open.filter(isSpent));
      }
    },
    /** Says in the drawer what was removed of a class for good. */
    markErased: (classId: ClassId, ids: readonly string[]) =>
      drawer.add(erasedSheet(classId), strikingLine(ids)),
    /**
     * Writes these events, which are all there are, on full sheets and throws every other sheet away, damaged
     * ones too; tells whether none is left.
     */
    async writeOnly(classId: ClassId, events: readonly LogEvent[]): Promise<boolean> {
      const before = (await ofClass(classId)).filter(({ kind }) => kind !== 'erased');
      await writeFull(classId, events);
      return throwAll(before.filter((sheet) => !isGone(sheet)));
    },
    /** Says in the drawer that a class was forgotten. */
    markGone: (classId: ClassId) => drawer.add(goneSheet(classId), GONE_LINE),
    /** Takes that back. */
    async unmarkGone(classId: ClassId): Promise<void> {
      for (const sheet of (await ofClass(classId)).filter(isGone)) await drawer.remove(sheet.name);
    },
    /** Throws a class's sheets away, but for the one that says that it was forgotten; tells whether none is left. */
    async throwAway(classId: ClassId): Promise<boolean> {
      const sheets = await ofClass(classId).catch(() => []);
      return throwAll(sheets.filter((sheet) => !isGone(sheet)));
    },
  };

  async function throwAll(sheets: readonly Sheet[]): Promise<boolean> {
    try {
      for (const { name } of sheets) await insist(() => drawer.remove(name));
      return true;
    } catch {
      return false;
    }
  }

  async function writeFull(classId: ClassId, events: readonly LogEvent[]): Promise<void> {
    for (let from = 0; from < events.length; from += PAGE) {
      const own = events.slice(from, from + PAGE);
      const name = fullSheet(classId, session, written++, own);
      await drawer.add(name, encodePage(own));
    }
  }

  /** Every sheet of every class. */
  async function all(): Promise<readonly Sheet[]> {
    return (await drawer.names()).map(parseSheet).filter((sheet) => sheet !== null);
  }

  async function ofClass(classId: ClassId): Promise<readonly Sheet[]> {
    return (await all()).filter((sheet) => sheet.classId === classId);
  }

  /** Null for a sheet that cannot be fetched, as when another window removes it meanwhile. */
  async function read(sheet: Sheet): Promise<SheetRead | null> {
    for (let tries = 1; ; tries++) {
      try {
        return readSheet(sheet, await drawer.read(sheet.name));
      } catch (thrown) {
        if (thrown instanceof DrawerHangs) throw thrown;
        if (tries === READS) return null;
      }
    }
  }

  /**
   * Writes these events on full sheets. What was added to the old ones meanwhile is added here, and they go;
   * one on which another window has just written stays, as does one that cannot be read again, and a
   * damaged one is kept aside.
   */
  async function writeAnew(
    classId: ClassId,
    events: readonly LogEvent[],
    old: readonly (Sheet & SheetRead)[],
  ): Promise<void> {
    await writeFull(classId, events);
    for (const sheet of old) {
      if (sheet.name === openSheet(classId, session)) continue;
      const before = new Set(sheet.events.map(({ id }) => id));
      const now = await read(sheet);
      if (!now) continue;
      const meanwhile = now.events.filter(({ id }) => !before.has(id));
      if (meanwhile.length > 0)
        await drawer.add(openSheet(classId, session), encodePage(meanwhile));
      if (sheet.damaged > 0) {
        const text = await drawer.read(sheet.name).catch(() => '');
        await drawer.add(asideSheet(classId, session, written++), text);
      }
      await drawer.remove(sheet.name).catch(() => {});
    }
    await strikeWritten(classId, events);
  }

  /** Strikes out on this window's open sheet what is on full ones now, so that no event stands on both. */
  async function strikeWritten(classId: ClassId, events: readonly LogEvent[]): Promise<void> {
    if (events.length === 0) return;
    const name = openSheet(classId, session);
    const own = (await ofClass(classId)).find((sheet) => sheet.name === name);
    const found = own && (await read(own));
    const onFull = new Set(events.map(({ id }) => id));
    const ids = (found?.events ?? []).map(({ id }) => id).filter((id) => onFull.has(id));
    if (ids.length > 0) await drawer.add(name, strikingLine(ids));
  }
}

/** Whether the open sheets hold more than a full one would, and no full one has it. */
function isMuch(open: readonly SheetRead[], onFull: ReadonlySet<EventId>): boolean {
  const ids = open.flatMap(({ events }) => events.map(({ id }) => id));
  return ids.length > PAGE && new Set(ids.filter((id) => !onFull.has(id))).size > PAGE;
}

/** Events on a full sheet. */
const PAGE = 1024;
/** So many open sheets may gather, and so many full ones beyond those that the events need. */
const MOST_SHEETS = 12;
/** So often a sheet is read that another window is just writing on. */
const READS = 3;
/** No event, and no number that could be taken for one. */
const GONE_LINE = '~';
/** So often, and after so many milliseconds, it is tried again to remove a sheet that is being written on. */
const TRIES = 14;
const TRY_AFTER = 500;

function holdsEvents({ kind }: Sheet): boolean {
  return kind === 'full' || kind === 'open';
}

function isGone({ kind }: Sheet): boolean {
  return kind === 'gone';
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

import { type ClassId, classId, type EventId, isEventId } from '../../../core/ids.ts';
import { crc32 } from '../../../core/log/crc32.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { readPage } from './page.ts';

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

/** What a name says of a sheet. */
export interface Sheet {
  readonly name: string;
  readonly classId: ClassId;
  /**
   * `open`: to which a window adds its events, or did; `full`: written at once, with so many events that
   * are on no other full sheet; `gone`: the class was forgotten; `erased`: says what was removed for good, which
   * earlier builds read as struck out; `aside`: a damaged one, kept for whoever
   * wants to rescue what is on it.
   */
  readonly kind: 'open' | 'full' | 'gone' | 'erased' | 'aside';
  readonly count: number;
  /** The mark of its events, see `markOf`; null where the name tells none, as the first version's. */
  readonly mark: number | null;
}

/**
 * One number for a set of ids, whatever their order: the sum of their check numbers, from 0 to 2^32 - 1.
 * The mark of two sets that share no id is the sum of their marks, modulo 2^32.
 */
export function markOf(events: Iterable<{ readonly id: string }>): number {
  let sum = 0;
  for (const { id } of events) sum = (sum + crc32(id)) >>> 0;
  return sum;
}

/** The name of the sheet to which a window adds; `session` is a name that no other window ever had. */
export function openSheet(classId: ClassId, session: string): string {
  return `${encodeURIComponent(classId)}/${session}`;
}

/**
 * The name of a sheet that is written at once; `session` and `place` tell it from all others. Builds that
 * know no marks take it for an open one, which they read as well.
 */
export function fullSheet(
  classId: ClassId,
  session: string,
  place: number,
  events: readonly LogEvent[],
): string {
  const mark = markOf(events).toString(16);
  return openSheet(classId, `${session}-${place}~${events.length}~m${mark}`);
}

/** The name of the sheet that says that a class was forgotten. */
export function goneSheet(classId: ClassId): string {
  return openSheet(classId, GONE);
}

/** The name of the sheet that says what was removed of a class for good. */
export function erasedSheet(classId: ClassId): string {
  return openSheet(classId, ERASED);
}

/** The name of a sheet on which a damaged one is kept aside; no other has this name. */
export function asideSheet(classId: ClassId, session: string, place: number): string {
  return openSheet(classId, `${ASIDE}${session}-${place}`);
}

/** Reads a name; null for one that no sheet has. */
export function parseSheet(name: string): Sheet | null {
  const slash = name.indexOf('/');
  const said = decoded(name.slice(0, Math.max(0, slash)));
  if (!said) return null;
  const ofClass = classId(said);
  const rest = name.slice(slash + 1);
  const none = { name, classId: ofClass, count: 0, mark: null };
  if (rest === GONE) return { ...none, kind: 'gone' };
  if (rest === ERASED) return { ...none, kind: 'erased' };
  if (rest.startsWith(ASIDE)) return { ...none, kind: 'aside' };
  const told = /~(\d+)(?:~m([0-9a-f]{1,8}))?$/.exec(rest);
  if (!told) return { ...none, kind: 'open' };
  const mark = told[2] === undefined ? null : Number.parseInt(told[2], 16);
  return { ...none, kind: 'full', count: Number(told[1]), mark };
}

/** A line that strikes out events above it. */
export function strikingLine(ids: readonly string[]): string {
  return STRUCK_OUT + JSON.stringify(ids);
}

/** All ids that are struck out on a sheet. */
export function struckOn(text: string): readonly string[] {
  return text
    .split('\n')
    .filter((line) => line.startsWith(STRUCK_OUT))
    .flatMap(struckIds);
}

/** What is on a sheet. */
export interface SheetRead {
  /** The events, without those struck out later. */
  readonly events: readonly LogEvent[];
  /**
   * How many lines or events of it could not be read. A last line that was torn is not counted: what it
   * held was not said to be kept.
   */
  readonly damaged: number;
}

/** Reads a sheet line by line. */
export function readSheet({ classId, kind, count }: Sheet, text: string): SheetRead {
  const byId = new Map<EventId, LogEvent>();
  const lines = text.split('\n').filter((line) => line !== '');
  let damaged = 0;
  for (const [place, line] of lines.entries()) {
    if (line.startsWith(STRUCK_OUT)) {
      for (const id of struckIds(line)) byId.delete(id);
      continue;
    }
    const page = readPage(classId, line);
    for (const event of page.events) byId.set(event.id, event);
    if (kind === 'full' || place < lines.length - 1) damaged += page.damaged;
  }
  if (kind === 'full' && byId.size < count) damaged = Math.max(1, damaged);
  return { events: [...byId.values()], damaged };
}

const GONE = '~gone';
const ERASED = '~erased';
const ASIDE = '~aside-';
/** Begins a line that strikes out events above it, by their ids. */
const STRUCK_OUT = '-';

function struckIds(line: string): readonly EventId[] {
  try {
    const ids: unknown = JSON.parse(line.slice(STRUCK_OUT.length));
    return Array.isArray(ids) ? ids.filter(isEventId) : [];
  } catch {
    return [];
  }
}

function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}

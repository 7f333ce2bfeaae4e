/**
 * Calling on children, one for each card, sound and word. Plain values, the same
 * in every window; chance comes in with the lots.
 */
import type { ChildId } from '../ids.ts';
import type { Part } from '../log/event.ts';
import type { Moment } from './moments.ts';
import type { Act, Standing } from './standing.ts';

/** Who was called and who comes. */
export interface Calling {
  readonly on: boolean;
  /** Who reads at each place of the order so far; null or nothing where all read together. */
  readonly readers: readonly (ChildId | null)[];
  /** The next children, soonest first. */
  readonly upcoming: readonly ChildId[];
  /** All who have been called, oldest first. */
  readonly calls: readonly ChildId[];
}

/** Who is there, and who is drawn of them after those who were called. */
export interface Lots {
  readonly present: readonly ChildId[];
  draw(calls: readonly ChildId[], count: number): readonly ChildId[];
}

/** So many of the next children are known ahead. */
const AHEAD = 3;

/** Nobody is called; `calls` are those of earlier. */
export function callNobody(calls: readonly ChildId[]): Calling {
  return { on: false, readers: [], upcoming: [], calls };
}

/**
 * Who was called in a warm-up that is taken up, at each place of its order: whose turn it was when it
 * was left has it still. `called` is what the log says, `calls` are all who were called of late.
 */
export function callTakenUp(
  { order, at }: Pick<Standing, 'order' | 'at'>,
  called: readonly { readonly child: ChildId; readonly part: Part; readonly place: number }[],
  moments: readonly Pick<Moment, 'part' | 'place'>[],
  { calls, on }: Pick<Calling, 'calls' | 'on'>,
): Calling {
  const readers = order.slice(0, at + 1).map((number) => {
    const { part, place } = moments[number] ?? {};
    return called.findLast((one) => one.part === part && one.place === place)?.child ?? null;
  });
  return { on, readers, upcoming: [], calls };
}

/** Who reads now; null when all read together. */
export function readerAt({ readers }: Calling, at: number): ChildId | null {
  return readers[at] ?? null;
}

/** Begins to call on children, with the card that is up; or stops. */
export function turnCalling(calling: Calling, on: boolean, at: number, lots: Lots): Calling {
  if (on === calling.on) return calling;
  if (!on) return { ...withdrawn(calling, at), on, upcoming: [] };
  return callNext({ ...calling, on, upcoming: [] }, at, lots);
}

/** Another child reads what is up; the one who was called has not read, and keeps the next turn. */
export function callOn(calling: Calling, child: ChildId, at: number, lots: Lots): Calling {
  const before = readerAt(calling, at);
  if (before === child) return calling;
  const waiting = [...(before === null ? [] : [before]), ...calling.upcoming];
  const upcoming = waiting.filter((other) => other !== child);
  return refilled(called({ ...withdrawn(calling, at), on: true, upcoming }, child, at), lots);
}

/** After children came or went: those who are not there are not called. */
export function callPresent(calling: Calling, at: number, lots: Lots): Calling {
  if (!calling.on) return calling;
  const upcoming = calling.upcoming.filter((child) => lots.present.includes(child));
  const reader = readerAt(calling, at);
  if (reader !== null && lots.present.includes(reader)) {
    return refilled({ ...calling, upcoming }, lots);
  }
  return callNext({ ...withdrawn(calling, at), upcoming }, at, lots);
}

/**
 * After an act: a new place has a new reader, a word that comes again the one who
 * read it before, and who was skipped reads the next.
 */
export function callAfter(
  calling: Calling,
  before: Standing,
  after: Standing,
  what: Act,
  lots: Lots,
): Calling {
  let now = calling;
  if (after.order.length > before.order.length) {
    const again = after.order.findIndex((number, place) => number !== before.order[place]);
    const { readers } = calling;
    now = again < readers.length ? { ...now, readers: readers.toSpliced(again, 0, null) } : now;
  }
  if (!calling.on || after.at === before.at) return now;
  const skipped = what === 'skip' ? readerAt(now, before.at) : null;
  if (skipped !== null) {
    now = withdrawn(now, before.at);
    now = { ...now, upcoming: [skipped, ...now.upcoming] };
  }
  if (after.at >= after.order.length || readerAt(now, after.at) !== null) return now;
  const reader = readerBefore(now, after);
  if (reader === null || !lots.present.includes(reader)) return callNext(now, after.at, lots);
  return called(now, reader, after.at);
}

/** Who read the moment that is up when it came before; null for nobody. */
function readerBefore(calling: Calling, { order, at }: Standing): ChildId | null {
  const before = order.slice(0, at).lastIndexOf(order[at] as number);
  return before < 0 ? null : readerAt(calling, before);
}

function callNext(calling: Calling, at: number, lots: Lots): Calling {
  const { upcoming } = refilled(calling, lots);
  const [child, ...rest] = upcoming;
  if (child === undefined) return calling;
  return refilled(called({ ...calling, upcoming: rest }, child, at), lots);
}

function called(calling: Calling, child: ChildId, at: number): Calling {
  const readers = Array.from({ length: Math.max(calling.readers.length, at + 1) }, (_, place) =>
    place === at ? child : readerAt(calling, place),
  );
  return { ...calling, readers, calls: [...calling.calls, child] };
}

/** The call at a place is taken back. */
function withdrawn(calling: Calling, at: number): Calling {
  const reader = readerAt(calling, at);
  if (reader === null) return calling;
  const last = calling.calls.lastIndexOf(reader);
  const calls = last < 0 ? calling.calls : calling.calls.toSpliced(last, 1);
  return { ...calling, readers: calling.readers.with(at, null), calls };
}

function refilled(calling: Calling, lots: Lots): Calling {
  const { upcoming, calls } = calling;
  const missing = AHEAD - upcoming.length;
  if (missing <= 0) return calling;
  return { ...calling, upcoming: [...upcoming, ...lots.draw([...calls, ...upcoming], missing)] };
}

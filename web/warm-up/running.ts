/**
 * The warm-up that is being run, the same in every window of this browser: the
 * stage before the class, the desk before the teacher. Whatever is done in one
 * window is recorded by it and shown by all; the newest state holds, by its
 * count, and between equals by the window's name. What is done shows at once and
 * is noted after the next frame; a mark is noted at once.
 */
import { computed, signal } from '@preact/signals';
import type { Drill } from '../../core/drills/drill.ts';
import type { DrillRecord } from '../../core/log/class-state.ts';
import type { EventSpec, LogEvent } from '../../core/log/event.ts';
import { nextChildren } from '../../core/log/next-child.ts';
import { drillsOf } from '../../core/log/recent.ts';
import { makeRandom } from '../../core/random.ts';
import {
  type Calling,
  callAfter,
  callNobody,
  callOn,
  callPresent,
  type Lots,
  turnCalling,
} from '../../core/warm-up/calling.ts';
import { type Moment, momentsOf } from '../../core/warm-up/moments.ts';
import { beginningOf, changeOf, eventsBetween } from '../../core/warm-up/noted.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import {
  type Act,
  act,
  type Blending,
  hiddenOf,
  type Manner,
  type Standing,
  standingAt,
} from '../../core/warm-up/standing.ts';
import { takenUpAt } from '../../core/warm-up/taken-up.ts';
import { afterPaint, catchUp } from '../device/after-paint.ts';
import { openLink } from '../device/link.ts';
import { newId } from '../device/log/ids.ts';
import { present } from '../state/absent.ts';
import { today } from '../state/day.ts';
import { classState, group, record } from '../state/open-class.ts';
import { freshSeed } from '../state/plan.ts';
import { setSettings, settings } from '../state/settings.ts';

/** The warm-up under way; null when there is none. */
export const running = signal<Running | null>(null);

const drill = computed(() => running.value?.drill ?? null);

/** Its moments. */
export const moments = computed<readonly Moment[]>(() =>
  drill.value ? momentsOf(drill.value) : [],
);

/** What the log knows of it; null until something of it was recorded. */
export const recordNow = computed<DrillRecord | null>(
  () => classState.value.drills.get(running.value?.drillId ?? '') ?? null,
);

const by = newId();
const link = openLink<Running>(
  'sweepline.warm-up',
  () => running.peek(),
  (state) => {
    if (state.classId === classState.peek().id && isNewer(state, running.peek())) {
      running.value = state;
    }
  },
);

/** Asks the other windows for the warm-up under way. */
export function askOthers(): void {
  link.ask();
}

/** Begins a warm-up from its first card. It is recorded once something of it is done. */
export function start(planned: Drill): void {
  const count = momentsOf(planned).length;
  begin({ drillId: newId(), groupId: group.peek().id, drill: planned }, standingAt(count));
}

/** Takes up a warm-up where the log says that it stood. */
export function resume({ id, groupId, drill: begun, ...came }: DrillRecord): void {
  begin({ drillId: id, groupId, drill: begun }, takenUpAt(came, momentsOf(begun)));
}

/** Goes on where a warm-up stood, with its plan as it was changed since. */
export function goOnWith(planned: Drill, { id: drillId, groupId, ...came }: DrillRecord): void {
  const standing = takenUpAt(came, momentsOf(planned));
  record(...changeOf({ drillId, drill: planned, standing }, came.drill));
  begin({ drillId, groupId, drill: planned }, standing);
}

/** The group's drill of today that was begun and has not ended; null when there is none. */
export const unfinished = computed<DrillRecord | null>(() => {
  const last = drillsOf(classState.value, group.value.id).at(-1);
  return last && last.ended === null && last.day === today() && last.shown.length > 0 ? last : null;
});

/** How the warm-up is run. */
function mannerOf({ blending, dictated }: Running): Manner {
  return { moments: moments.value, blending, dictated: dictated.length };
}

/** How many cards of the row are still face down. */
export function hiddenNow(now: Running): number {
  return hiddenOf(now.standing, mannerOf(now));
}

/** Does something, here and in the other windows, and records what came of it; false if nothing did. */
export function perform(what: Act): boolean {
  const now = running.peek();
  if (!now) return false;
  const standing = act(now.standing, what, mannerOf(now));
  if (standing === now.standing) return false;
  const calling = callAfter(now.calling, now.standing, standing, what, lots);
  const moved = standing.at !== now.standing.at;
  const next = { ...now, standing, calling, asking: moved ? null : now.asking };
  put(next);
  noteLater(now, next, what);
  return true;
}

/** Calls on children from now on, or not; `calling` is what it is after that. */
function changeCalling(change: (calling: Calling, at: number, lots: Lots) => Calling): void {
  const now = running.peek();
  if (!now) return;
  const next = { ...now, calling: change(now.calling, now.standing.at, lots) };
  if (next.calling === now.calling) return;
  put(next);
  setSettings({ calling: next.calling.on });
  noteLater(now, next, 'next');
}

/** Begins or stops calling on children. */
export function setCalling(on: boolean): void {
  changeCalling((calling, at) => turnCalling(calling, on, at, lots));
}

/** Calls on this child for what is up. */
export function callChild(child: string): void {
  changeCalling((calling, at) => callOn(calling, child, at, lots));
}

/** Another child reads what is up. */
export function callAnother(): void {
  const next = running.peek()?.calling.upcoming[0];
  if (next !== undefined) callChild(next);
}

/** Goes by who is there, after somebody came or went. */
export function callThoseThere(): void {
  changeCalling((calling, at) => callPresent(calling, at, lots));
}

/** Changes how rows are blended, in all windows, from now on. */
export function setBlending(blending: Blending): void {
  const now = running.peek();
  setSettings({ blending });
  if (now && now.blending !== blending) put({ ...now, blending });
}

/** The words that can be dictated after the sounds. */
export function setDictated(words: readonly string[]): void {
  const now = running.peek();
  if (now && now.dictated.join() !== words.join()) put({ ...now, dictated: words });
}

/** Records a mark at once, and asks what was heard instead. */
export function recordMark(spec: EventSpec): LogEvent | null {
  const now = running.peek();
  if (!now) return null;
  const mark = recordNowOf(now, spec).at(-1) ?? null;
  ask(mark?.id ?? null);
  return mark;
}

/** Records at once, after all that waits to be noted. */
export function recordNowOf(now: Running, ...specs: readonly EventSpec[]): readonly LogEvent[] {
  catchUp();
  const known = classState.peek().drills.has(now.drillId);
  return record(...(known ? [] : beginningOf(now, today())), ...specs);
}

/** Asks what was heard instead at this mark, or nothing any more. */
export function ask(mark: string | null): void {
  const now = running.peek();
  if (now && now.asking !== mark) put({ ...now, asking: mark });
}

/** Ends the warm-up before its end, or after it; it cannot be resumed then. */
export function finish(): void {
  catchUp();
  const now = running.peek();
  running.value = null;
  const known = now && classState.peek().drills.get(now.drillId);
  if (known && !known.ended) {
    record({ kind: 'ended', body: { drillId: now.drillId, complete: false } });
  }
}

/** Whether the warm-up under way has come to its end. */
export function isOver({ standing }: Pick<Running, 'standing'>): boolean {
  return standing.at >= standing.order.length;
}

/** Draws who reads next from those who are there. */
const lots: Lots = {
  get present() {
    return present.peek();
  },
  draw: (calls, count) =>
    nextChildren({ present: present.peek(), calls }, count, makeRandom(freshSeed())),
};

/** So many of the last calls are looked back at. */
const CALLS_BACK = 400;

function begin(what: Pick<Running, 'drillId' | 'groupId' | 'drill'>, standing: Standing): void {
  const { blending, calling: on } = settings.peek();
  const before = [...classState.peek().drills.values()].flatMap(({ calls }) => calls);
  const calls = before.slice(-CALLS_BACK).map(({ child }) => child);
  const calling = turnCalling(callNobody(calls), on && standing.at === 0, standing.at, lots);
  put({ ...what, standing, blending, calling, dictated: [], asking: null });
  if (on && standing.at > 0) setCalling(true);
}

function noteLater(before: Running, after: Running, what: Act): void {
  afterPaint(() => {
    const known = classState.peek().drills.get(before.drillId);
    const events = eventsBetween(before, after, what, known);
    if (events.length > 0) {
      record(...(known ? [] : beginningOf(before, today(), what !== 'skip')), ...events);
    }
  });
}

function put(some: Omit<Running, 'classId' | 'count' | 'by'>): void {
  const state: Running = {
    ...some,
    classId: classState.peek().id,
    count: (running.peek()?.count ?? 0) + 1,
    by,
  };
  link.send(state);
  running.value = state;
}

function isNewer(one: Running, other: Running | null): boolean {
  if (!other || one.count !== other.count) return one.count > (other?.count ?? -1);
  return one.by > other.by;
}

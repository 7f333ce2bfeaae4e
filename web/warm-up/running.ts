/**
 * The warm-up that is being run, the same in every window of this browser: the
 * stage before the class, the desk before the teacher. One of them leads and
 * notes what came of each act (core/warm-up/lead.ts). What is done shows at once
 * and is noted after the next frame; a mark is noted at once, where it is made.
 */
import { computed, signal } from '@preact/signals';
import type { Drill } from '../../core/drills/drill.ts';
import type { DrillRecord } from '../../core/log/class-state.ts';
import type { EventSpec, LogEvent } from '../../core/log/event.ts';
import { nextChildren } from '../../core/log/next-child.ts';
import { drillsOf } from '../../core/log/recent.ts';
import { makeRandom } from '../../core/random.ts';
import { callNobody, type Lots, turnCalling } from '../../core/warm-up/calling.ts';
import { type Deed, mannerOf } from '../../core/warm-up/deed.ts';
import {
  hear,
  type Led,
  leave,
  type Noted,
  perform as performIn,
  type Step,
  takeOver,
} from '../../core/warm-up/lead.ts';
import { type Moment, momentsOf } from '../../core/warm-up/moments.ts';
import { beginningOf, changeOf, eventsBetween } from '../../core/warm-up/noted.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import {
  type Act,
  type Blending,
  hiddenOf,
  type Standing,
  standingAt,
} from '../../core/warm-up/standing.ts';
import { takenUpAt } from '../../core/warm-up/taken-up.ts';
import { afterPaint, catchUp } from '../device/after-paint.ts';
import { newId } from '../device/log/ids.ts';
import { present } from '../state/absent.ts';
import { today } from '../state/day.ts';
import { classState, group, record } from '../state/open-class.ts';
import { freshSeed } from '../state/plan.ts';
import { setSettings, settings } from '../state/settings.ts';
import { getInTouch } from './in-touch.ts';

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

const me = newId();
let waiting: Led['waiting'] = [];
let patience: ReturnType<typeof setTimeout> | null = null;

const inTouch = getInTouch({
  name: 'sweepline.warm-up',
  me,
  newKey: newId,
  known: () => running.peek(),
  calledBefore,
  onSaid(said) {
    if (said.kind === 'state' && said.running.classId !== classState.peek().id) return;
    take(hear(ledHere(), me, said, lots));
  },
});

/** Asks the other windows for the warm-up under way. */
export function askOthers(): void {
  inTouch.ask();
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

/** How many cards of the row are still face down. */
export function hiddenNow(now: Running): number {
  return hiddenOf(now.standing, mannerOf(now, moments.value));
}

/** Does something, here and in the other windows; false if nothing came of it. */
export function perform(what: Act): boolean {
  return doHere({ does: 'act', act: what });
}

/** Begins or stops calling on children. */
export function setCalling(on: boolean): void {
  if (doHere({ does: 'calling', on })) setSettings({ calling: on });
}

/** Calls on this child for what is up. */
export function callChild(child: string): void {
  if (doHere({ does: 'call', child })) setSettings({ calling: true });
}

/** Another child reads what is up. */
export function callAnother(): void {
  const next = running.peek()?.calling.upcoming[0];
  if (next !== undefined) callChild(next);
}

/** Goes by who is there, after somebody came or went. */
export function callThoseThere(): void {
  doHere({ does: 'present' });
}

/** Changes how rows are blended, in all windows, from now on. */
export function setBlending(blending: Blending): void {
  setSettings({ blending });
  doHere({ does: 'blending', blending });
}

/** The words that can be dictated after the sounds. */
export function setDictated(words: readonly string[]): void {
  doHere({ does: 'dictated', words });
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
  doHere({ does: 'asking', mark });
}

/** Ends the warm-up before its end, or after it; it cannot be resumed then. */
export function finish(): void {
  catchUp();
  const now = running.peek();
  running.value = null;
  waiting = [];
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

/** The children called in other drills than this one, oldest first. */
function calledBefore(drillId: string): readonly string[] {
  const others = [...classState.peek().drills.values()].filter(({ id }) => id !== drillId);
  return others.flatMap(({ calls }) => calls.map(({ child }) => child)).slice(-CALLS_BACK);
}

/** This window begins and so leads. */
function begin(what: Pick<Running, 'drillId' | 'groupId' | 'drill'>, standing: Standing): void {
  const { blending, calling: on } = settings.peek();
  const before = [...classState.peek().drills.values()].flatMap(({ calls }) => calls);
  const calls = before.slice(-CALLS_BACK).map(({ child }) => child);
  const calling = turnCalling(callNobody(calls), on && standing.at === 0, standing.at, lots);
  const begun: Running = {
    ...what,
    standing,
    blending,
    calling,
    dictated: [],
    asking: null,
    classId: classState.peek().id,
    count: (running.peek()?.count ?? 0) + 1,
    by: me,
  };
  take({
    led: { running: begun, waiting: [] },
    say: [{ kind: 'state', running: begun, granted: null }],
    note: [],
  });
  if (on && standing.at > 0) setCalling(true);
}

function ledHere(): Led | null {
  const now = running.peek();
  return now && { running: now, waiting };
}

function doHere(deed: Deed): boolean {
  const led = ledHere();
  const step = led && performIn(led, me, { id: newId(), deed }, lots, moments.peek());
  take(step);
  return step !== null;
}

/** Goes on from a step: shows it, tells the others, notes what is noted here. */
function take(step: Step | null): void {
  if (step === null) return;
  const { led, say, note } = step;
  waiting = led.waiting;
  running.value = led.running;
  for (const said of say) inTouch.say(said);
  for (const noted of note) noteLater(noted);
  if (patience !== null) clearTimeout(patience);
  patience = waiting.length === 0 ? null : setTimeout(takeLead, PATIENCE);
}

/** So long a lead has to answer, in milliseconds. */
const PATIENCE = 1000;

function takeLead(): void {
  const led = ledHere();
  if (led) take(takeOver(led, me));
}

globalThis.addEventListener?.('pagehide', () => {
  const led = ledHere();
  if (led) for (const said of leave(led, me)) inTouch.say(said);
});
globalThis.addEventListener?.('pageshow', ({ persisted }) => {
  if (persisted) askOthers();
});

function noteLater({ before, after, what }: Noted): void {
  afterPaint(() => {
    const known = classState.peek().drills.get(before.drillId);
    const events = eventsBetween(before, after, what, known);
    if (events.length > 0) {
      record(...(known ? [] : beginningOf(before, today(), what !== 'skip')), ...events);
    }
  });
}

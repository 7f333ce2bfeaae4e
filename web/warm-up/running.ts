/**
 * The warm-up that is being run, the same in every window of this browser: the
 * stage before the class, the desk before the teacher. One of them leads and
 * notes what came of each act (core/warm-up/lead.ts). What is done shows at once
 * and is noted after the next frame; a mark is noted at once, where it is made.
 */

import { computed, effect, signal } from '@preact/signals';
import type { Drill } from '../../core/drills/drill.ts';
import { type ChildId, type DrillId, drillId, type EventId, eventId } from '../../core/ids.ts';
import type { DrillRecord } from '../../core/log/class-state.ts';
import { readDrill } from '../../core/log/drill-record.ts';
import type { EventSpec, LogEvent } from '../../core/log/event.ts';
import { drillsOf } from '../../core/log/recent.ts';
import { makeRandom } from '../../core/random.ts';
import { callNobody, callTakenUp, type Lots, turnCalling } from '../../core/warm-up/calling.ts';
import { type Deed, mannerOf } from '../../core/warm-up/deed.ts';
import { isToFollow } from '../../core/warm-up/follow.ts';
import { mayOnWall } from '../../core/warm-up/for-wall.ts';
import { type GroupDay, groupDay } from '../../core/warm-up/group-day.ts';
import {
  hear,
  type Led,
  leave,
  type Noted,
  perform as performIn,
  type Said,
  type Step,
  takeOver,
} from '../../core/warm-up/lead.ts';
import { type Moment, momentsOf } from '../../core/warm-up/moments.ts';
import { nextChildren } from '../../core/warm-up/next-child.ts';
import { noteAside } from '../../core/warm-up/note-aside.ts';
import { beginningOf, changeOf, eventsBetween } from '../../core/warm-up/noted.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import {
  type Act,
  type Blending,
  hiddenOf,
  standingAt,
  standingAtEnd,
} from '../../core/warm-up/standing.ts';
import { takenUpAt } from '../../core/warm-up/taken-up.ts';
import { afterPaint, catchUp } from '../device/after-paint.ts';
import { newId } from '../device/log/ids.ts';
import { present } from '../state/absent.ts';
import { today } from '../state/day.ts';
import { readsAlong } from '../state/my-right.ts';
import { classState, group, record } from '../state/open-class.ts';
import { freshSeed } from '../state/plan.ts';
import { asked } from '../state/route.ts';
import { setSettings, settings } from '../state/settings.ts';
import { wall } from '../state/wall.ts';
import { getInTouch } from './in-touch.ts';

/** The warm-up under way; null when there is none. */
export const running = signal<Running | null>(null);

const drill = computed(() => running.value?.drill ?? null);

/** Its moments. */
export const moments = computed<readonly Moment[]>(() =>
  drill.value ? momentsOf(drill.value) : [],
);

/** What the log knows of it, or while she is just looking would know; null until something of it was recorded. */
export const recordNow = computed<DrillRecord | null>(() => {
  const now = running.value;
  if (now?.rehearsed) return readDrill(now.rehearsed);
  return (now && classState.value.drills.get(now.drillId)) ?? null;
});

/** Whether the device that leads has not answered for a while, so that she may lead from here instead. */
export const leadIsSilent = signal(false);

const me = newId();
let waiting: Led['waiting'] = [];
let wishes: readonly (Said & { readonly kind: 'wish' })[] = [];
/** The other device from which it is led; null when it is led from this one. */
export const ledFrom = signal<string | null>(null);
let asking = 0;
let patience: ReturnType<typeof setTimeout> | null = null;

const inTouch = getInTouch({
  name: 'sweepline.warm-up',
  me,
  newKey: newId,
  known: () => running.peek(),
  calledBefore,
  onSaid(said, afar) {
    if (said.kind === 'state' && said.running.classId !== classState.peek().id) return;
    if (afar !== null && !concerns(said)) return;
    // Who reads along yields to whoever leads, whatever was looked at here.
    const led = afar !== null && readsAlong.peek() ? null : ledHere();
    take(hear(led, me, said, lots));
    if (said.kind === 'state' && running.peek()?.by === said.running.by) ledFrom.value = afar;
  },
});

/** Asks the other windows for the warm-up under way. */
export function askOthers(): void {
  inTouch.ask();
}

/**
 * Begins a warm-up from its first card. It is recorded once something of it is done; where this device only
 * reads along it is just looked at.
 */
export function start(planned: Drill): void {
  beginAnew(planned, readsAlong.peek() ? [] : null);
}

/** Runs a warm-up just to look at it: everything works, and no log is told anything of it. */
export function rehearse(planned: Drill): void {
  beginAnew(planned, []);
}

/** Takes up a warm-up where the log says that it stood, with the child whose turn it was. */
export function resume(record: DrillRecord): void {
  takeUpWith(record.drill, record);
}

/** Goes on where a warm-up stood, with its plan as it was changed since. */
export function goOnWith(planned: Drill, begun: DrillRecord): void {
  const standing = takenUpAt(begun, momentsOf(planned));
  record(...changeOf({ drillId: begun.id, drill: planned, standing }, begun.drill));
  takeUpWith(planned, begun);
}

/** How the warm-up of the group at work stands today. */
export const dayNow = computed<GroupDay>(() =>
  groupDay(drillsOf(classState.value, group.value.id), today()),
);

/** The group's drill of today that was begun and has not ended; null when there is none. */
export const unfinished = computed<DrillRecord | null>(() =>
  dayNow.value.kind === 'under-way' ? dayNow.value.record : null,
);

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
export function callChild(child: ChildId): void {
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
  const known = recordNow.peek() !== null;
  return note(now, ...(known ? [] : beginningOf(now, today())), ...specs);
}

/** Asks what was heard instead at this mark, or nothing any more. */
export function ask(mark: EventId | null): void {
  doHere({ does: 'asking', mark });
}

/** Leaves what was just looked at; nothing of it stays. */
export function stopLooking(): void {
  if (running.peek()?.rehearsed) leaveIt();
}

/** Ends a warm-up before its end: it is not under way any more. */
export function finish({ id, ended }: Pick<DrillRecord, 'id' | 'ended'>): void {
  catchUp();
  if (running.peek()?.drillId === id) leaveIt();
  if (ended === null) record({ kind: 'ended', body: { drillId: id, complete: false } });
}

/** Leaves the warm-up under way in this window; nothing is noted of that. */
export function leaveIt(): void {
  running.value = null;
  waiting = [];
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
function calledBefore(drill: DrillId): readonly ChildId[] {
  const others = [...classState.peek().drills.values()].filter(({ id }) => id !== drill);
  return others.flatMap(({ calls }) => calls.map(({ child }) => child)).slice(-CALLS_BACK);
}

function beginAnew(drill: Drill, rehearsed: Running['rehearsed']): void {
  const standing = standingAt(momentsOf(drill).length);
  const id = drillId(newId());
  const calling = turnCalling(
    callNobody(calledBefore(id)),
    settings.peek().calling,
    standing.at,
    lots,
  );
  begin({ drillId: id, groupId: group.peek().id, drill, standing, calling, rehearsed });
}

/** Goes on with a warm-up as the log has it, by this plan of it; one that has ended stands at its end. */
function takeUpWith(drill: Drill, begun: DrillRecord): void {
  const { id: drillId, groupId } = begun;
  const all = momentsOf(drill);
  const stood = takenUpAt(begun, all);
  const standing = begun.ended === null ? stood : standingAtEnd(stood);
  const before = { on: settings.peek().calling, calls: calledBefore(drillId) };
  const calling = callTakenUp(standing, begun.calls, all, before);
  const rehearsed = readsAlong.peek() ? [] : null;
  begin({ drillId, groupId, drill, standing, calling, rehearsed });
  if (!isOver({ standing })) callThoseThere();
}

/**
 * This window begins and so leads. The count is never behind the clock in milliseconds, so that what
 * is begun again counts for more than what another window still shows.
 */
function begin(
  what: Pick<Running, 'drillId' | 'groupId' | 'drill' | 'standing' | 'calling' | 'rehearsed'>,
): void {
  const begun: Running = {
    ...what,
    blending: settings.peek().blending,
    dictated: [],
    asking: null,
    classId: classState.peek().id,
    count: Math.max((running.peek()?.count ?? 0) + 1, Date.now()),
    by: me,
  };
  take({
    led: { running: begun, waiting: [] },
    say: [{ kind: 'state', running: begun, granted: null }],
    note: [],
  });
}

/** What was done here and the lead has not answered yet, oldest first. */
export function waitingHere(): Led['waiting'] {
  return waiting;
}

function ledHere(): Led | null {
  const now = running.peek();
  return now && { running: now, waiting };
}

function doHere(deed: Deed): boolean {
  if (wall.peek() !== null && !mayOnWall(deed)) return false;
  const led = ledHere();
  if (led && isFollowing(led.running)) return false;
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
  if (led.running.by === me) ledFrom.value = null;
  for (const said of say) inTouch.say(said);
  for (const noted of note) noteLater(noted);
  const ids = new Set(waiting.map(({ id }) => id));
  wishes = [...wishes, ...say.filter((said) => said.kind === 'wish')].filter(({ id }) =>
    ids.has(id),
  );
  if (patience !== null) clearTimeout(patience);
  patience = waiting.length === 0 ? null : setTimeout(askAgain, PATIENCE);
  if (waiting.length > 0) return;
  asking = 0;
  leadIsSilent.value = false;
}

/** So long a lead has to answer, in milliseconds. */
const PATIENCE = 1000;

/** A lead on another device that has not answered so often may be away for longer. */
const SILENT_AFTER = 3;

/**
 * The lead has not answered. A window of this browser was closed, and this one leads from now on. Another
 * device may only be out of reach: it is asked again, in order, and nothing is noted twice.
 */
function askAgain(): void {
  if (ledFrom.peek() === null) {
    takeLead();
    return;
  }
  asking += 1;
  leadIsSilent.value = asking >= SILENT_AFTER;
  for (const wish of wishes) inTouch.say(wish);
  patience = setTimeout(askAgain, PATIENCE);
}

/** This window leads from now on, and what waited for an answer is noted here. A wall never leads. */
export function takeLead(): void {
  if (wall.peek() !== null || readsAlong.peek()) return;
  const led = ledHere();
  ledFrom.value = null;
  if (led) take(takeOver(led, me));
}

/** Whether this device only looks on at a warm-up. */
function isFollowing({ rehearsed }: Pick<Running, 'rehearsed'>): boolean {
  return readsAlong.peek() && rehearsed === null;
}

/** Whether what another device says is to be heard here. */
function concerns(said: Said): boolean {
  const own = running.peek();
  if (said.kind === 'wish') return own?.drillId === said.drillId;
  const showsAny = asked.peek() === FOLLOWING || wall.peek() !== null;
  return isToFollow(own, said.running, { groupId: group.peek().id, showsAny });
}

/** What the address of a stage or desk asks for when it shows whatever is led on another device. */
export const FOLLOWING = 'follow';

let there = '';

/** Who came or went may be said in another window, and be heard here after its wish: then this one looks again. */
effect(() => {
  const now = present.value.join(' ');
  if (now === there) return;
  there = now;
  const led = running.peek();
  if (led?.by === me && led.groupId === group.peek().id && !isOver(led)) callThoseThere();
});

globalThis.addEventListener?.('pagehide', () => {
  const led = ledHere();
  if (led) for (const said of leave(led, me)) inTouch.say(said);
});
globalThis.addEventListener?.('pageshow', ({ persisted }) => {
  if (persisted) askOthers();
});

function noteLater({ before, after, what, late }: Noted): void {
  afterPaint(() => {
    const known =
      before.rehearsed === null
        ? classState.peek().drills.get(before.drillId)
        : (recordNow.peek() ?? undefined);
    const events = eventsBetween(before, after, what, known, late);
    if (events.length > 0) {
      note(before, ...(known ? [] : beginningOf(before, today(), what !== 'skip')), ...events);
    }
  });
}

/** Adds to the log; of a warm-up that is just looked at, to what would have been noted. */
function note(what: Running, ...specs: readonly EventSpec[]): readonly LogEvent[] {
  if (wall.peek() !== null || isFollowing(what)) return [];
  if (what.rehearsed === null) return record(...specs);
  const now = running.peek();
  if (now?.drillId !== what.drillId || now.rehearsed === null) return [];
  const stamp = { classId: now.classId, by: me, now: Date.now(), newId: () => eventId(newId()) };
  const noted = noteAside(now.rehearsed, specs, stamp);
  doHere({ does: 'aside', noted });
  return noted;
}

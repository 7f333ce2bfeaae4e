/**
 * This window among those that show the warm-up under way. One of them leads and notes what came of each act
 * (core/warm-up/lead.ts); the others ask it, and go on alone when it does not answer. What is done shows at
 * once and is noted after the next frame.
 */

import { effect, signal } from '@preact/signals';
import { eventId } from '../../core/ids.ts';
import type { EventSpec, LogEvent } from '../../core/log/event.ts';
import type { Deed } from '../../core/warm-up/deed.ts';
import { isToFollow } from '../../core/warm-up/follow.ts';
import { mayOnWall } from '../../core/warm-up/for-wall.ts';
import {
  hear,
  type LeadStep,
  type Led,
  leave,
  type Noted,
  perform,
  type Said,
  takeOver,
} from '../../core/warm-up/lead.ts';
import { noteAside } from '../../core/warm-up/note-aside.ts';
import { beginningOf, eventsBetween } from '../../core/warm-up/noted.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import { afterPaint } from '../device/after-paint.ts';
import { newId } from '../device/log/ids.ts';
import { present } from '../state/absent.ts';
import { today } from '../state/day.ts';
import { readsAlong } from '../state/my-right.ts';
import { classState, group, record } from '../state/open-class.ts';
import { asked } from '../state/route.ts';
import { wall } from '../state/wall.ts';
import { getInTouch } from './in-touch.ts';
import { calledBefore, lots } from './lots.ts';
import { isOver, moments, recordNow, running } from './running.ts';

/** Whether the device that leads has not answered for a while, so that she may lead from here instead. */
export const leadIsSilent = signal(false);

/** The other device from which it is led; null when it is led from this one. */
export const ledFrom = signal<string | null>(null);

/** What the address of a stage or desk asks for when it shows whatever is led on another device. */
export const FOLLOWING = 'follow';

/** So long a lead has to answer, in milliseconds. */
const PATIENCE = 1000;

/** A lead on another device that has not answered so often may be away for longer. */
const SILENT_AFTER = 3;

const me = newId();
let waiting: Led['waiting'] = [];
let wishes: readonly (Said & { readonly kind: 'wish' })[] = [];
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

/** A warm-up as it begins, before a window leads it. */
export type Begun = Omit<Running, 'classId' | 'count' | 'by'>;

/**
 * This window begins and so leads. The count is never behind the clock in milliseconds, so that what
 * is begun again counts for more than what another window still shows.
 */
export function leadWith(what: Begun): void {
  const begun: Running = {
    ...what,
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

/** Does something, here and in the other windows; false if nothing came of it. */
export function doHere(deed: Deed): boolean {
  if (wall.peek() !== null && !mayOnWall(deed)) return false;
  const led = ledHere();
  if (led && isFollowing(led.running)) return false;
  const step = led && perform(led, me, { id: newId(), deed }, lots, moments.peek());
  take(step);
  return step !== null;
}

/** What was done here and the lead has not answered yet, oldest first. */
export function waitingHere(): Led['waiting'] {
  return waiting;
}

/** This window leads from now on, and what waited for an answer is noted here. A wall never leads. */
export function takeLead(): void {
  if (wall.peek() !== null || readsAlong.peek()) return;
  const led = ledHere();
  ledFrom.value = null;
  if (led) take(takeOver(led, me));
}

/** Leaves the warm-up under way in this window; nothing is noted of that. */
export function leaveIt(): void {
  running.value = null;
  waiting = [];
}

/** Adds to the log; of a warm-up that is just looked at, to what would have been noted. */
export function note(what: Running, ...specs: readonly EventSpec[]): readonly LogEvent[] {
  if (wall.peek() !== null || isFollowing(what)) return [];
  if (what.rehearsed === null) return record(...specs);
  const now = running.peek();
  if (now?.drillId !== what.drillId || now.rehearsed === null) return [];
  const stamp = { classId: now.classId, by: me, now: Date.now(), newId: () => eventId(newId()) };
  const noted = noteAside(now.rehearsed, specs, stamp);
  doHere({ does: 'aside', noted });
  return noted;
}

function ledHere(): Led | null {
  const now = running.peek();
  return now && { running: now, waiting };
}

/** Goes on from a step: shows it, tells the others, notes what is noted here. */
function take(step: LeadStep | null): void {
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

let there = '';

/** Who came or went may be said in another window, and be heard here after its wish: then this one looks again. */
effect(() => {
  const now = present.value.join(' ');
  if (now === there) return;
  there = now;
  const led = running.peek();
  if (led?.by === me && led.groupId === group.peek().id && !isOver(led))
    doHere({ does: 'present' });
});

globalThis.addEventListener?.('pagehide', () => {
  const led = ledHere();
  if (led) for (const said of leave(led, me)) inTouch.say(said);
});
globalThis.addEventListener?.('pageshow', ({ persisted }) => {
  if (persisted) askOthers();
});

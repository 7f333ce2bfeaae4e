/**
 * What is done in the warm-up under way, from any window: it shows at once, here and in the others. Acts are
 * noted by the window that leads; a mark is noted at once, where it is made.
 */
import type { ChildId, EventId } from '../../core/ids.ts';
import type { EventSpec, LogEvent } from '../../core/log/event.ts';
import { beginningOf } from '../../core/warm-up/noted.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import type { Act, Blending } from '../../core/warm-up/standing.ts';
import { catchUp } from '../device/after-paint.ts';
import { today } from '../state/day.ts';
import { setSettings } from '../state/settings.ts';
import { doHere, note } from './lead-here.ts';
import { recordNow, running } from './running.ts';

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

/** Asks what was heard instead at this mark, or nothing any more. */
export function ask(mark: EventId | null): void {
  doHere({ does: 'asking', mark });
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

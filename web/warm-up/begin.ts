/** How a warm-up comes to be under way in this window, which then leads it, and how it is left. */
import type { Drill } from '../../core/drills/drill.ts';
import { drillId } from '../../core/ids.ts';
import type { DrillRecord } from '../../core/log/class-state.ts';
import { callNobody, callTakenUp, turnCalling } from '../../core/warm-up/calling.ts';
import { momentsOf } from '../../core/warm-up/moments.ts';
import { changeOf } from '../../core/warm-up/noted.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import { standingAt, standingAtEnd } from '../../core/warm-up/standing.ts';
import { takenUpAt } from '../../core/warm-up/taken-up.ts';
import { catchUp } from '../device/after-paint.ts';
import { newId } from '../device/log/ids.ts';
import { readsAlong } from '../state/my-right.ts';
import { group, record } from '../state/open-class.ts';
import { settings } from '../state/settings.ts';
import { callThoseThere } from './acts.ts';
import { type Begun, leadWith, leaveIt } from './lead-here.ts';
import { calledBefore, lots } from './lots.ts';
import { isOver, running } from './running.ts';

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

/** It begins by her settings, with nothing dictated and nothing asked. */
function begin(what: Omit<Begun, 'blending' | 'dictated' | 'asking'>): void {
  leadWith({ ...what, blending: settings.peek().blending, dictated: [], asking: null });
}

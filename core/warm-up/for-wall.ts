import type { DrillId } from '../ids.ts';
import { WHOLE_CLASS } from '../log/class-state.ts';
import { isNumber, isObject, isText } from '../log/is-value.ts';
import type { Deed } from './deed.ts';
import type { Said } from './lead.ts';
import { NOBODY } from './lead.ts';
import type { Plan, SentPlace } from './sent.ts';
import type { Act } from './standing.ts';

/** What a wall may ask of the lead by its own keys: to go on or back, to sweep, to be blank. */
const WALL_ACTS: readonly Act[] = ['next', 'back', 'sweep', 'pause'];

/** Whether a wall may do this. */
export function mayOnWall(deed: Deed): boolean {
  return deed.does === 'act' && WALL_ACTS.includes(deed.act);
}

/** Who leads, as a wall is told when nobody does: a wall never leads. */
const AWAY = 'away';

/** The plan as a wall is told it: its cards and words, no group and no child. */
export function planForWall(plan: Plan): Plan {
  return { ...plan, groupId: WHOLE_CLASS, who: [] };
}

/** Where a warm-up stands, as a wall is told it: who reads is left out. Null for one that is only looked at. */
export function placeForWall(place: SentPlace): SentPlace | null {
  if (place.rehearsed !== null) return null;
  const by = place.by === NOBODY ? AWAY : place.by;
  return { ...place, by, on: false, readers: [], upcoming: [], asking: null };
}

/** The wish of a wall in a warm-up, with nothing in it but what a wall may ask; null for anything else. */
export function wishOfWall(value: unknown, drillId: DrillId): (Said & { kind: 'wish' }) | null {
  if (!isObject(value) || value.kind !== 'wish' || value.drillId !== drillId) return null;
  const { id, from, deed } = value;
  if (!isText(id) || !isNumber(from) || !isObject(deed) || deed.does !== 'act') return null;
  const act = WALL_ACTS.find((one) => one === deed.act);
  return act ? { kind: 'wish', id, drillId, from, deed: { does: 'act', act } } : null;
}

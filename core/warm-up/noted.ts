/** What the log is told of a warm-up: pure, from how it stood before and after. */
import type { ChildId, DrillId, EventId } from '../ids.ts';
import type { DrillRecord } from '../log/class-state.ts';
import type { EventSpec } from '../log/event.ts';
import { readerAt } from './calling.ts';
import { cardsOf, type Moment, momentsOf } from './moments.ts';
import type { Running } from './run-state.ts';
import { type Act, momentAt } from './standing.ts';

type Noted = Pick<Running, 'drillId' | 'drill' | 'standing' | 'calling' | 'count'>;

/**
 * The events that begin a warm-up in the log, and the card that is up with its
 * reader, when it `counts`. `day` is the day in the classroom.
 */
export function beginningOf(
  now: Noted & Pick<Running, 'groupId'>,
  day: string,
  counts = true,
): readonly EventSpec[] {
  const { drillId, groupId, drill, standing, calling } = now;
  const first = momentAt(standing, momentsOf(drill));
  const reader = readerAt(calling, standing.at);
  return [
    { kind: 'begun', body: { drillId, groupId, day, drill } },
    ...(first && counts ? [shownAt(drillId, first, now.count)] : []),
    ...(first && counts && reader !== null ? [calledAt(drillId, first, reader)] : []),
  ];
}

/**
 * The events that change the plan of a warm-up that is under way, and what is up by the new one if
 * something else lay there before.
 */
export function changeOf(
  { drillId, drill, standing }: Pick<Noted, 'drillId' | 'drill' | 'standing'>,
  before: Noted['drill'],
): readonly EventSpec[] {
  const up = momentAt(standing, momentsOf(drill));
  const lay = momentsOf(before).find(({ part, place }) => part === up?.part && place === up.place);
  const stays = up && lay && cardsOf(up).join() === cardsOf(lay).join();
  return [
    { kind: 'replanned', body: { drillId, drill } },
    ...(up && !stays ? [shownAt(drillId, up)] : []),
  ];
}

/**
 * What came of an act; `known` is what the log has of this warm-up so far. What is noted `late`, after it was
 * done on another device, says its count.
 */
export function eventsBetween(
  before: Noted,
  after: Noted,
  what: Act,
  known: Pick<DrillRecord, 'shown' | 'calls'> | undefined,
  late = false,
): readonly EventSpec[] {
  const { drillId } = before;
  const all = momentsOf(before.drill);
  const { at } = before.standing;
  const left = momentAt(before.standing, all);
  const arrived = momentAt(after.standing, all);
  const moved = at !== after.standing.at;
  const isLeft = ({ part, place }: Pick<Moment, 'part' | 'place'>) =>
    part === left?.part && place === left.place;
  const undone: { readonly id: EventId }[] = [];
  const events: EventSpec[] = [];
  const reader = readerAt(before.calling, at);
  if (reader !== null && reader !== readerAt(after.calling, at)) {
    const call = known?.calls.findLast((one) => isLeft(one) && one.child === reader);
    if (call) undone.push(call);
  }
  if (moved && what === 'skip') {
    const shown = known?.shown.findLast(isLeft);
    if (shown) undone.push(shown);
  }
  if (left && after.standing.order.length > before.standing.order.length) {
    events.push({ kind: 'corrected', body: { drillId, part: left.part, place: left.place } });
  }
  if (moved) {
    events.push(
      arrived
        ? shownAt(drillId, arrived, late ? after.count : undefined)
        : { kind: 'ended', body: { drillId, complete: true } },
    );
  }
  const next = readerAt(after.calling, after.standing.at);
  if (arrived && next !== null && next !== readerAt(before.calling, after.standing.at)) {
    events.push(calledAt(drillId, arrived, next));
  }
  return [
    ...undone.map(({ id }): EventSpec => ({ kind: 'undone', body: { event: id } })),
    ...events,
  ];
}

function shownAt(drillId: DrillId, { part, place }: Moment, count?: number): EventSpec {
  return {
    kind: 'shown',
    body: { drillId, part, place, ...(count === undefined ? {} : { count }) },
  };
}

function calledAt(drillId: DrillId, { part, place }: Moment, child: ChildId): EventSpec {
  return { kind: 'called', body: { drillId, part, place, child } };
}

import type { Drill } from '../drills/drill.ts';
import type { EventId } from '../ids.ts';
import type { DrillRecord, EarlierPlan, Happening, Mark } from './class-state.ts';
import type { Amendment, DrillEvent, DrillPlace, EventOf, LogEvent } from './event.ts';

/**
 * Reads what came of a drill from its events in force, in their order. Null
 * while it is not known how it was begun: marks may come from another device
 * before the drill itself does. Begun twice, it is the drill that was first; what
 * is up and was noted a second time, as by two windows, came up once.
 */
export function readDrill(events: readonly DrillEvent[]): DrillRecord | null {
  const begun: EventOf<'begun'>[] = [];
  let ended: DrillRecord['ended'] = null;
  let up: DrillPlace | null = null;
  const changes: EventOf<'replanned'>[] = [];
  const shown: Happening[] = [];
  const calls: DrillRecord['calls'][number][] = [];
  const marks: Mark[] = [];
  const corrections: Happening[] = [];
  const amendments: Amendment[] = [];
  for (const event of events) {
    if (event.kind === 'shown') {
      if (!isSameMoment(up, event.body)) shown.push(happeningOf(event));
      up = event.body;
    } else if (event.kind === 'corrected') {
      corrections.push(happeningOf(event));
      up = null;
    } else if (event.kind === 'called') {
      calls.push({ ...happeningOf(event), child: event.body.child });
    } else if (event.kind === 'marked') {
      const { cards, broke, heard, child } = event.body;
      marks.push({ ...happeningOf(event), cards, broke, heard, child });
    } else if (event.kind === 'replanned') {
      changes.push(event);
      up = null;
    } else if (event.kind === 'amended') amendments.push(event.body);
    else if (event.kind === 'ended') ended = { at: event.at, complete: event.body.complete };
    else begun.push(event);
  }
  const [first] = begun;
  if (first === undefined) return null;
  const { drillId: id, groupId, day } = first.body;
  let { drill } = first.body;
  const earlier: EarlierPlan[] = [];
  for (const { at, body } of changes) {
    earlier.push({ drill, until: at });
    drill = body.drill;
  }
  const byMark = new Map<EventId, Amendment[]>();
  for (const amendment of amendments) {
    const list = byMark.get(amendment.mark);
    if (list) list.push(amendment);
    else byMark.set(amendment.mark, [amendment]);
  }
  return {
    id,
    begunBy: begun.map((event) => event.id),
    groupId,
    day,
    drill,
    earlier,
    at: first.at,
    shown,
    calls,
    marks: marks.map((mark) => amended(mark, byMark.get(mark.id) ?? [])),
    corrections,
    ended,
  };
}

/** The plan that a drill had at a time. */
export function planAt(
  { earlier, drill }: Pick<DrillRecord, 'earlier' | 'drill'>,
  at: number,
): Drill {
  return earlier.find(({ until }) => at < until)?.drill ?? drill;
}

function isSameMoment(one: DrillPlace | null, other: DrillPlace): boolean {
  return one?.part === other.part && one.place === other.place;
}

function happeningOf({
  id,
  at,
  body,
}: LogEvent & { readonly body: DrillPlace & { readonly count?: number } }): Happening {
  const { part, place, count } = body;
  return count === undefined ? { id, at, part, place } : { id, at, part, place, count };
}

function amended(mark: Mark, amendments: readonly Amendment[]): Mark {
  let now = mark;
  for (const { field, value } of amendments) {
    if (field === 'broke' && (value ?? 0) > mark.cards.length) continue;
    now = { ...now, [field]: value };
  }
  return now;
}

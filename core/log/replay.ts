import type { ClassId, EventId } from '../ids.ts';
import { readCheck } from './check-record.ts';
import { readCalendar } from './class-calendar.ts';
import { type CheckRecord, type ClassState, type DrillRecord, lineKey } from './class-state.ts';
import { readDrill } from './drill-record.ts';
import type { DrillEvent, LogEvent } from './event.ts';
import { addFact, eventsOf, type Facts, gatherFacts, latestOf } from './facts.ts';
import { type PapersRecord, readPapers } from './papers-record.ts';
import { readRoster } from './roster.ts';
import { changedIds, findStruck, isStruck, type Struck } from './struck.ts';

/**
 * The class that its events make. The order in which they come does not matter
 * and neither do repeats; events of other classes change nothing. Linear in the
 * events when they come nearly sorted, as logs do.
 *
 * Method: events are sorted into lists by what they can change, and each list
 * is read again when it has changed. So an event more and a log read from its
 * beginning cannot differ. The alternative, changing the class event by event,
 * needs a way back for every undoing and for every event that comes late.
 */
export function replay(classId: ClassId, events: readonly LogEvent[]): ClassState {
  return read(classId, gatherFacts(classId, events), null);
}

/**
 * The class with one event more: what `replay` gives for all of them. The same
 * value when the event was known already or is of another class. Costs about
 * what the event touches: one drill, one list.
 */
export function applyEvent(state: ClassState, event: LogEvent): ClassState {
  if (event.classId !== state.id) return state;
  const facts = addFact(state.facts, event);
  const same = (Object.keys(facts) as (keyof Facts)[]).every(
    (part) => facts[part] === state.facts[part],
  );
  return same ? state : read(state.id, facts, state);
}

/**
 * The class with some events more: what `replay` gives for all of them. Many are sorted in together, since
 * one after the other each would have its list read again.
 */
export function applyEvents(state: ClassState, events: readonly LogEvent[]): ClassState {
  return events.length > MANY
    ? replay(state.id, [...eventsOf(state.facts), ...events])
    : events.reduce(applyEvent, state);
}

/** More than anybody does at once by hand. */
const MANY = 64;

/** Reads the facts, and of the class before takes what cannot have changed. */
function read(id: ClassId, facts: Facts, before: ClassState | null): ClassState {
  const struck = findStruck(facts.undos);
  const inForce = <Event extends LogEvent>(events: readonly Event[]): readonly Event[] =>
    events.some((event) => isStruck(struck, event))
      ? events.filter((event) => !isStruck(struck, event))
      : events;
  const isAsBefore = unchanged(before, facts, struck);
  const roster =
    before && isAsBefore(facts.settings, before.facts.settings)
      ? rosterOf(before)
      : readRoster(inForce(facts.settings));
  const records: DrillRecord[] = [];
  const discarded: DrillRecord[] = [];
  for (const [drillId, events] of facts.drills) {
    const same = before && isAsBefore(events, before.facts.drills.get(drillId));
    const record = same ? before.drills.get(drillId) : readDrill(inForce(events));
    if (record) {
      records.push(record);
      continue;
    }
    const out = same ? before.discarded.get(drillId) : readDiscarded(events, struck);
    if (out) discarded.push(out);
  }
  const checks: CheckRecord[] = [];
  for (const [checkId, events] of facts.checks) {
    const record =
      before && isAsBefore(events, before.facts.checks.get(checkId))
        ? before.checks.get(checkId)
        : readCheck(inForce(events));
    if (record) checks.push(record);
  }
  const papers: PapersRecord[] = [];
  for (const [papersId, events] of facts.papers) {
    const record =
      before && isAsBefore(events, before.facts.papers.get(papersId))
        ? before.papers.get(papersId)
        : readPapers(inForce(events));
    if (record) papers.push(record);
  }
  return {
    id,
    ...roster,
    drills: asBegun(records),
    discarded: asBegun(discarded),
    checks: asBegun(checks),
    papers: asBegun(papers),
    calendar:
      before && isAsBefore(facts.calendar, before.facts.calendar)
        ? before.calendar
        : readCalendar(inForce(facts.calendar)),
    notes:
      before && isAsBefore(facts.notes, before.facts.notes)
        ? before.notes
        : inForce(facts.notes).map((event) => ({ id: event.id, at: event.at, ...event.body })),
    lines:
      before && isAsBefore(facts.lines, before.facts.lines)
        ? before.lines
        : new Map(inForce(facts.lines).map(({ body }) => [lineKey(body), body.text])),
    decisions:
      before && isAsBefore(facts.decisions, before.facts.decisions)
        ? before.decisions
        : inForce(facts.decisions).map((event) => ({ id: event.id, ...event.body })),
    last: latestOf(facts),
    facts,
  };
}

/** What a drill held that was taken out of the record; null when it never was begun. */
function readDiscarded(events: readonly DrillEvent[], struck: Struck): DrillRecord | null {
  return readDrill(events.filter((event) => event.kind === 'begun' || !isStruck(struck, event)));
}

/** Records by id, as they were begun. */
function asBegun<Record extends { readonly id: string; readonly at: number }>(
  records: readonly Record[],
): ReadonlyMap<Record['id'], Record> {
  const inOrder = records.toSorted(
    (left, right) => left.at - right.at || (left.id < right.id ? -1 : 1),
  );
  return new Map(inOrder.map((record) => [record.id, record]));
}

/** Whether a list of events is the one before, and nothing in it was undone or restored since. */
function unchanged(before: ClassState | null, facts: Facts, struck: Struck) {
  const changed =
    before === null || before.facts.undos === facts.undos
      ? new Set<EventId>()
      : changedIds(findStruck(before.facts.undos), struck);
  return (now: readonly LogEvent[], then: readonly LogEvent[] | undefined): boolean =>
    now === then && (changed.size === 0 || !now.some(({ id }) => changed.has(id)));
}

function rosterOf({ name, archived, namesBy, accent, groups, children, devices }: ClassState) {
  return { name, archived, namesBy, accent, groups, children, devices };
}

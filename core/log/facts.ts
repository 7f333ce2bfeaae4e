import type { CheckId, ClassId, DrillId, EventId, PapersId } from '../ids.ts';
import { inTime, type TimesSaid, timesSaid } from './dating.ts';
import type {
  CalendarEvent,
  CheckEvent,
  DrillEvent,
  EventOf,
  LogEvent,
  PapersEvent,
} from './event.ts';
import { compareEvents, insertEvent, sortEvents } from './event-order.ts';
import { understand } from './understand.ts';

/**
 * The events of a class, sorted into what each of them can change, so that one
 * more event asks for little to be read again. Every list is in the order of
 * events and holds each once, at the time when it counts.
 */
export interface Facts {
  readonly settings: readonly EventOf<'set'>[];
  readonly drills: ReadonlyMap<DrillId, readonly DrillEvent[]>;
  readonly checks: ReadonlyMap<CheckId, readonly CheckEvent[]>;
  readonly papers: ReadonlyMap<PapersId, readonly PapersEvent[]>;
  readonly calendar: readonly CalendarEvent[];
  readonly notes: readonly EventOf<'noted'>[];
  readonly lines: readonly EventOf<'wrote'>[];
  readonly decisions: readonly EventOf<'decided'>[];
  readonly undos: readonly EventOf<'undone'>[];
  readonly dates: readonly EventOf<'dated'>[];
  /** By id: events that count earlier than the time they bear, as they came. */
  readonly moved: ReadonlyMap<EventId, LogEvent>;
  /** Events of another version: kept and passed on. */
  readonly unknown: readonly LogEvent[];
}

/** The facts of a class. Events of other classes are left out. */
export function gatherFacts(classId: ClassId, events: readonly LogEvent[]): Facts {
  // Few classes have a time that was said otherwise, so nobody looks for one before it turns up.
  const facts = gather(classId, events, new Map());
  if (facts.dates.length === 0) return facts;
  const own = events.filter((event) => event.classId === classId);
  return gather(classId, own, timesSaid(own));
}

function gather(classId: ClassId, events: readonly LogEvent[], times: TimesSaid): Facts {
  const settings: EventOf<'set'>[] = [];
  const drills = new Map<DrillId, DrillEvent[]>();
  const checks = new Map<CheckId, CheckEvent[]>();
  const papers = new Map<PapersId, PapersEvent[]>();
  const calendar: CalendarEvent[] = [];
  const notes: EventOf<'noted'>[] = [];
  const lines: EventOf<'wrote'>[] = [];
  const decisions: EventOf<'decided'>[] = [];
  const undos: EventOf<'undone'>[] = [];
  const dates: EventOf<'dated'>[] = [];
  const moved = new Map<EventId, LogEvent>();
  const unknown: LogEvent[] = [];
  for (const came of events) {
    if (came.classId !== classId) continue;
    const event = inTime(came, times);
    if (event !== came) moved.set(came.id, came);
    const known = understand(event);
    if (known === null) unknown.push(event);
    else if (known.kind === 'set') settings.push(known);
    else if (known.kind === 'no-school' || known.kind === 'away') calendar.push(known);
    else if (known.kind === 'noted') notes.push(known);
    else if (known.kind === 'wrote') lines.push(known);
    else if (known.kind === 'decided') decisions.push(known);
    else if (known.kind === 'undone') undos.push(known);
    else if (known.kind === 'dated') dates.push(known);
    else if ('checkId' in known.body) addTo(checks, known.body.checkId, known as CheckEvent);
    else if ('papersId' in known.body) addTo(papers, known.body.papersId, known as PapersEvent);
    else addTo(drills, known.body.drillId, known as DrillEvent);
  }
  return {
    settings: sortEvents(settings),
    drills: sortedLists(drills),
    checks: sortedLists(checks),
    papers: sortedLists(papers),
    calendar: sortEvents(calendar),
    notes: sortEvents(notes),
    lines: sortEvents(lines),
    decisions: sortEvents(decisions),
    undos: sortEvents(undos),
    dates: sortEvents(dates),
    moved,
    unknown: sortEvents(unknown),
  };
}

/** The facts with one more event; every list that it does not touch is the same one as before. */
export function addFact(before: Facts, came: LogEvent): Facts {
  if (before.moved.has(came.id)) return before;
  if (came.kind === 'dated' && understand(came)) return addDate(before, came);
  const event = inTime(came, timesSaid(before.dates));
  const facts =
    event === came ? before : { ...before, moved: new Map(before.moved).set(came.id, came) };
  const known = understand(event);
  if (known === null) return { ...facts, unknown: insertEvent(facts.unknown, event) };
  if (known.kind === 'set') return { ...facts, settings: insertEvent(facts.settings, known) };
  if (known.kind === 'no-school' || known.kind === 'away') {
    return { ...facts, calendar: insertEvent(facts.calendar, known) };
  }
  if (known.kind === 'noted') return { ...facts, notes: insertEvent(facts.notes, known) };
  if (known.kind === 'wrote') return { ...facts, lines: insertEvent(facts.lines, known) };
  if (known.kind === 'undone') return { ...facts, undos: insertEvent(facts.undos, known) };
  if (known.kind === 'decided') {
    return { ...facts, decisions: insertEvent(facts.decisions, known) };
  }
  if (known.kind === 'dated') return facts;
  if ('checkId' in known.body) {
    const checks = insertIn(facts.checks, known.body.checkId, known as CheckEvent);
    return { ...facts, checks };
  }
  if ('papersId' in known.body) {
    const papers = insertIn(facts.papers, known.body.papersId, known as PapersEvent);
    return { ...facts, papers };
  }
  const drills = insertIn(facts.drills, known.body.drillId, known as DrillEvent);
  return { ...facts, drills };
}

type Lists<Id, Event> = ReadonlyMap<Id, readonly Event[]>;

function addTo<Id, Event>(lists: Map<Id, Event[]>, id: Id, event: Event): void {
  const list = lists.get(id);
  if (list) list.push(event);
  else lists.set(id, [event]);
}

function sortedLists<Id, Event extends LogEvent>(lists: Lists<Id, Event>): Lists<Id, Event> {
  return new Map([...lists].map(([id, list]) => [id, sortEvents(list)]));
}

/** The lists with one more event; the same ones when it was there. */
function insertIn<Id, Event extends LogEvent>(
  lists: Lists<Id, Event>,
  id: Id,
  event: Event,
): Lists<Id, Event> {
  const before = lists.get(id) ?? [];
  const after = insertEvent(before, event);
  return after === before ? lists : new Map(lists).set(id, after);
}

/** What is said of a time can move any event, so all are sorted again; it is rare. */
function addDate(facts: Facts, event: LogEvent): Facts {
  if (facts.dates.some(({ id }) => id === event.id)) return facts;
  return gatherFacts(event.classId, [...eventsOf(facts), event]);
}

/** Every event as it came, ordered by the times when they count. */
export function eventsOf(facts: Facts): readonly LogEvent[] {
  const sorted = listsOf(facts).flat().sort(compareEvents);
  return facts.moved.size === 0
    ? sorted
    : sorted.map((event) => facts.moved.get(event.id) ?? event);
}

/** The greatest time of all events; 0 for none. Every list ends with its latest. */
export function latestOf(facts: Facts): number {
  return listsOf(facts).reduce((latest, list) => Math.max(latest, list.at(-1)?.at ?? 0), 0);
}

function listsOf(facts: Facts): readonly (readonly LogEvent[])[] {
  const {
    settings,
    drills,
    checks,
    papers,
    calendar,
    notes,
    lines,
    decisions,
    undos,
    dates,
    unknown,
  } = facts;
  return [
    settings,
    ...drills.values(),
    ...checks.values(),
    ...papers.values(),
    calendar,
    notes,
    lines,
    decisions,
    undos,
    dates,
    unknown,
  ];
}

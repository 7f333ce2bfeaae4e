import type { DrillEvent, EventOf, LogEvent } from './event.ts';
import { insertEvent, sortEvents } from './event-order.ts';
import { understand } from './understand.ts';

/**
 * The events of a class, sorted into what each of them can change, so that one
 * more event asks for little to be read again. Every list is in the order of
 * events and holds each once.
 */
export interface Facts {
  readonly settings: readonly EventOf<'set'>[];
  readonly drills: ReadonlyMap<string, readonly DrillEvent[]>;
  readonly notes: readonly EventOf<'noted'>[];
  readonly decisions: readonly EventOf<'decided'>[];
  readonly undos: readonly EventOf<'undone'>[];
  /** Events of another version: kept and passed on. */
  readonly unknown: readonly LogEvent[];
}

/** The facts of a class. Events of other classes are left out. */
export function gatherFacts(classId: string, events: readonly LogEvent[]): Facts {
  const settings: EventOf<'set'>[] = [];
  const drills = new Map<string, DrillEvent[]>();
  const notes: EventOf<'noted'>[] = [];
  const decisions: EventOf<'decided'>[] = [];
  const undos: EventOf<'undone'>[] = [];
  const unknown: LogEvent[] = [];
  for (const event of events) {
    if (event.classId !== classId) continue;
    const known = understand(event);
    if (known === null) unknown.push(event);
    else if (known.kind === 'set') settings.push(known);
    else if (known.kind === 'noted') notes.push(known);
    else if (known.kind === 'decided') decisions.push(known);
    else if (known.kind === 'undone') undos.push(known);
    else {
      const list = drills.get(known.body.drillId);
      if (list) list.push(known);
      else drills.set(known.body.drillId, [known]);
    }
  }
  return {
    settings: sortEvents(settings),
    drills: new Map([...drills].map(([id, list]) => [id, sortEvents(list)])),
    notes: sortEvents(notes),
    decisions: sortEvents(decisions),
    undos: sortEvents(undos),
    unknown: sortEvents(unknown),
  };
}

/** The facts with one more event; every list that it does not touch is the same one as before. */
export function addFact(facts: Facts, event: LogEvent): Facts {
  const known = understand(event);
  if (known === null) return { ...facts, unknown: insertEvent(facts.unknown, event) };
  if (known.kind === 'set') return { ...facts, settings: insertEvent(facts.settings, known) };
  if (known.kind === 'noted') return { ...facts, notes: insertEvent(facts.notes, known) };
  if (known.kind === 'undone') return { ...facts, undos: insertEvent(facts.undos, known) };
  if (known.kind === 'decided') {
    return { ...facts, decisions: insertEvent(facts.decisions, known) };
  }
  const before = facts.drills.get(known.body.drillId) ?? [];
  const after = insertEvent(before, known);
  if (after === before) return facts;
  return { ...facts, drills: new Map(facts.drills).set(known.body.drillId, after) };
}

/** The greatest `at` of all events; 0 for none. Every list ends with its latest. */
export function latestOf(facts: Facts): number {
  const { settings, drills, notes, decisions, undos, unknown } = facts;
  let latest = 0;
  for (const list of [settings, notes, decisions, undos, unknown, ...drills.values()]) {
    latest = Math.max(latest, list.at(-1)?.at ?? 0);
  }
  return latest;
}

import { effect } from '@preact/signals';
import {
  array,
  custom,
  fallback,
  type GenericSchema,
  number,
  object,
  record as recordOf,
  safeParse,
  string,
} from 'valibot';
import { type ChildId, isChildId } from '../../core/ids.ts';
import { makeDay } from '../../core/learners/day.ts';
import type { ClassState } from '../../core/log/class-state.ts';
import type { EventSpec } from '../../core/log/event.ts';
import { type Shelf, shelf } from '../device/shelf.ts';
import { classState, isLookedAt, recordForGood, sharedAs } from './open-class.ts';

/**
 * Breaks and absences that an earlier version kept on this device alone, outside of the log. Each class
 * takes them over when it is opened for the first time since: the breaks, for they held for every class
 * of the device (a shared class has its own), and the absences of its children. What was kept stays
 * where it is, so that nothing is lost should the log not be. Ends with what comes back.
 */
export function takeOverKeptBefore(on: Shelf = shelf, keep = recordForGood): () => void {
  const begun = new Set<string>();
  return effect(() => {
    const state = classState.value;
    if (isLookedAt.value || state.last === 0 || begun.has(state.id)) return;
    begun.add(state.id);
    if (takenBy(on).includes(state.id)) return;
    const specs = keptBefore(state, on, sharedAs.peek() === null);
    queueMicrotask(async () => {
      if (classState.peek().id !== state.id) begun.delete(state.id);
      else if (specs.length === 0 || (await keep(...specs))) {
        on.write(TAKEN, JSON.stringify([...takenBy(on), state.id]));
      }
    });
  });
}

/** What a class does not know yet of what is kept on the device outside of its log. */
export function keptBefore(
  { calendar, children }: Pick<ClassState, 'calendar' | 'children'>,
  on: Shelf,
  withBreaks: boolean,
): readonly EventSpec[] {
  const { free } = parsed(on, 'school-days', breaks);
  const { day, children: those, before } = parsed(on, 'absent', absences);
  const known = new Set(calendar.off.map(({ first, last }) => `${first} ${last}`));
  const off = (withBreaks ? free : [])
    .map(({ from, to }) => ({ first: makeDay(from), last: makeDay(to) }))
    .filter(({ first, last }) => first <= last && !known.has(`${first} ${last}`));
  const away = Object.entries({ ...before, ...(day === '' ? {} : { [day]: those }) }).flatMap(
    ([on, ids]) =>
      ids
        .filter((child) => children.has(child) && !calendar.away.get(on)?.includes(child))
        .map((child) => ({ child, day: on, away: true })),
  );
  return [
    ...off.map((days): EventSpec => ({ kind: 'no-school', body: { ...days, holds: true } })),
    ...away.map((body): EventSpec => ({ kind: 'away', body })),
  ];
}

/** The classes that have taken it over, by id. */
const TAKEN = 'kept-before-taken';

const breaks = object({
  free: fallback(array(object({ from: number(), to: number() })), []),
});

const ids = array(custom<ChildId>(isChildId));
const absences = object({
  day: fallback(string(), ''),
  children: fallback(ids, []),
  before: fallback(recordOf(string(), ids), {}),
});

function takenBy(on: Shelf): readonly string[] {
  return parsed(on, TAKEN, fallback(array(string()), []));
}

/** What stands under a name, as far as it can be read. */
function parsed<Value>(on: Shelf, name: string, schema: GenericSchema<unknown, Value>): Value {
  let value: unknown = null;
  try {
    value = JSON.parse(on.read(name) ?? 'null');
  } catch {
    // Not ours to mend: what cannot be read stays.
  }
  const found = safeParse(schema, value ?? {});
  return found.success ? found.output : (safeParse(schema, {}).output as Value);
}

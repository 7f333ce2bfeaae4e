import { type ClassState, type DrillRecord, WHOLE_CLASS } from '../log/class-state.ts';
import type { Slip } from '../log/event.ts';
import { type Evidence, evidenceOf } from '../log/evidence.ts';
import { smallGroups } from '../log/roster.ts';
import { parseDay } from './day.ts';
import type { Observation } from './observation.ts';

/** What the model needs of a class. */
type ClassDrills = Pick<ClassState, 'drills' | 'groups' | 'children'>;

/**
 * What the drills of a class have shown, as they were begun.
 *
 * The first reading counts: what goes well after it was corrected is an echo,
 * and counts as practice only. A child called on read alone, and so did a child
 * of whom something was marked; all else was read together, and a mark on the
 * whole class says that it went wrong. In the auditory part the spellings of a
 * sound were looked for, which is another skill than reading them.
 *
 * A child's readings count for its small group of today, and for the whole
 * class after that; what the whole class reads together counts for every group.
 */
export function observationsOf(state: ClassDrills): readonly Observation[] {
  const observations: Observation[] = [];
  for (const record of state.drills.values()) addObservations(observations, record, state);
  return observations;
}

/** Adds what one drill has shown; nothing when its day is no day. */
function addObservations(list: Observation[], record: DrillRecord, state: ClassDrills): void {
  const day = parseDay(record.day);
  if (day === null) return;
  const together =
    record.groupId === WHOLE_CLASS
      ? [WHOLE_CLASS, ...smallGroups(state).map(({ id }) => id)]
      : [record.groupId];
  for (const evidence of evidenceOf(record)) {
    for (const child of readersOf(evidence)) {
      const mark = evidence.marks.find((one) => one.child === child);
      const cards = mark?.cards ?? evidence.cards;
      if (cards.length === 0) continue;
      list.push({
        day,
        child,
        groups: child === null ? together : groupsOf(child, state),
        task: evidence.part === 'auditory' ? 'spell' : 'read',
        cards,
        right: mark === undefined,
        broke: mark?.broke ?? null,
        heard: mark?.heard ? makeHeard(mark.heard) : null,
      });
    }
  }
}

/** Who read it, null for all together: those of whom something was marked, and who was called on. */
function readersOf({ marks, child: called }: Evidence): readonly (string | null)[] {
  if (marks.length === 0) return [called];
  const readers = new Set(marks.map(({ child }) => child));
  if (called === null) readers.add(null);
  else if (!readers.has(null)) readers.add(called);
  return [...readers];
}

function groupsOf(child: string, { children }: ClassDrills): readonly string[] {
  const group = children.get(child)?.group ?? null;
  return group === null ? [WHOLE_CLASS] : [group, WHOLE_CLASS];
}

function makeHeard(slip: Slip): string {
  return slip.kind === 'phoneme' ? slip.sound : slip.kind;
}

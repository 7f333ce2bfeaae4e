import type { ChildId, GroupId } from '../ids.ts';
import { readingOf } from '../log/check-record.ts';
import {
  type CheckRecord,
  type ClassState,
  type DrillRecord,
  WHOLE_CLASS,
} from '../log/class-state.ts';
import type { Slip } from '../log/event.ts';
import { type Evidence, evidenceOf } from '../log/evidence.ts';
import type { PapersRecord } from '../log/papers-record.ts';
import { smallGroups } from '../log/roster.ts';
import { attemptsOf, type PaperAttempt } from '../papers/attempts.ts';
import { isSpelled } from '../papers/spelling-shown.ts';
import { parseDay } from './day.ts';
import type { Observation } from './observation.ts';

/** What the model needs of a class. */
type ClassDrills = Pick<
  ClassState,
  'drills' | 'checks' | 'papers' | 'groups' | 'children' | 'calendar' | 'accent'
>;

/**
 * What the drills of a class have shown, as they were begun, then what its
 * short checks have, and then its spelling papers that have a date.
 *
 * The first reading counts: what goes well after it was corrected is an echo,
 * and counts as practice only. A child called on read alone, and so did a child
 * of whom something was marked; all else was read together, and a mark on the
 * whole class says that it went wrong. In the auditory part the spellings of a
 * sound were looked for, which is another skill than reading them.
 *
 * A child's readings count for its small group of today, and for the whole
 * class after that; what the whole class reads together counts for every group,
 * but not for who was away.
 */
export function observationsOf(state: ClassDrills): readonly Observation[] {
  const observations: Observation[] = [];
  const groups = groupsIn(state);
  for (const record of state.drills.values()) {
    addObservations(observations, record, groups, state.calendar.away.get(record.day) ?? []);
  }
  for (const record of state.checks.values()) addReadings(observations, record, groups);
  for (const record of state.papers.values()) addSpellings(observations, record, groups, state);
  return observations;
}

/** Adds what one drill has shown; nothing when its day is no day. */
function addObservations(
  list: Observation[],
  record: DrillRecord,
  groups: Groups,
  away: readonly ChildId[],
): void {
  const day = parseDay(record.day);
  if (day === null) return;
  const together = record.groupId === WHOLE_CLASS ? groups.all : [record.groupId];
  for (const evidence of evidenceOf(record)) {
    for (const child of readersOf(evidence)) {
      const mark = evidence.marks.find((one) => one.child === child);
      const cards = mark?.cards ?? evidence.cards;
      if (cards.length === 0) continue;
      list.push({
        day,
        child,
        groups: child === null ? together : groups.of(child),
        task: evidence.part === 'auditory' ? 'spell' : 'read',
        cards,
        right: mark === undefined,
        broke: mark?.broke ?? null,
        heard: mark?.heard ? makeHeard(mark.heard) : null,
        ...(child !== null && child !== evidence.child ? { from: 'mistake' } : {}),
        ...(child === null && away.length > 0 ? { away } : {}),
      });
    }
  }
}

/**
 * Adds what a child read in a check that has ended: every item it reached but
 * those left out, which were not read. What it corrected by itself went well;
 * of an item it hesitated at, it is not known which card it was.
 */
function addReadings(list: Observation[], record: CheckRecord, groups: Groups): void {
  const day = parseDay(record.day);
  if (day === null || record.ended === null) return;
  const { items, reached } = readingOf(record);
  items.slice(0, reached).forEach(({ cards }, at) => {
    const mark = record.marks.get(at);
    if (cards.length === 0 || mark?.outcome === 'left-out') return;
    const first = mark?.broke.toSorted((one, other) => one.card - other.card)[0];
    const right = mark === undefined || mark.outcome === 'self-corrected';
    list.push({
      day,
      child: record.child,
      groups: groups.of(record.child),
      task: 'read',
      cards,
      right,
      broke: right ? null : (first?.card ?? null),
      heard: !right && first?.heard ? makeHeard(first.heard) : null,
      from: 'check',
    });
  });
}

/**
 * Adds what children wrote: of a word spelled as it is, all its cards; else each card of which the sound
 * was heard, since where it was not, it cannot be told whether the spelling is known.
 */
function addSpellings(
  list: Observation[],
  record: PapersRecord,
  groups: Groups,
  { children, accent }: ClassDrills,
): void {
  const day = record.day === null ? null : parseDay(record.day);
  if (day === null) return;
  for (const attempt of attemptsOf(record, [...children.keys()], accent)) {
    const { child, said } = attempt;
    const of = { day, child, groups: groups.of(child), task: 'spell', from: 'check' } as const;
    for (const told of spellingsTold(attempt)) list.push({ ...of, ...told, heard: null });
    if (attempt.read === null) {
      const broke = attempt.cards.indexOf(null) + 1;
      list.push({
        ...of,
        cards: said.cards,
        right: broke === 0,
        broke: broke || null,
        heard: null,
      });
    }
  }
}

/** What an attempt that was written out tells of spellings. */
function spellingsTold({ read, said }: PaperAttempt) {
  if (read === null || read.answer !== 'attempt') return [];
  if (read.wordRight) return [{ cards: said.cards, right: true, broke: null }];
  return read.cards
    .filter((card) => card.heard && card.letters !== '')
    .map((card) => {
      const right = isSpelled(card);
      return { cards: [card.id], right, broke: right ? null : 1 };
    });
}

/** Who read it, null for all together: those of whom something was marked, and who was called on. */
function readersOf({ marks, child: called }: Evidence): readonly (ChildId | null)[] {
  if (marks.length === 0) return [called];
  const readers = new Set(marks.map(({ child }) => child));
  if (called === null) readers.add(null);
  else if (!readers.has(null)) readers.add(called);
  return [...readers];
}

/** The groups of a class by id: all of them, the whole class first, and those that a child's readings count for. */
interface Groups {
  readonly all: readonly GroupId[];
  readonly of: (child: ChildId) => readonly GroupId[];
}

function groupsIn(state: ClassDrills): Groups {
  const alone = [WHOLE_CLASS];
  const byChild = new Map<ChildId, readonly GroupId[]>();
  for (const { id, group } of state.children.values()) {
    byChild.set(id, group === null ? alone : [group, WHOLE_CLASS]);
  }
  return {
    all: [WHOLE_CLASS, ...smallGroups(state).map(({ id }) => id)],
    of: (child) => byChild.get(child) ?? alone,
  };
}

function makeHeard(slip: Slip): string {
  if (slip.kind === 'phoneme') return slip.sound;
  return slip.kind === 'letter' ? `letter ${slip.card}` : slip.kind;
}

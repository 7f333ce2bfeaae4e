/**
 * When a card should come back, by what is known of it and by nothing else: the first school day on
 * which it will have faded, or be too weak, or no longer sure, if it is not practiced until then. Never
 * before the next school day, and after twenty at the latest (the rule is ours).
 *
 * **Rejected.** A schedule by grades of a group's day (FSRS, docs/decisions/0009-due-by-what-is-known.md): the grade of many
 * voices says how many read, and what went well came back after a school year.
 */
import type { GroupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { lastHad } from './belief/last-had.ts';
import type { Day } from './day.ts';
import { chanceOfCard, type Estimate, estimateCard, type Who } from './estimate.ts';
import type { Known } from './known.ts';
import { everyWeekday, type SchoolDays } from './school-days.ts';
import { PUBLISHED_THRESHOLDS } from './thresholds.ts';

/** Why then: it will have faded, it is weak, it will not be sure any more, or it has been long. */
export type DueBecause = 'fading' | 'weak' | 'unsure' | 'long';

/** The day on which a card should come back. */
export interface Due {
  readonly day: Day;
  readonly because: DueBecause;
}

/** Losing so much of the chance that it had after practice is fading. */
const FADED = 0.05;
/** Below this it is weak. */
const WEAK = PUBLISHED_THRESHOLDS.secure;
/** An interval so much wider than after practice is unsure. */
const WIDER = 0.1;
const MOST_SCHOOL_DAYS = 20;

/**
 * When a card should come back to a child or group; null for one that they never had. Of a child its own
 * readings and those with its group are practice, and both its chance and how sure that is count; of a
 * group only the chance does, for a mean is surer than any child.
 */
export function dueOf(
  known: Known,
  who: Who,
  card: CardId,
  isSchool: SchoolDays = everyWeekday,
): Due | null {
  const last = lastHad(known.book, who, card);
  if (last === null) return null;
  const before = stateOn(known, who, card, last + 1);
  const days = nextSchoolDays(last, isSchool);
  for (const day of days) {
    const because = becauseOf(before, stateOn(known, who, card, day));
    if (because !== null) return { day, because };
  }
  return { day: days.at(-1) as Day, because: 'long' };
}

/** Why a card of a group is due on a day, as `dueOf` would say; null when it is not. `p` is its chance on that day. */
export function dueBy(
  known: Known,
  group: GroupId,
  card: CardId,
  day: Day,
  p: number,
  isSchool: SchoolDays = everyWeekday,
): DueBecause | null {
  const who = { of: 'group', id: group } as const;
  const last = lastHad(known.book, who, card);
  const [next, latest] = last === null ? [] : boundsAfter(last, isSchool);
  if (last === null || next === undefined || day < next) return null;
  const because = becauseOf(stateOn(known, who, card, last + 1), { p, low: 0, high: 0 });
  return because ?? (latest !== undefined && day >= latest ? 'long' : null);
}

type State = Pick<Estimate, 'p' | 'low' | 'high'>;

function stateOn(known: Known, who: Who, card: CardId, day: Day): State {
  if (who.of === 'child') return estimateCard(known, who, card, day);
  return { p: chanceOfCard(known, who, card, day), low: 0, high: 0 };
}

function becauseOf(before: State, then: State): DueBecause | null {
  if (then.p < WEAK) return 'weak';
  if (before.p - then.p >= FADED) return 'fading';
  return then.high - then.low - (before.high - before.low) >= WIDER ? 'unsure' : null;
}

/** The first and the last day on which a card may be due. */
function boundsAfter(last: Day, isSchool: SchoolDays): readonly Day[] {
  const days = nextSchoolDays(last, isSchool);
  return [days[0] as Day, days.at(-1) as Day];
}

/** Longer than any holiday: a calendar without school ends there. */
const LONGEST = 400;

/** The next twenty school days; at least one day, be it none. */
function nextSchoolDays(last: Day, isSchool: SchoolDays): readonly Day[] {
  const days: Day[] = [];
  for (let day = last + 1; days.length < MOST_SCHOOL_DAYS && day <= last + LONGEST; day++) {
    if (isSchool(day)) days.push(day);
  }
  return days.length > 0 ? days : [last + 1];
}

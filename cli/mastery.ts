import { classMap } from '../core/facts/class-map.ts';
import { readingsIn } from '../core/facts/class-readings.ts';
import { estimateWord, type MasteryWord } from '../core/facts/mastery-word.ts';
import { PLACES } from '../core/language/correspondence.ts';
import { HABITS } from '../core/language/taught.ts';
import { countConfusions } from '../core/learners/confusions.ts';
import { type Day, makeDay, parseDay } from '../core/learners/day.ts';
import { type DueBecause, dueOf } from '../core/learners/due.ts';
import {
  type Estimate,
  estimateHabit,
  estimatePlace,
  type Who,
} from '../core/learners/estimate.ts';
import { parseEvidence } from '../core/learners/evidence-csv.ts';
import { historiesOf } from '../core/learners/history.ts';
import { type Knowledge, knowledgeFrom } from '../core/learners/knowledge.ts';
import { markingSaid } from '../core/learners/marking-said.ts';
import type { Observation } from '../core/learners/observation.ts';
import { DUE_SAID } from '../core/learners/review-reason.ts';
import { type Holiday, type SchoolDays, schoolDaysWithout } from '../core/learners/school-days.ts';
import { PUBLISHED_THRESHOLDS, type Thresholds } from '../core/learners/thresholds.ts';
import { readTextFile } from './engine.ts';
import { fail } from './failure.ts';
import { inTerminal } from './in-terminal.ts';
import { readOptions } from './options.ts';
import { complain } from './shown.ts';

const NOTE = 'Practice monitoring, not a diagnosis.';

/** `mastery --evidence FILE.csv --now DATE`: what each pupil knows of each card by then. */
export function mastery(args: readonly string[]): string {
  const typed = readOptions(args, {
    evidence: 'text',
    now: 'text',
    by: 'text',
    secure: 'text',
    shaky: 'text',
    confusions: 'flag',
    off: 'text',
  });
  if (typed.words.length > 0) fail(`mastery takes options only; “${typed.words[0]}” is none.`);
  const file = typed.text('evidence');
  if (file === null) return fail('Name the evidence: --evidence readings.csv');
  const now = readNow(typed.text('now'));
  const thresholds: Thresholds = {
    secure: typed.share('secure', PUBLISHED_THRESHOLDS.secure),
    shaky: typed.share('shaky', PUBLISHED_THRESHOLDS.shaky),
  };
  const observations = readEvidence(file, now);
  if (typed.flag('confusions')) {
    const rows = countConfusions(observations).map(({ child, card, heard, count }) => ({
      pupil: child,
      id: card,
      heard,
      count,
    }));
    if (typed.flag('json')) return JSON.stringify(rows);
    return rows
      .map((row) => `${row.pupil}  ${row.id}  heard ${row.heard}  ${row.count}`)
      .join('\n');
  }
  const knowledge = knowledgeFrom(observations);
  const isSchool = schoolDaysWithout(readHolidays(typed.text('off')));
  const by = typed.text('by') ?? 'card';
  const rows = rowsOf({ observations, knowledge, now, thresholds, isSchool }, by);
  if (typed.flag('json')) return JSON.stringify(rows);
  const marking = markingSaid(knowledge.read.marking);
  return [...rows.map(rowText), '', ...(marking === null ? [] : [marking]), NOTE].join('\n');
}

function readNow(text: string | null): Day {
  if (text === null) return fail('Say for which day: --now 2026-03-02');
  return parseDay(text) ?? fail(`--now takes a date such as 2026-03-02; “${text}” is none.`);
}

/** Days without school: `2026-12-21..2027-01-01,2027-01-18`. */
function readHolidays(text: string | null): readonly Holiday[] {
  if (text === null) return [];
  return text.split(',').map((span) => {
    const [first = '', last = first, ...more] = span.split('..');
    const days = [parseDay(first), parseDay(last)] as const;
    if (days[0] === null || days[1] === null || days[1] < days[0] || more.length > 0) {
      return fail(
        `--off takes days without school such as 2026-12-21..2027-01-01,2027-01-18; “${span}” is none.`,
      );
    }
    return { first: days[0], last: days[1] };
  });
}

/** What can be read of the file, up to the day; the rest is told on standard error. */
function readEvidence(file: string, now: Day): readonly Observation[] {
  const reading = parseEvidence(readTextFile(file));
  const { observations, problems } = inTerminal(reading, 'Reading the rows …');
  const [first] = problems;
  if (first?.code === 'no-column') fail(first.message);
  for (const { line, message } of problems) complain(`Line ${line}: ${message}`);
  const past = observations.filter(({ day }) => day <= now);
  const later = observations.length - past.length;
  if (later > 0) {
    complain(`Left out because they are later than ${makeDay(now)}: ${later} of the rows.`);
  }
  return past;
}

interface MasteryRow {
  readonly pupil: string;
  readonly id: string;
  readonly p: number;
  readonly low: number;
  readonly high: number;
  readonly n: number;
  readonly last: string | null;
  readonly due: string | null;
  readonly word: MasteryWord;
  /** What was seen of a card: its last four weeks; null of places and habits. */
  readonly right: number | null;
  readonly missed: number | null;
  readonly lastThree: readonly string[] | null;
  readonly dueBecause: DueBecause | null;
}

/** What the rows are made from. */
interface RowsSpec {
  readonly observations: readonly Observation[];
  readonly knowledge: Knowledge;
  readonly now: Day;
  readonly thresholds: Thresholds;
  readonly isSchool: SchoolDays;
}

function rowsOf(
  { observations, knowledge, now, thresholds, isSchool }: RowsSpec,
  by: string,
): readonly MasteryRow[] {
  const readings = readingsIn(observations, 'read');
  const spec = { known: knowledge.read, readings, day: now, thresholds };
  const pupils = [...new Set(observations.flatMap(({ child }) => child ?? []))].sort();
  return pupils.flatMap((pupil): readonly MasteryRow[] => {
    const who: Who = { of: 'child', id: pupil };
    if (by !== 'card') {
      return partsBy(by, knowledge, who).map(([id, estimate]) => ({
        ...figures(pupil, id, estimate),
        due: null,
        word: estimateWord(estimate, thresholds),
        right: null,
        missed: null,
        lastThree: null,
        dueBecause: null,
      }));
    }
    const histories = historiesOf(observations, 'read', who);
    const [row] = classMap(spec, [who], [...histories.keys()].sort());
    return (row?.cells ?? []).map(({ card, seen, estimate, word }) => {
      const due = dueOf(knowledge.read, who, card, isSchool);
      return {
        ...figures(pupil, card, estimate),
        due: dayOrNull(due?.day ?? null),
        word,
        right: seen.right,
        missed: seen.missed,
        lastThree: seen.last,
        dueBecause: due?.because ?? null,
      };
    });
  });
}

function figures(pupil: string, id: string, { p, low, high, n, last }: Estimate) {
  return { pupil, id, p: round(p), low: round(low), high: round(high), n, last: dayOrNull(last) };
}

function dayOrNull(day: Day | null): string | null {
  return day === null ? null : makeDay(day);
}

function partsBy(
  by: string,
  { read }: Knowledge,
  who: Who,
): readonly (readonly [string, Estimate])[] {
  if (by === 'place') return PLACES.map((place) => [place, estimatePlace(read, who, place)]);
  if (by === 'habit') return HABITS.map((habit) => [habit, estimateHabit(read, who, habit)]);
  return fail(`--by is one of card, place, habit; “${by}” is none.`);
}

function rowText(row: MasteryRow): string {
  const { pupil, id, p, low, high, n, due, dueBecause, word, right, missed } = row;
  const share = (value: number): string => `${Math.round(value * 100)}%`;
  const back =
    due === null || dueBecause === null ? '' : `  back by ${due}: ${DUE_SAID[dueBecause]}`;
  const seen =
    right === null || missed === null ? `${n} read` : `right ${right} of ${right + missed}`;
  return `${pupil}  ${id}  ${seen}  ${word}, about ${share(p)} (${share(low)}–${share(high)})${back}`;
}

/** Four digits are more than is known. */
function round(value: number): number {
  return Math.round(value * 10_000) / 10_000;
}

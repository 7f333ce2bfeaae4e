/**
 * Everything that was noted of a class as tables for a spreadsheet: who is in
 * it, what single children read, what was read together, what each child knows
 * by that, the short checks, and what was written. The readings of single children are what
 * `parseEvidence` and the terminal's `mastery --evidence` read.
 *
 * Names come from files, so no cell is left that a spreadsheet would run (`safeCell`).
 */

import { type RowRule, scoreCheck } from '../checks/score-check.ts';
import type { ChildId } from '../ids.ts';
import { type CardId, graphemeOf } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { makeSounds } from '../language/phonemes.ts';
import { type Day, makeDay } from '../learners/day.ts';
import { historiesOf } from '../learners/history.ts';
import type { Known } from '../learners/known.ts';
import type { Observation } from '../learners/observation.ts';
import type { Thresholds } from '../learners/thresholds.ts';
import { readingOf } from '../log/check-record.ts';
import { type Child, type ClassState, WHOLE_CLASS } from '../log/class-state.ts';
import { progressOf } from '../log/group-place.ts';
import { childrenOf } from '../log/roster.ts';
import { groupOf } from '../log/roster-changes.ts';
import { attemptsOf } from '../papers/attempts.ts';
import { isSpelled } from '../papers/spelling-shown.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { safeCell, writeCsv } from '../sequence/csv-records.ts';
import { taughtOf } from '../sequence/progress.ts';
import { classMap } from './class-map.ts';
import { readingsIn } from './class-readings.ts';

/** The tables, and what stands in each column. */
export const CLASS_TABLES = {
  children: {
    pupil: 'first name, nickname or initials',
    group: 'small group; empty for none',
  },
  readings: {
    date: 'the day, as 2026-03-02',
    pupil: 'who read it alone',
    cards: 'the cards from left to right, joined by -; each its letters, = and its sounds',
    sounds: 'what it says, in ARPABET symbols',
    outcome: 'right or wrong',
    broke: 'the card that was wrong, counted from 1; empty when it was not said',
    heard: 'what was heard instead: ARPABET symbols, or a kind of slip; empty when it was not said',
    word: 'its letters',
  },
  together: {
    date: 'the day, as 2026-03-02',
    group: 'who read or wrote it together; empty for the whole class',
    task: 'read (from letters to sounds) or spell (from sounds to letters)',
    cards: 'as in readings; of a sound to spell, each of its spellings',
    outcome: 'right or wrong',
    broke: 'as in readings',
    heard: 'as in readings',
  },
  known: {
    pupil: 'the child',
    card: 'letters = sounds',
    share: 'how likely it is read correctly on this day, 0 to 1',
    low: 'the low end of the 90% interval of that',
    high: 'its high end',
    readings: 'how many readings of the child’s own tell of it',
    last: 'the last day the child read it alone',
    word: 'secure, growing, shaky or not yet seen',
    right: 'how often it was right in the last four weeks, the last three readings in any case',
    missed: 'how often it was missed, of the same readings',
    last_three: 'its last three readings, the oldest first: r for right, m for missed',
    since: 'the day of the first reading that is counted in right and missed',
    beyond: 'yes for a card that its group has not been taught yet; empty for the others',
  },
  checks: {
    date: 'the day, as 2026-03-02',
    pupil: 'the child',
    kind: 'letter-sounds, nonsense-words or sight-words',
    form: 'the number of the form',
    seconds: 'how long it took; empty for no clock',
    asked: 'how many items were read',
    right: 'how many were right as a whole',
    sounds_asked: 'how many single sounds they had',
    sounds_right: 'how many of them were right',
    right_per_minute: 'empty for no clock',
    corrected_alone: 'how many the child corrected alone; they are right',
    helped: 'how many were said for the child after three seconds; they are wrong',
  },
  spelling: {
    date: 'the day, as 2026-03-02; empty for none',
    pupil: 'the child',
    word: 'the word that was said',
    wrote: 'what was written, letter for letter; empty for a blank',
    right: 'yes or no',
    sounds: 'how many cards of the word have a sound',
    heard: 'how many of those sounds were heard',
    spelled: 'how many of those heard were spelled as the word has them',
    sequences: 'correct letter sequences',
    of_sequences: 'how many there are',
  },
} as const;
export type ClassTable = keyof typeof CLASS_TABLES;

/** What the tables are made from. */
export interface TablesSpec {
  readonly state: ClassState;
  readonly observations: readonly Observation[];
  readonly read: Known;
  readonly thresholds: Thresholds;
  /** How a skipped row of a short check counts. */
  readonly rowRule?: RowRule;
  readonly day: Day;
}

/** A table as CSV, its first line the names of its columns. */
export function makeClassTable(table: ClassTable, spec: TablesSpec): string {
  const heading = Object.keys(CLASS_TABLES[table]);
  return writeCsv([heading, ...rowsOf[table](spec)].map((cells) => cells.map(cellOf)));
}

type Rows = readonly (readonly (string | number | null)[])[];

const rowsOf: Readonly<Record<ClassTable, (spec: TablesSpec) => Rows>> = {
  children: ({ state }) =>
    childrenOf(state, WHOLE_CLASS).map((child) => [child.name, groupOf(state, child)?.name ?? '']),

  readings: ({ state, observations }) =>
    observations.flatMap(({ day, child, task, cards, right, broke, heard }) => {
      if (child === null || task !== 'read') return [];
      const outcome = right ? 'right' : 'wrong';
      const sounds = cards.flatMap((id) => correspondenceById.get(id)?.phonemes ?? []);
      return [
        [
          makeDay(day),
          nameOf(child, state),
          cards.join('-'),
          makeSounds(sounds),
          outcome,
          broke,
          heard,
          lettersOf(cards),
        ],
      ];
    }),

  together: ({ state, observations }) =>
    observations.flatMap(({ day, child, groups, task, cards, right, broke, heard }) => {
      if (child !== null) return [];
      const group =
        groups[0] === WHOLE_CLASS ? '' : (state.groups.get(groups[0] ?? WHOLE_CLASS)?.name ?? '');
      const outcome = right ? 'right' : 'wrong';
      return [[makeDay(day), group, task, cards.join('-'), outcome, broke, heard]];
    }),

  known: ({ state, observations, read, thresholds, day }) => {
    const readings = readingsIn(observations, 'read');
    const spec = { known: read, readings, day, thresholds };
    return childrenOf(state, WHOLE_CLASS).flatMap((child) => {
      const who = { of: 'child', id: child.id } as const;
      const cards = [...historiesOf(observations, 'read', who).keys()].sort();
      const taught = taughtToChild(state, child);
      const cells = classMap(spec, [who], cards)[0]?.cells ?? [];
      return cells.map(({ card, seen, estimate: { p, low, high, n, last }, word }) => [
        child.name,
        card,
        p.toFixed(3),
        low.toFixed(3),
        high.toFixed(3),
        n,
        last === null ? null : makeDay(last),
        word,
        seen.right,
        seen.missed,
        seen.last.map((outcome) => outcome.charAt(0)).join(''),
        seen.since === null ? null : makeDay(seen.since),
        taught === null || taught.has(card) ? null : 'yes',
      ]);
    });
  },

  checks: ({ state, rowRule }) =>
    [...state.checks.values()].flatMap((record) => {
      if (record.ended === null) return [];
      const score = scoreCheck(readingOf(record), rowRule);
      return [
        [
          record.day,
          nameOf(record.child, state),
          record.form.kind,
          record.form.seed,
          record.ended.seconds,
          score.asked,
          score.right,
          score.soundsAsked,
          score.soundsRight,
          score.rightPerMinute?.toFixed(1) ?? null,
          score.selfCorrected,
          score.hesitated,
        ],
      ];
    }),

  spelling: ({ state }) =>
    [...state.papers.values()].flatMap((record) =>
      attemptsOf(record, [...state.children.keys()], state.accent).flatMap(
        ({ child, said, wrote, read }) => {
          if (read === null) return [];
          const sounded = read.cards.filter(({ id }) => !id.endsWith('=-'));
          const heard = sounded.filter((card) => card.heard);
          return [
            [
              record.day,
              nameOf(child, state),
              said.word,
              wrote,
              read.wordRight ? 'yes' : 'no',
              sounded.length,
              heard.length,
              heard.filter(isSpelled).length,
              read.sequences.right,
              read.sequences.of,
            ],
          ];
        },
      ),
    ),
};

/** The cards of a child's own group, or of the class when it is in none; null when nothing was told of them. */
function taughtToChild(state: ClassState, child: Child): ReadonlySet<CardId> | null {
  const group = groupOf(state, child) ?? state.groups.get(WHOLE_CLASS);
  const standing = group?.standing ?? null;
  return standing === null ? null : taughtOf(progressOf(standing, SEQUENCE)).correspondences;
}

function nameOf(child: ChildId, { children }: ClassState): string {
  return children.get(child)?.name ?? '';
}

/** The letters of a row of cards as it is read: a silent e behind the last. */
function lettersOf(cards: readonly CardId[]): string {
  const graphemes = cards.map(graphemeOf);
  const silent = graphemes.some((grapheme) => grapheme.endsWith('_e')) ? 'e' : '';
  return graphemes.map((grapheme) => grapheme.replace('_e', '')).join('') + silent;
}

/** A cell as text; no spreadsheet takes it for a formula. */
function cellOf(value: string | number | null): string {
  if (typeof value === 'string') return safeCell(value);
  return value === null ? '' : `${value}`;
}

import { describe, expect, it } from 'vitest';
import { SMALL_FORM } from '../../test/arbitrary-events.ts';
import { classYear } from '../../test/class-year.ts';
import { type ChildId, checkId, childId, classId, eventId, groupId, papersId } from '../ids.ts';
import { parseDay } from '../learners/day.ts';
import { parseEvidence } from '../learners/evidence-csv.ts';
import { observationsOf } from '../learners/evidence-from-log.ts';
import { knowledgeFrom } from '../learners/knowledge.ts';
import type { Observation } from '../learners/observation.ts';
import { PUBLISHED_THRESHOLDS } from '../learners/thresholds.ts';
import type { ClassState } from '../log/class-state.ts';
import type { EventSpec } from '../log/event.ts';
import { replay } from '../log/replay.ts';
import { atOnce } from '../paced.ts';
import { SEQUENCE } from '../sequence/built-in.ts';
import { readCsv } from '../sequence/csv-records.ts';
import { taughtUpTo } from '../sequence/teach.ts';
import { CLASS_TABLES, type ClassTable, makeClassTable } from './class-tables.ts';

const readTable = (text: string) => atOnce(parseEvidence(text));

const day = parseDay('2027-07-01') ?? 0;

function tablesOf(state: ClassState) {
  const observations = observationsOf(state);
  const { read } = knowledgeFrom(observations);
  const spec = { state, observations, read, thresholds: PUBLISHED_THRESHOLDS, day };
  const make = (table: ClassTable) => makeClassTable(table, spec);
  const rows = (table: ClassTable) => readCsv(make(table), ',').map(({ cells }) => cells);
  return { observations, make, rows };
}

const named = (id: ChildId, value: string): EventSpec => ({
  kind: 'set',
  body: { of: 'child', id, field: 'name', value },
});

const classOf = (...specs: readonly EventSpec[]) =>
  replay(
    classId('class'),
    specs.map((spec, at) => ({
      id: eventId(`e${at}`),
      classId: classId('class'),
      at,
      by: 'desk',
      ...spec,
    })),
  );

describe('the tables of a class', () => {
  it('name their columns, each as it is documented, in an empty class too', () => {
    const { rows } = tablesOf(classOf());
    for (const table of Object.keys(CLASS_TABLES) as ClassTable[]) {
      expect(rows(table)).toEqual([Object.keys(CLASS_TABLES[table])]);
    }
  });

  it('hold every reading: those of single children are read again as they were', () => {
    const events = classYear(classId('class'), 4000);
    const state = replay(events[0]?.classId ?? classId(''), events);
    const { observations, make, rows } = tablesOf(state);
    const own = observations.filter(({ child, task }) => child !== null && task === 'read');
    expect(own.length).toBeGreaterThan(100);
    const again = readTable(make('readings'));
    expect(again.problems).toEqual([]);
    const plain = (all: readonly Observation[], nameOf: (child: ChildId | null) => string | null) =>
      all.map(({ day, child, cards, right, broke, heard }) => ({
        day,
        child: nameOf(child),
        cards,
        right,
        broke,
        heard,
      }));
    expect(plain(again.observations, (name) => name)).toEqual(
      plain(own, (id) => state.children.get(id ?? childId(''))?.name ?? null),
    );
    expect(rows('together')).toHaveLength(
      1 + observations.filter(({ child }) => child === null).length,
    );
  });

  it('are safe to open: what a spreadsheet would run as a formula begins with an apostrophe', () => {
    // The signs are those of OWASP's page on CSV injection.
    const names = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1', 'Wren', 'Anne-Marie'];
    const { rows } = tablesOf(classOf(...names.map((name, at) => named(childId(`c${at}`), name))));
    const cells = rows('children')
      .slice(1)
      .map(([name]) => name);
    const safe = [...names.slice(0, 7).map((name) => `'${name}`), 'Wren', 'Anne-Marie'];
    expect(cells.toSorted()).toEqual(safe.toSorted());
  });

  it('have a check with its score: one sound of six wrong in half a minute', () => {
    const state = classOf(
      named(childId('r'), 'Wren'),
      {
        kind: 'check-begun',
        body: {
          checkId: checkId('k'),
          child: childId('r'),
          day: '2027-06-01',
          form: SMALL_FORM,
          limit: 60,
        },
      },
      {
        kind: 'check-marked',
        body: {
          checkId: checkId('k'),
          item: 1,
          outcome: 'wrong',
          broke: [{ card: 2, heard: null }],
        },
      },
      { kind: 'check-ended', body: { checkId: checkId('k'), reached: 2, seconds: 30 } },
    );
    const { rows } = tablesOf(state);
    expect(rows('checks')[1]).toEqual(
      '2027-06-01,Wren,nonsense-words,3,30,2,1,6,5,2.0,0,0'.split(','),
    );
    expect(rows('readings').slice(1)).toEqual([
      ['2027-06-01', 'Wren', 'm=M-i=IH-p=P', 'M IH P', 'right', '', '', 'mip'],
      ['2027-06-01', 'Wren', 'sh=SH-a=AE-b=B', 'SH AE B', 'wrong', '2', '', 'shab'],
    ]);
    const known = rows('known').slice(1);
    expect(known.map(([pupil, card]) => [pupil, card])).toEqual(
      ['a=AE', 'b=B', 'i=IH', 'm=M', 'p=P', 'sh=SH'].map((card) => ['Wren', card]),
    );
  });

  it('have what was written, letter for letter, and what of it was heard and spelled', () => {
    const state = classOf(
      named(childId('r'), 'Wren'),
      {
        kind: 'papers-begun',
        body: {
          papersId: papersId('p'),
          groupId: groupId('whole-class'),
          day: '2027-06-01',
          words: [{ word: 'rain', cards: ['r=R', 'ai=EY', 'n=N'], breaks: [] }],
        },
      },
      {
        kind: 'papers-read',
        body: {
          papersId: papersId('p'),
          child: childId('r'),
          word: 0,
          answer: { kind: 'wrote', text: 'rane' },
        },
      },
    );
    expect(tablesOf(state).rows('spelling')[1]).toEqual(
      '2027-06-01,Wren,rain,rane,no,3,3,2,2,5'.split(','),
    );
  });

  it('write every card that is taught so that it is read again', () => {
    const cards = [...taughtUpTo(SEQUENCE, SEQUENCE.steps.length).correspondences];
    const { observations, problems } = readTable(
      `date,pupil,cards,outcome\n${cards.map((id) => `2026-03-02,Wren,${id},right`).join('\n')}`,
    );
    expect(problems).toEqual([]);
    expect(observations.map((one) => one.cards)).toEqual(cards.map((id) => [id]));
  });
});

import { describe, expect, it } from 'vitest';
import { SMALL_DRILL, SMALL_FORM } from '../../test/arbitrary-events.ts';
import { classYear } from '../../test/class-year.ts';
import type { AuditorySound } from '../drills/drill.ts';
import {
  type ChildId,
  checkId,
  childId,
  classId,
  drillId,
  eventId,
  type GroupId,
  groupId,
} from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { type CheckRecord, type DrillRecord, type Mark, WHOLE_CLASS } from '../log/class-state.ts';
import { replay } from '../log/replay.ts';
import { parseDay } from './day.ts';
import { observationsOf } from './evidence-from-log.ts';
import { knowledgeFrom } from './knowledge.ts';

const mat: readonly CardId[] = ['m=M', 'a=AE', 't=T'];
const group = (id: GroupId) =>
  [id, { id, name: id, removed: false, standing: null, place: null }] as const;
const child = (id: ChildId, of: GroupId | null) =>
  [id, { id, name: id, group: of, removed: false, place: null }] as const;

const blending = { part: 'blending', place: 0 } as const;
const shown = { ...blending, id: eventId('s'), at: 2 };
const mark = (some: Partial<Mark>): Mark => ({
  ...blending,
  id: eventId('m'),
  at: 3,
  cards: mat,
  broke: 2,
  heard: null,
  child: null,
  ...some,
});

function observed(record: Partial<DrillRecord>) {
  const drill: DrillRecord = {
    id: drillId('d'),
    groupId: groupId('reds'),
    day: '2026-03-02',
    drill: SMALL_DRILL,
    begunBy: [eventId('begun')],
    earlier: [],
    at: 1,
    shown: [shown],
    calls: [],
    marks: [],
    corrections: [],
    ended: null,
    ...record,
  };
  return observationsOf({
    drills: new Map([[drill.id, drill]]),
    checks: new Map(),
    papers: new Map(),
    accent: [],
    calendar: { off: [], away: new Map([['2026-03-03', [childId('Tariq')]]]) },
    groups: new Map([group(WHOLE_CLASS), group(groupId('reds')), group(groupId('blues'))]),
    children: new Map([child(childId('Mina'), groupId('reds')), child(childId('Tariq'), null)]),
  });
}

describe('what a drill has shown', () => {
  it('is a right reading together where nobody was called on and nothing marked', () => {
    expect(observed({})).toEqual([
      {
        day: parseDay('2026-03-02'),
        child: null,
        groups: ['reds'],
        task: 'read',
        cards: SMALL_DRILL.run[0]?.cards,
        right: true,
        broke: null,
        heard: null,
      },
    ]);
  });

  it('is no practice of a child that was away on that day', () => {
    const [on] = observed({ day: '2026-03-03', groupId: WHOLE_CLASS });
    expect(on?.away).toEqual(['Tariq']);
    expect(observed({ groupId: WHOLE_CLASS })[0]).not.toHaveProperty('away');
  });

  it('of the whole class tells of every group', () => {
    expect(observed({ groupId: WHOLE_CLASS })[0]?.groups).toEqual([WHOLE_CLASS, 'reds', 'blues']);
  });

  it('is the child’s own where it was called on, for its group and the class', () => {
    const calls = [{ ...shown, child: childId('Mina') }];
    expect(observed({ calls })).toMatchObject([
      { child: 'Mina', right: true, groups: ['reds', WHOLE_CLASS] },
    ]);
    const marks = [mark({ child: childId('Mina'), heard: { kind: 'phoneme', sound: 'EH' } })];
    expect(observed({ calls, marks })).toMatchObject([
      { child: 'Mina', right: false, broke: 2, heard: 'EH' },
    ]);
    expect(observed({ calls: [{ ...shown, child: childId('Tariq') }] })[0]?.groups).toEqual([
      WHOLE_CLASS,
    ]);
  });

  it('is wrong together where the whole class was marked', () => {
    expect(observed({ marks: [mark({})] })).toMatchObject([
      { child: null, right: false, broke: 2 },
    ]);
  });

  it('went well together but for the children who were marked', () => {
    const seen = observed({
      marks: [mark({ child: childId('Mina'), heard: { kind: 'left-out' } })],
    });
    expect(seen).toHaveLength(2);
    expect(seen.find((one) => one.child === null)?.right).toBe(true);
    expect(seen.find((one) => one.child === 'Mina')).toMatchObject({
      right: false,
      heard: 'left-out',
    });
  });

  it('counts the first reading: what went well after it was corrected is an echo', () => {
    const again = { ...shown, id: eventId('again'), at: 9 };
    const seen = observed({
      shown: [shown, again],
      marks: [mark({})],
      corrections: [{ ...shown, id: eventId('c'), at: 5 }],
    });
    expect(seen.map(({ right }) => right)).toEqual([false]);
  });

  it('is spelling in the auditory part', () => {
    const seen = observed({ shown: [{ id: eventId('a'), at: 2, part: 'auditory', place: 0 }] });
    expect(seen).toMatchObject([{ task: 'spell', cards: SMALL_DRILL.auditory[0]?.spellings }]);
  });

  it('is of a word known by sight what it is of a card: read, and apart from that spelled', () => {
    const sound: AuditorySound = { phonemes: ['W', 'AA', 'Z'], spellings: ['was=sight'] };
    const drill = { ...SMALL_DRILL, visual: ['was=sight' as const], auditory: [sound] };
    const there = { id: eventId('w'), at: 2, part: 'visual', place: 0 } as const;
    const heard = { kind: 'sounded-out' } as const;
    const missed = { cards: ['was=sight'] as const, broke: 1, heard, child: childId('Mina') };
    const seen = observed({
      drill,
      shown: [there, { ...there, id: eventId('v'), part: 'auditory', at: 4 }],
      calls: [{ ...there, child: childId('Mina') }],
      marks: [mark({ ...there, at: 3, ...missed })],
    });
    expect(seen).toMatchObject([
      { child: 'Mina', task: 'read', cards: ['was=sight'], right: false, heard: 'sounded-out' },
      { child: null, task: 'spell', cards: ['was=sight'], right: true },
    ]);
  });

  it('is nothing where nothing came up, or the day is none', () => {
    expect(observed({ shown: [] })).toEqual([]);
    expect(observed({ day: 'someday' })).toEqual([]);
  });

  it('is all that the log of a class has, from events to what each child knows', () => {
    const state = replay(classId('c'), classYear(classId('c'), 3000));
    const observations = observationsOf(state);
    const { read } = knowledgeFrom(observations);
    const marked = [...state.drills.values()].flatMap(({ marks }) => marks);
    const wrong = observations.filter(({ right }) => !right);
    expect(wrong).toHaveLength(marked.length);
    expect(read.book.children.size).toBe(new Set(marked.map((one) => one.child)).size);
    expect(read.book.groups.size).toBe(4);
  });
});

describe('what a short check has shown', () => {
  const check: CheckRecord = {
    id: checkId('c'),
    child: childId('Mina'),
    day: '2026-03-02',
    form: { ...SMALL_FORM, items: [0, 1, 0, 1, 0].map((at) => SMALL_FORM.items[at] ?? never()) },
    limit: 60,
    at: 1,
    marks: new Map([
      [0, { outcome: 'wrong', broke: [{ card: 2, heard: { kind: 'phoneme', sound: 'EH' } }] }],
      [1, { outcome: 'self-corrected', broke: [] }],
      [2, { outcome: 'hesitated', broke: [] }],
      [3, { outcome: 'left-out', broke: [] }],
    ]),
    markedLast: eventId('m'),
    ended: { reached: 4, seconds: 60 },
  };
  const observed = (some: Partial<CheckRecord>) =>
    observationsOf({
      drills: new Map(),
      papers: new Map(),
      checks: new Map([[checkId('c'), { ...check, ...some }]]),
      accent: [],
      calendar: { off: [], away: new Map() },
      groups: new Map([group(WHOLE_CLASS), group(groupId('reds'))]),
      children: new Map([child(childId('Mina'), groupId('reds'))]),
    });

  it('is every item reached, the child’s own; what was left out was not read', () => {
    const own = {
      day: parseDay('2026-03-02'),
      child: 'Mina',
      groups: ['reds', WHOLE_CLASS],
      task: 'read',
    };
    const [mip, shab] = SMALL_FORM.items.map(({ cards }) => cards);
    expect(observed({})).toEqual([
      { ...own, from: 'check', cards: mip, right: false, broke: 2, heard: 'EH' },
      { ...own, from: 'check', cards: shab, right: true, broke: null, heard: null },
      { ...own, from: 'check', cards: mip, right: false, broke: null, heard: null },
    ]);
  });

  it('is nothing until the check has ended', () => {
    expect(observed({ ended: null })).toEqual([]);
  });
});

function never(): never {
  throw new Error('the form has two items');
}

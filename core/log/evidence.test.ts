import { describe, expect, it } from 'vitest';
import { CHANGED_DRILL, SMALL_DRILL } from '../../test/arbitrary-events.ts';
import { childId, drillId, eventId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { DrillRecord, Happening, Mark } from './class-state.ts';
import { evidenceOf } from './evidence.ts';

const record: DrillRecord = {
  id: drillId('one'),
  groupId: groupId('g'),
  day: '2026-03-02',
  drill: SMALL_DRILL,
  begunBy: [eventId('begun')],
  earlier: [],
  at: 1,
  shown: [],
  calls: [],
  marks: [],
  corrections: [],
  ended: null,
};
const flip = (place: number, at: number): Happening => ({
  id: eventId(`${at}`),
  at,
  part: 'blending',
  place,
});
const broken = (place: number, at: number): Mark => ({
  ...flip(place, at),
  cards: ['m=M', 'a=AE', 'p=P'],
  broke: 2,
  heard: null,
  child: null,
});

describe('the evidence of a drill', () => {
  it('counts what came up and was not marked as having gone well', () => {
    const evidence = evidenceOf({ ...record, shown: [flip(0, 2), flip(2, 3)] });
    expect(evidence.map(({ place, outcome }) => [place, outcome])).toEqual([
      [0, 'well'],
      [2, 'well'],
    ]);
    expect(evidence[1]?.cards).toEqual(['sh=SH', 'a=AE', 'p=P']);
  });

  it('says nothing of what was not reached', () => {
    expect(evidenceOf(record)).toEqual([]);
  });

  it('has what broke, with its marks and whether it was corrected', () => {
    const [only] = evidenceOf({
      ...record,
      shown: [flip(1, 2)],
      marks: [broken(1, 3)],
      corrections: [flip(1, 4)],
    });
    expect(only).toMatchObject({ outcome: 'broke', corrected: true });
    expect(only?.marks).toHaveLength(1);
  });

  it('keeps apart what lay in one place before and after the plan was changed', () => {
    const changed = {
      ...record,
      drill: CHANGED_DRILL,
      earlier: [{ drill: SMALL_DRILL, until: 10 }],
      shown: [flip(0, 2), flip(1, 4), flip(1, 11)],
      marks: [
        broken(1, 5),
        { ...broken(1, 12), cards: ['sh=SH', 'a=AE', 'p=P'] satisfies readonly CardId[], broke: 1 },
      ],
    };
    const evidence = evidenceOf(changed);
    expect(evidence.map(({ cards, outcome }) => [cards[0], cards[2], outcome])).toEqual([
      ['m=M', 't=T', 'well'],
      ['m=M', 'p=P', 'broke'],
      ['sh=SH', 'p=P', 'broke'],
    ]);
  });

  it('holds together what the change of a plan left in its place', () => {
    const card = (at: number): Happening => ({ ...flip(1, at), part: 'visual' });
    const changed = {
      ...record,
      drill: CHANGED_DRILL,
      earlier: [{ drill: SMALL_DRILL, until: 10 }],
      shown: [card(2), card(12)],
      marks: [
        {
          ...card(4),
          cards: ['a=AE'] satisfies readonly CardId[],
          broke: 1,
          heard: null,
          child: null,
        },
      ],
    };
    const evidence = evidenceOf(changed);
    expect(evidence.map(({ cards, outcome }) => [cards, outcome])).toEqual([[['a=AE'], 'mended']]);
  });

  it('calls nothing mended that broke on its second visit, though that is noted after the mark', () => {
    const shown = [flip(1, 2), { ...flip(1, 30), count: 9 }];
    const outcome = (count: number) =>
      evidenceOf({ ...record, shown, marks: [{ ...broken(1, 20), count }] })[0]?.outcome;
    expect(outcome(9)).toBe('broke');
    expect(outcome(10)).toBe('broke');
    expect(outcome(8)).toBe('mended');
  });

  it('calls mended what broke, came up again and then went well', () => {
    const again = { ...record, shown: [flip(1, 2), flip(1, 6)], marks: [broken(1, 3)] };
    expect(evidenceOf(again)[0]?.outcome).toBe('mended');
    const twice = { ...again, marks: [broken(1, 3), broken(1, 7)] };
    expect(evidenceOf(twice)[0]?.outcome).toBe('broke');
  });

  it('has a mark whose showing is not known', () => {
    expect(evidenceOf({ ...record, marks: [broken(1, 3)] })[0]?.outcome).toBe('broke');
  });

  it('goes by the order of the plan, part by part, with the cards of each part', () => {
    const shown: readonly Happening[] = [
      flip(0, 2),
      { id: eventId('a'), at: 3, part: 'auditory', place: 0 },
      { id: eventId('v'), at: 4, part: 'visual', place: 2 },
    ];
    expect(evidenceOf({ ...record, shown }).map(({ part, cards }) => [part, cards])).toEqual([
      ['visual', ['sh=SH']],
      ['auditory', ['c=K', 'k=K']],
      ['blending', ['m=M', 'a=AE', 't=T']],
    ]);
  });

  it('names the child who was called on last', () => {
    const calls = [
      { ...flip(0, 3), child: childId('r') },
      { ...flip(0, 4), child: childId('s') },
    ];
    expect(evidenceOf({ ...record, shown: [flip(0, 2)], calls })[0]?.child).toBe('s');
  });
});

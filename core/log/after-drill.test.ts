import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryEvents, SMALL_DRILL } from '../../test/arbitrary-events.ts';
import { childId, classId, drillId, eventId, groupId } from '../ids.ts';
import { afterDrill, brokenByCard, markedCards, toBringBack } from './after-drill.ts';
import type { DrillRecord, Happening, Mark } from './class-state.ts';
import { evidenceOf } from './evidence.ts';
import { replay } from './replay.ts';

const flip = (place: number, at: number): Happening => ({
  id: eventId(`${at}`),
  at,
  part: 'blending',
  place,
});

/** A mark on a flip of the small drill; card 2 is the vowel. */
function mark(place: number, at: number, some: Partial<Mark> = {}): Mark {
  const cards = SMALL_DRILL.run[place]?.cards ?? [];
  return { ...flip(place, at), cards, broke: 2, heard: null, child: null, ...some };
}

function drillOn(day: string, some: Partial<DrillRecord> = {}): DrillRecord {
  return {
    id: drillId(day),
    groupId: groupId('g'),
    day,
    drill: SMALL_DRILL,
    begunBy: [eventId('begun')],
    earlier: [],
    at: 1,
    shown: [flip(0, 2), flip(1, 3), flip(2, 4)],
    calls: [],
    marks: [],
    corrections: [],
    ended: null,
    ...some,
  };
}

const broke = (day: string, ...marks: Mark[]) => drillOn(day, { marks });
const mended = { shown: [flip(0, 2), flip(1, 3), flip(0, 9)], marks: [mark(0, 5)] };

const monday = '2026-03-02';
const tuesday = '2026-03-03';
const wednesday = '2026-03-04';
const thursday = '2026-03-05';

describe('what came of a drill', () => {
  it('is all well when nothing was marked', () => {
    const after = afterDrill(drillOn(monday));
    expect([after.well.length, after.broke.length, after.mended.length]).toEqual([3, 0, 0]);
  });

  it('is mended when it came again and went well', () => {
    const after = afterDrill(drillOn(monday, mended));
    expect(after.mended.map(({ place }) => place)).toEqual([0]);
    expect(after.broke).toEqual([]);
  });

  it('is what its evidence says, each thing once, and every mark under one card', () => {
    fc.assert(
      fc.property(arbitraryEvents(), (events) => {
        for (const record of replay(classId('class'), events).drills.values()) {
          const after = afterDrill(record);
          const sorted = [...after.well, ...after.broke, ...after.mended];
          const evidence = evidenceOf(record);
          expect(new Set(sorted)).toEqual(new Set(evidence));
          expect(sorted).toHaveLength(evidence.length);
          const marks = brokenByCard(evidence).flatMap((one) => one.marks.map(({ mark }) => mark));
          expect(marks.map(({ id }) => id).sort()).toEqual(record.marks.map(({ id }) => id).sort());
        }
      }),
    );
  });
});

describe('the card that a mark says broke', () => {
  it('is the one that was named, counted from 1', () => {
    expect(markedCards(mark(2, 5, { broke: 1 }))).toEqual(['sh=SH']);
  });

  it('is each of them when none was named', () => {
    expect(markedCards(mark(2, 5, { broke: null }))).toEqual(['sh=SH', 'a=AE', 'p=P']);
  });
});

describe('what broke, card by card', () => {
  it('has the card with the most marks first, and last the words of which it was not said', () => {
    const marks = [mark(0, 5, { broke: null }), mark(0, 6, { broke: 1 }), mark(1, 7), mark(2, 8)];
    expect(brokenByCard(evidenceOf(broke(monday, ...marks))).map(({ cards }) => cards)).toEqual([
      ['a=AE'],
      ['m=M'],
      ['m=M', 'a=AE', 't=T'],
    ]);
  });

  it('says of each mark whether it was corrected and whether it mended', () => {
    const record = drillOn(monday, { ...mended, corrections: [flip(0, 6)] });
    const [only] = brokenByCard(evidenceOf(record));
    expect(only?.marks).toMatchObject([{ mended: true, corrected: true, mark: { place: 0 } }]);
  });
});

describe('what the next drill brings back', () => {
  it('is nothing after a drill in which all went well', () => {
    expect(toBringBack([])).toEqual([]);
    expect(toBringBack([drillOn(monday)])).toEqual([]);
  });

  it('is the card that broke, with the day and all that was marked of it', () => {
    const [only, ...others] = toBringBack([broke(monday, mark(0, 5), mark(1, 6))]);
    expect(others).toEqual([]);
    expect(only).toMatchObject({ cards: ['a=AE'], day: monday });
    expect(only?.marks.map(({ mark }) => mark.place)).toEqual([0, 1]);
  });

  it('is not what was mended in the same drill', () => {
    expect(toBringBack([drillOn(monday, mended)])).toEqual([]);
  });

  it('is not what went well in a later drill', () => {
    expect(toBringBack([broke(monday, mark(0, 5)), drillOn(tuesday)])).toEqual([]);
  });

  it('is still what the later drills have not shown, for three drills', () => {
    const shown = [{ ...flip(0, 2), part: 'visual' as const }];
    const since = [wednesday, thursday].map((day) => drillOn(day, { shown }));
    const those = toBringBack([broke(tuesday, mark(0, 5)), ...since]);
    expect(those.map(({ cards, day }) => [cards, day])).toEqual([[['a=AE'], tuesday]]);
    expect(toBringBack([broke(monday, mark(0, 5)), drillOn(tuesday, { shown }), ...since])).toEqual(
      [],
    );
  });

  it('names the last day of what broke twice', () => {
    const twice = toBringBack([broke(monday, mark(0, 5)), broke(tuesday, mark(1, 6))]);
    expect(twice.map(({ cards, day }) => [cards, day])).toEqual([[['a=AE'], tuesday]]);
  });

  it('puts what the whole class broke before what a child did, then the later day, then what broke more often', () => {
    const order = toBringBack([
      broke(monday, mark(2, 5, { broke: 1 })),
      drillOn(tuesday, {
        shown: [flip(0, 2), flip(1, 3)],
        marks: [
          mark(0, 4, { broke: null }),
          mark(0, 5, { broke: 3, child: childId('r') }),
          mark(0, 6, { broke: 1 }),
          mark(0, 7),
          mark(1, 8),
        ],
      }),
    ]);
    expect(order.map(({ cards }) => cards.join(' '))).toEqual([
      'a=AE',
      'm=M',
      'sh=SH',
      't=T',
      'm=M a=AE t=T',
    ]);
  });
});

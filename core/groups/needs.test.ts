import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scriptedReadings } from '../../test/scripted-readings.ts';
import { classMap } from '../facts/class-map.ts';
import { readingsIn } from '../facts/class-readings.ts';
import { childId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { knowledgeFrom } from '../learners/knowledge.ts';
import type { Observation } from '../learners/observation.ts';
import { PUBLISHED_THRESHOLDS } from '../learners/thresholds.ts';
import { needSaid, needsOf } from './needs.ts';
import { togetherSaid, whyTogether } from './why-together.ts';

const DAY = 20_000;
const CHILDREN = ['Ada', 'Ben', 'Cleo', 'Dov'].map(childId);
const CARDS: readonly CardId[] = ['i=IH', 'e=EH', 'sh=SH', 'st=S+T', 'bl=B+L'];

function rowsOf(observations: readonly Observation[]) {
  const spec = {
    known: knowledgeFrom(observations).read,
    readings: readingsIn(observations, 'read'),
    day: DAY,
    thresholds: PUBLISHED_THRESHOLDS,
  };
  return classMap(
    spec,
    CHILDREN.map((id) => ({ of: 'child', id }) as const),
    CARDS,
  );
}

function scripted(lines: Readonly<Record<string, string>>) {
  return rowsOf(
    Object.entries(lines).flatMap(([child, line]) =>
      scriptedReadings(childId(child), DAY - 1, line),
    ),
  );
}

describe('what a group needs next', () => {
  it('is first what the most children missed lately, then what was missed most often', () => {
    const needs = needsOf(
      scripted({
        Ada: 'st!1:S st!1:S i sh e',
        Ben: 'st!1:S st i sh e!1 e!1 e!1',
        Cleo: 'st!1:S st!1:S i sh!1 e',
        Dov: 'i sh e st',
      }),
      0.8,
    );
    expect(needs.map(({ card }) => card).slice(0, 3)).toEqual(['st=S+T', 'e=EH', 'sh=SH']);
    expect(needs.map(needSaid).slice(0, 3)).toEqual([
      'missed lately by 3 of 4, in 5 of 7 readings, the last three of each',
      'missed lately by 1 of 4, in 3 of 6 readings, the last three of each',
      'missed lately by 1 of 4, in 1 of 4 readings, the last three of each',
    ]);
  });

  it('breaks ties by what reading costs most', () => {
    const rows = scripted({ Ada: 'sh!1 e', Ben: 'e!1 sh' });
    const first = (weight: (card: string) => number) => needsOf(rows, 0.8, weight)[0]?.card;
    expect(first((card) => (card === 'sh=SH' ? 9 : 1))).toBe('sh=SH');
    expect(first((card) => (card === 'e=EH' ? 9 : 1))).toBe('e=EH');
  });

  const reading = fc
    .record({
      child: fc.constantFrom(...CHILDREN),
      card: fc.constantFrom(...CARDS),
      right: fc.boolean(),
      day: fc.integer({ min: DAY - 40, max: DAY }),
    })
    .map(
      ({ child, card, right, day }): Observation => ({
        day,
        child,
        groups: [groupId('g')],
        task: 'read',
        cards: [card],
        right,
        broke: null,
        heard: null,
      }),
    );

  it('never names a card that nobody missed above one that somebody did, and counts what was read', () => {
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 50 }), (log) => {
        const needs = needsOf(rowsOf(log), 0.8);
        const missers = needs.map(({ missedBy }) => missedBy.length);
        expect(missers).toEqual(missers.toSorted((one, other) => other - one));
        for (const { card, missedBy, missed, asked } of needs) {
          const lasts = CHILDREN.map((child) =>
            log
              .filter((one) => one.child === child && one.cards[0] === card)
              .sort((one, other) => one.day - other.day)
              .slice(-3),
          );
          const wrong = lasts.map((last) => last.filter(({ right }) => !right).length);
          expect(missed).toBe(wrong.reduce((sum, each) => sum + each, 0));
          expect(asked).toBe(lasts.flat().length);
          expect(missedBy).toEqual(CHILDREN.filter((_, at) => (wrong[at] as number) > 0));
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('why children are together', () => {
  it.each<[Readonly<Record<string, string>>, string]>([
    [
      {
        Ada: 'st!1:S bl!1:B',
        Ben: 'st!1:S st!1:S',
        Cleo: 'bl!1:B bl!1:B i',
        Dov: 'st bl',
      },
      '3 of 4 drop the second consonant in st or bl.',
    ],
    [
      { Ada: 'sh!1 i', Ben: 'sh!1 e!1', Cleo: 'sh i', Dov: 'i' },
      'Missed lately: sh (2 of 4) and short e (1 of 4).',
    ],
    [{ Ada: 'sh i', Ben: 'i' }, 'Nobody here missed anything lately; 2 of 4 have read alone.'],
    [{}, 'Nothing was noted of them alone yet.'],
  ])('%j', (lines, said) => {
    expect(togetherSaid(whyTogether(scripted(lines)), 'classroom')).toBe(said);
  });
});

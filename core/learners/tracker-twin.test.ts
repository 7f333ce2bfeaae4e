import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PlainPair, plainTracker } from '../../test/classroom/plain-tracker.ts';
import { type ChildId, childId, groupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import { cardRow, MEAN, SHIFT, SHIFT_VARIANCE, VARIANCE } from './belief/book.ts';
import { NODES } from './belief/grid.ts';
import type { Marking } from './belief/marking.ts';
import { DAYS, KNOWN, LEAD, SHARES, TIMES, TOLD } from './belief/pair.ts';
import type { Observation } from './observation.ts';
import { startTracker } from './tracker.ts';

const CHILDREN = ['Mina', 'Tariq', 'Noor'].map(childId);
const homeOf = (child: ChildId) => (child === 'Noor' ? 'blue' : 'red');
const WORDS: readonly (readonly CardId[])[] = [
  ['sh=SH', 'i=IH', 'p=P'],
  ['p=P', 'o=AA', 'p=P'],
  ['s=S', 't=T', 'o=AA', 'p=P'],
  ['b=B', 'l=L', 'a=AE', 's=S', 't=T'],
  ['m=M', 'e=EH', 'n=N', 'd=D'],
  ['sh=SH'],
];

const ALONE = { task: 'read', right: true, broke: null, heard: null } as const;

const readings = fc
  .record({
    /** Days since the reading before: mostly the same day or the next, sometimes a break. */
    after: fc.constantFrom(0, 0, 0, 1, 1, 3, 40),
    child: fc.constantFrom(...CHILDREN, null),
    together: fc.constantFrom(['red'], ['blue'], ['red', 'blue']),
    cards: fc.constantFrom(...WORDS),
    right: fc.boolean(),
    broke: fc.option(fc.integer({ min: 1, max: 5 }), { nil: null }),
  })
  .map(({ together, right, broke, child, ...one }) => ({
    ...one,
    child,
    right,
    groups: [...(child === null ? together : [homeOf(child)]), 'whole'].map(groupId),
    broke: right || broke === null ? null : Math.min(broke, one.cards.length),
  }));

const logs = fc.array(readings, { minLength: 40, maxLength: 80 }).map((all) => {
  let day = 100;
  const first = CHILDREN.map(
    (child): Observation => ({
      ...ALONE,
      ...{ day: 99, child, groups: [groupId(homeOf(child))], cards: ['sh=SH'] },
    }),
  );
  const later = all.map(({ after, ...one }): Observation => {
    day += after;
    const away = CHILDREN.filter((_, n) => (day + n) % 4 === 0);
    const beside = one.child === null && away.length > 0 ? { away } : {};
    return { ...one, ...beside, day, task: 'read', heard: null };
  });
  return [...first, ...later];
});

describe('following readings fast and following them plainly', () => {
  it.each<Marking>(['all', 'mistakes-beside-class', 'only-mistakes'])(
    'comes to the same where she marks %s',
    (marking) => {
      fc.assert(
        fc.property(logs, (observations) => {
          const fast = startTracker(marking);
          const plain = plainTracker(marking);
          for (const one of observations) {
            fast.observe(one);
            plain.observe(one);
          }
          const { book } = fast.known;
          const { pairs, readers, cards } = book;
          const apart: number[] = [];
          const near = (value: number | undefined, expected: number) => {
            apart.push(Math.abs((value ?? Number.NaN) - expected));
          };
          const both = book.all.flatMap((reader) => {
            const choir = [...book.groups.values()].find((group) => group.choir === reader);
            const child = [...book.children].find(([, one]) => one === reader)?.[0];
            const name = child ?? `choir of ${choir?.name}`;
            const side = plain.readers.get(name);
            near(readers.numbers[reader.row + MEAN], side?.mean ?? 0);
            near(readers.numbers[reader.row + VARIANCE], side?.variance ?? 0);
            near(readers.numbers[reader.row + SHIFT], side?.shift ?? 0);
            near(readers.numbers[reader.row + SHIFT_VARIANCE], side?.shiftVariance ?? 0);
            return [...book.cardNumber].flatMap(([card, number]) => {
              const row = reader.pairs.at(number);
              return row < 0 ? [] : [[`${name} ${card}`, row] as const];
            });
          });
          expect(both.map(([name]) => name).sort()).toEqual([...plain.pairs.keys()].sort());
          for (const [name, row] of both) {
            const pair = plain.pairs.get(name) as PlainPair;
            const likelihood = [...pairs.numbers.subarray(row, row + NODES)];
            const most = Math.max(...likelihood);
            const mostPlain = Math.max(...pair.likelihood);
            for (const [node, value] of likelihood.entries()) {
              near(value / most, (pair.likelihood[node] as number) / mostPlain);
            }
            near(pairs.numbers[row + TOLD], pair.told);
            near(pairs.numbers[row + TIMES], pair.times);
            near(pairs.numbers[row + DAYS], pair.days.size);
            near(pairs.numbers[row + SHARES], pair.shares);
            near(pairs.numbers[row + LEAD], pair.lead);
            if (pair.known === null) expect(pairs.numbers[row + KNOWN]).toBeNaN();
            else near(pairs.numbers[row + KNOWN], pair.known);
          }
          near(book.common.gain, plain.common.gain);
          near(book.common.loss, plain.common.loss);
          near(book.common.trend, plain.common.trend);
          near(book.common.restless, plain.common.restless);
          near(book.common.knownOrNot.lead, plain.common.lead);
          for (const [card, number] of book.cardNumber) {
            const row = cardRow(number);
            near(cards.numbers[row + MEAN], plain.cards.get(card)?.mean ?? Number.NaN);
            near(cards.numbers[row + SHIFT], plain.cards.get(card)?.shift ?? Number.NaN);
          }
          expect(apart.filter((one) => !(one < 1e-9))).toEqual([]);
        }),
        { numRuns: 10, endOnFailure: true },
      );
    },
  );
});

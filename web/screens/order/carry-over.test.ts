import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SEQUENCE } from '../../../core/sequence/built-in.ts';
import { addItem, dropItem, type Progress, taughtOf } from '../../../core/sequence/progress.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { carryOver } from './carry-over.ts';

const steps = SEQUENCE.steps;
const place = fc.integer({ min: 0, max: steps.length });
const singles = fc.array(fc.nat({ max: steps.length - 1 }), { maxLength: 6 });

/** The built-in steps in another order, perhaps without some. */
const other: fc.Arbitrary<Sequence> = fc
  .shuffledSubarray([...steps], { minLength: 1 })
  .map((some) => ({ name: 'other', steps: some.map((step, at) => ({ ...step, number: at + 1 })) }));

function standing(upTo: number, added: readonly number[], dropped: readonly number[]): Progress {
  const itemsOf = (places: readonly number[]) => places.flatMap((at) => steps[at]?.items ?? []);
  const start: Progress = { sequence: SEQUENCE, upTo, added: [], dropped: [] };
  return itemsOf(dropped).reduce(dropItem, itemsOf(added).reduce(addItem, start));
}

describe('changing to another order', () => {
  it('keeps exactly what was taught', () => {
    fc.assert(
      fc.property(place, singles, singles, other, (upTo, added, dropped, next) => {
        const before = standing(upTo, added, dropped);
        const after = carryOver(before, next);
        const was = taughtOf(before);
        const now = taughtOf(after);
        expect([...now.irregularWords].sort()).toEqual([...was.irregularWords].sort());
        expect([...now.habits].sort()).toEqual([...was.habits].sort());
        expect([...now.correspondences].sort()).toEqual([...was.correspondences].sort());
      }),
      { numRuns: 60 },
    );
  });

  it('puts the line after the taught beginning of the new order', () => {
    const reversed = {
      name: 'reversed',
      steps: steps.toReversed().map((step, at) => ({ ...step, number: at + 1 })),
    };
    expect(carryOver(standing(steps.length, [], []), reversed).upTo).toBe(steps.length);
    expect(carryOver(standing(steps.length - 1, [], []), reversed).upTo).toBe(0);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyWeekday, schoolDaysWithout } from '../learners/school-days.ts';
import { makeRandom } from '../random.ts';
import { paceOf, standAhead } from './year.ts';

// 20 003 is a Monday: 2024-10-07.
const MONDAY = 20_003;

describe('where a group will stand', () => {
  const pace = { steps: 20, days: 40 };
  const now = { day: MONDAY, step: 30 };

  it('goes by its pace so far, and less surely the farther ahead', () => {
    const [near, far] = standAhead(pace, now, [MONDAY + 28, MONDAY + 140], 136, everyWeekday);
    // 20 and 100 school days at a step every other day.
    expect(near?.step).toBe(40);
    expect(far?.step).toBeGreaterThanOrEqual(79);
    expect(far?.step).toBeLessThanOrEqual(81);
    expect((far?.high ?? 0) - (far?.low ?? 0)).toBeGreaterThan(
      (near?.high ?? 0) - (near?.low ?? 0),
    );
  });

  it('stops at the end of the order, and stays where no school is left', () => {
    const [end] = standAhead(pace, now, [MONDAY + 1400], 136, everyWeekday);
    expect(end).toMatchObject({ step: 136, low: 136, high: 136 });
    const none = schoolDaysWithout([{ first: MONDAY + 1, last: MONDAY + 30 }]);
    expect(standAhead(pace, now, [MONDAY + 30], 136, none)[0]).toMatchObject({
      step: 30,
      low: 30,
      high: 30,
    });
  });

  it('is not told from too short a time, or where nothing moved', () => {
    const stood = [{ day: MONDAY, step: 3 }];
    expect(paceOf(stood, MONDAY + 30, everyWeekday)).toBeNull();
    expect(paceOf([...stood, { day: MONDAY + 1, step: 5 }], MONDAY + 2, everyWeekday)).toBeNull();
    expect(paceOf([], MONDAY, everyWeekday)).toBeNull();
    expect(paceOf([...stood, { day: MONDAY + 3, step: 7 }], MONDAY + 14, everyWeekday)).toEqual({
      steps: 4,
      days: 10,
    });
  });

  it('holds nine of ten of the classes whose steps come by chance', () => {
    const random = makeRandom(4);
    const days = 30;
    const ahead = 40;
    let inside = 0;
    const classes = 2000;
    const stepsIn = (rate: number, count: number): number => {
      let steps = 0;
      for (let day = 0; day < count; day++) {
        // Knuth, TAOCP 2, 3.4.1: a Poisson number.
        let product = random.fraction();
        while (product > Math.exp(-rate)) {
          steps += 1;
          product *= random.fraction();
        }
      }
      return steps;
    };
    for (let one = 0; one < classes; one++) {
      const rate = 0.2 + random.fraction();
      const steps = stepsIn(rate, days);
      const later = stepsIn(rate, ahead);
      const [found] = standAhead(
        { steps, days },
        { day: MONDAY, step: 0 },
        [MONDAY + 56],
        5000,
        everyWeekday,
      );
      if (found && found.low <= later && later <= found.high) inside += 1;
    }
    expect(inside / classes).toBeGreaterThan(0.88);
    expect(inside / classes).toBeLessThan(0.95);
  });

  it('never goes back, and its middle lies in its range', () => {
    fc.assert(
      fc.property(
        fc.nat(60),
        fc.integer({ min: 5, max: 200 }),
        fc.nat(200),
        (steps, days, away) => {
          const [found] = standAhead(
            { steps: steps + 1, days },
            now,
            [MONDAY + away],
            136,
            everyWeekday,
          );
          expect(found?.low).toBeGreaterThanOrEqual(now.step);
          expect(found?.low).toBeLessThanOrEqual(found?.step ?? 0);
          expect(found?.step).toBeLessThanOrEqual(found?.high ?? 0);
        },
      ),
    );
  });
});

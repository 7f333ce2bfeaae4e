import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundaryOf, type StepBox, stepAt } from './boundary.ts';

/** Steps laid out in lines of `perLine`, 50 wide, 60 high, with gaps of 10 and 20. */
function boxes(count: number, perLine: number): readonly StepBox[] {
  return Array.from({ length: count }, (_, place) => {
    const left = (place % perLine) * 60;
    const top = Math.floor(place / perLine) * 80;
    return { number: place + 1, left, right: left + 50, top, bottom: top + 60 };
  });
}

describe('the line between taught and untaught', () => {
  it('turns upward inside a line of steps, and runs straight between two lines', () => {
    expect(boundaryOf(boxes(8, 4), 2)).toEqual({ low: 67, turn: 115, high: -7 });
    expect(boundaryOf(boxes(8, 4), 4)).toEqual({ low: 67, turn: null, high: 67 });
  });

  it('stands above everything when nothing was taught, and below everything at the end', () => {
    expect(boundaryOf(boxes(8, 4), 0)).toEqual({ low: -7, turn: null, high: -7 });
    expect(boundaryOf(boxes(8, 4), 8)).toEqual({ low: 147, turn: null, high: 147 });
  });

  it('stands after a folded stage that is known by its last step only', () => {
    const folded = { number: 12, left: 0, right: 500, top: 0, bottom: 44 };
    const next = { number: 13, left: 0, right: 50, top: 60, bottom: 120 };
    expect(boundaryOf([folded, next], 12).low).toBe(51);
    expect(boundaryOf([folded, next], 13).low).toBe(127);
  });

  it('comes to the step whose place it is dragged to', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 9 }),
        (count, perLine) => {
          const all = boxes(count, perLine);
          for (const box of all) {
            expect(stepAt(all, box.right + 2, (box.top + box.bottom) / 2)).toBe(box.number);
          }
        },
      ),
    );
  });

  it('is at the start when dragged above everything', () => {
    expect(stepAt(boxes(8, 4), 500, -40)).toBe(0);
  });
});

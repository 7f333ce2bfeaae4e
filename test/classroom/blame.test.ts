import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Blame, shareBlame } from './blame.ts';

const chances = fc.array(fc.double({ min: 0.05, max: 0.95, noNaN: true }), {
  minLength: 1,
  maxLength: 6,
});

function blameOf(of: readonly number[], right: boolean, broke: number | null): Blame {
  const blame = { well: new Float64Array(of.length), wrong: new Float64Array(of.length) };
  shareBlame(blame, of.length, Float64Array.from(of), right, broke);
  return blame;
}

/** Every way a wrong reading can have gone, counted out: the first card that broke was n. */
function countedOut(of: readonly number[]) {
  const firsts = of.map(
    (chance, n) => of.slice(0, n).reduce((all, p) => all * p, 1) * (1 - chance),
  );
  const all = firsts.reduce((sum, one) => sum + one, 0);
  return {
    wrong: firsts.map((one) => one / all),
    well: of.map((_, at) => firsts.slice(at + 1).reduce((sum, one) => sum + one, 0) / all),
  };
}

describe('credit and blame for a reading', () => {
  it('goes to every card when it was right', () => {
    const { well, wrong } = blameOf([0.9, 0.5, 0.7], true, null);
    expect([...well]).toEqual([1, 1, 1]);
    expect([...wrong]).toEqual([0, 0, 0]);
  });

  it('lets the cards before the one that broke go well, and leaves later ones unknown', () => {
    const { well, wrong } = blameOf([0.9, 0.5, 0.7, 0.8], false, 2);
    expect([...well]).toEqual([1, 0, 0, 0]);
    expect([...wrong]).toEqual([0, 1, 0, 0]);
  });

  it('is shared by what each card is likely to have done when it was not said which broke', () => {
    fc.assert(
      fc.property(chances, (of) => {
        const { well, wrong } = blameOf(of, false, null);
        const expected = countedOut(of);
        for (const at of of.keys()) {
          expect(wrong[at]).toBeCloseTo(expected.wrong[at] ?? Number.NaN, 9);
          expect(well[at]).toBeCloseTo(expected.well[at] ?? Number.NaN, 9);
        }
      }),
    );
  });

  it('falls on the shaky card before the sure ones', () => {
    const { wrong } = blameOf([0.95, 0.4, 0.95], false, null);
    expect(wrong[1]).toBeGreaterThan(0.8);
  });

  it('is all of one card when there is but one', () => {
    expect([...blameOf([0.7], false, null).wrong]).toEqual([1]);
  });
});

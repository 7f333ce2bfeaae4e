import { describe, expect, it } from 'vitest';
import { holePlaces, RING_COUNTS } from '../binder.ts';
import { PAPERS, paperSize } from '../paper.ts';
import { pilesByBinder, stripsOf } from './strip-cuts.ts';

/** Half of the widest punch, 5/16 in, in mm (common practice, no source). */
const HALF_HOLE = 4;

const cases = [2, 3, 4, 5].flatMap((piles) =>
  RING_COUNTS.flatMap((rings) => PAPERS.map((paper) => [piles, rings, paper] as const)),
);

describe('strips that turn one by one', () => {
  it.each(cases)('%i piles on %i rings, %s', (piles, rings, paper) => {
    const counts = pilesByBinder(piles, rings, paper);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(piles);
    expect(Math.max(...counts)).toBeLessThanOrEqual(rings);
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
    const width = paperSize[paper].height;
    const strips = stripsOf(Math.max(...counts), rings, paper);
    expect(strips).toHaveLength(Math.max(...counts));
    strips.forEach(({ left, right, holes }, at) => {
      expect(left).toBeGreaterThanOrEqual(strips[at - 1]?.right ?? 0);
      expect(right).toBeLessThanOrEqual(width + 1e-9);
      // Room for letters that a class can read, and a ring of its own, whole, with paper around it.
      expect(right - left).toBeGreaterThanOrEqual(55);
      expect(holes.length).toBeGreaterThan(0);
      // Its weight is the same on both sides of its holes, so that it hangs straight.
      const hung = holes.reduce((sum, hole) => sum + hole, 0) / holes.length;
      expect(hung).toBeCloseTo((left + right) / 2, 6);
      for (const hole of holes) {
        expect(hole - left).toBeGreaterThan(HALF_HOLE + 2);
        expect(right - hole).toBeGreaterThan(HALF_HOLE + 2);
      }
    });
    // No ring holds two piles.
    const rung = strips.flatMap(({ holes }) => holes);
    expect(new Set(rung).size).toBe(rung.length);
    for (const hole of rung) expect(holePlaces(rings, paper, width)).toContain(hole);
  });
});

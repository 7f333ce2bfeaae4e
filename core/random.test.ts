import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeRandom, makeXoshiro, shuffled } from './random.ts';

describe('chance', () => {
  test('is xoshiro128** to the digit', () => {
    // Outputs of the authors' xoshiro128starstar.c (v1.1) for the state 1, 2, 3, 4, as the
    // test suite of Rust's rand_xoshiro states them.
    const { bits } = makeXoshiro([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, bits)).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
      4258142804,
    ]);
  });

  test('the same seed gives the same chance, another seed another', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer(), (one, other) => {
        const first = Array.from({ length: 8 }, makeRandom(one).bits);
        expect(Array.from({ length: 8 }, makeRandom(one).bits)).toEqual(first);
        if (one !== other)
          expect(Array.from({ length: 8 }, makeRandom(other).bits)).not.toEqual(first);
      }),
    );
  });

  test('every face of a die comes up about equally often', () => {
    const { below } = makeRandom(7);
    const seen = new Array<number>(6).fill(0);
    for (let roll = 0; roll < 60_000; roll++) seen[below(6)]! += 1;
    // Six standard deviations (√(60000·1/6·5/6) ≈ 91) around 10,000.
    for (const count of seen) expect(Math.abs(count - 10_000)).toBeLessThan(550);
  });

  test('shuffling keeps every item once', () => {
    fc.assert(
      fc.property(fc.array(fc.integer()), fc.integer(), (items, seed) => {
        const mixed = shuffled(items, makeRandom(seed));
        expect([...mixed].sort((a, b) => a - b)).toEqual([...items].sort((a, b) => a - b));
      }),
    );
  });
});

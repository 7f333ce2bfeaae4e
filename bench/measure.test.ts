import { describe, expect, it } from 'vitest';
import { measure, summary } from './measure.ts';

const summed = (values: readonly number[]) => summary({ name: 'x', unit: 'ms', aim: 1, values });

describe('a measurement', () => {
  // The nearest-rank method by hand: rank ⌈0.5 · 5⌉ = 3, rank ⌈0.95 · 5⌉ = 5.
  it('takes the middle and the 95th of a hundred, whatever the order', () => {
    expect(summed([50, 15, 40, 20, 35])).toMatchObject({ median: 35, p95: 50, runs: 5 });
    const hundred = Array.from({ length: 100 }, (_, i) => 100 - i);
    expect(summed(hundred)).toMatchObject({ median: 50, p95: 95, runs: 100 });
  });

  it('of one value is that value', () => {
    expect(summed([7])).toMatchObject({ median: 7, p95: 7 });
  });

  it('of nothing is an error', () => {
    expect(() => summed([])).toThrow('Nothing was measured');
  });

  it('runs the work as often as asked, the warm-up not counted, and waits for it', async () => {
    let started = 0;
    let ended = 0;
    const run = async () => {
      started++;
      await new Promise((resolve) => setTimeout(resolve, 5));
      ended++;
    };
    const { runs, median } = await measure({ name: 'x', aim: 1, run, warmUps: 2, runs: 3 });
    expect([started, ended, runs]).toEqual([5, 5, 3]);
    expect(median).toBeGreaterThan(4);
  });
});

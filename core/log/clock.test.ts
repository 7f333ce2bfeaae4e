import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LATEST, tick } from './clock.ts';

describe('the clock of the log', () => {
  it('goes forward with every event, whatever the clock of the device does', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 4e12, noNaN: true })), (readings) => {
        let last = 0;
        for (const now of readings) {
          const next = tick(last, now);
          expect(next).toBeGreaterThan(last);
          expect(Number.isSafeInteger(next)).toBe(true);
          last = next;
        }
      }),
    );
  });

  it('is the time of day while the clock is right', () => {
    expect(tick(1000, 5000.9)).toBe(5000);
  });

  it('goes on after the last event when the clock was set back', () => {
    expect(tick(5000, 1000)).toBe(5001);
  });

  it('never passes the last time that a date can hold', () => {
    expect(tick(LATEST - 1, 0)).toBe(LATEST);
    expect(tick(LATEST, 0)).toBe(LATEST);
    // ECMAScript, "Time Values and Time Range": ±8,640,000,000,000,000 ms and no more.
    expect(Number.isNaN(new Date(LATEST).getTime())).toBe(false);
    expect(Number.isNaN(new Date(LATEST + 1).getTime())).toBe(true);
  });
});

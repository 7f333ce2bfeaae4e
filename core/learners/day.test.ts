import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeDay, parseDay, weekdayOf } from './day.ts';

const days = fc.integer({ min: -100_000, max: 200_000 });

describe('days', () => {
  it('are those of the language’s own calendar', () => {
    fc.assert(
      fc.property(days, (day) => {
        const date = new Date(day * 86_400_000);
        expect(makeDay(day)).toBe(date.toISOString().slice(0, 10));
        expect((weekdayOf(day) + 1) % 7).toBe(date.getUTCDay());
      }),
    );
  });

  it('read back what they write', () => {
    fc.assert(
      fc.property(days, (day) => {
        expect(parseDay(makeDay(day))).toBe(day);
      }),
    );
  });

  it.each([
    '2026-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-1-1',
    '02/03/2026',
    '',
    '2026-03-02T08',
  ])('do not take %s for a day', (text) => {
    expect(parseDay(text)).toBeNull();
  });
});

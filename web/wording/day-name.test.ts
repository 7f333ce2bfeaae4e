import { describe, expect, it } from 'vitest';
import { dayName, whenSaid } from './day-name.ts';

/* Days of the week by the calendar: 24 November 2026 is a Tuesday (ISO 8601 week 48, day 2). */
const tuesday = '2026-11-24';

describe('a day in words', () => {
  it.each([
    ['2026-11-24', 'today'],
    ['2026-11-23', 'yesterday'],
    ['2026-11-20', 'on Friday'],
    ['2026-11-18', 'on Wednesday'],
    ['2026-11-17', 'on November 17'],
    ['2025-12-31', 'on December 31'],
    ['2026-11-25', 'on November 25'],
  ])('says of %s on a Tuesday that it was %s', (day, said) => {
    expect(whenSaid(day, tuesday)).toBe(said);
  });

  it('counts days, not hours, over the change to winter time', () => {
    expect(whenSaid('2026-10-31', '2026-11-01')).toBe('yesterday');
    expect(whenSaid('2026-11-01', '2026-11-02')).toBe('yesterday');
  });

  it('is written in full, with the year when it is not this one', () => {
    expect(dayName(tuesday, tuesday)).toBe('Tuesday, November 24');
    expect(dayName('2025-12-31', tuesday)).toBe('Wednesday, December 31, 2025');
  });
});

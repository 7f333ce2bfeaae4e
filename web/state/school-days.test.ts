import { expect, it } from 'vitest';
import { type Day, parseDay } from '../../core/learners/day.ts';
import { calendar, isSchool } from './school-days.ts';

it('there is no school on a day that she entered, nor on weekends', () => {
  const monday = parseDay('2026-12-21') as Day;
  expect(isSchool.value(monday)).toBe(true);
  calendar.value = { free: [{ from: monday, to: monday + 1 }], until: '' };
  expect([-1, 0, 1, 2, 5].map((days) => isSchool.value(monday + days))).toEqual([
    false,
    false,
    false,
    true,
    false,
  ]);
});

import { expect, it } from 'vitest';
import { classId } from '../../core/ids.ts';
import { type Day, parseDay } from '../../core/learners/day.ts';
import { openClass } from './open-class.ts';
import { isSchool, setDaysOff } from './school-days.ts';

const monday = parseDay('2026-12-21') as Day;
const schoolOn = () => [-1, 0, 1, 2, 5].map((days) => isSchool.value(monday + days));

it('there is no school on a day that she entered for the class, nor on weekends', async () => {
  await openClass(classId('breaks'));
  const days = { first: '2026-12-21', last: '2026-12-22' };
  expect(schoolOn()).toEqual([false, true, true, true, false]);
  setDaysOff(days, true);
  expect(schoolOn()).toEqual([false, false, false, true, false]);
  await openClass(classId('no-breaks'));
  expect(schoolOn()).toEqual([false, true, true, true, false]);
  await openClass(classId('breaks'));
  setDaysOff(days, false);
  expect(schoolOn()).toEqual([false, true, true, true, false]);
});

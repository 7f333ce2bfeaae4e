import { expect, it } from 'vitest';
import { parseDay } from './day.ts';
import { countSchoolDays, everyWeekday, schoolDaysWithout } from './school-days.ts';

const day = (text: string) => parseDay(text) as number;
const winter = { first: day('2026-12-21'), last: day('2027-01-01') };

it.each([
  ['2026-12-18', true, true],
  ['2026-12-19', false, false],
  ['2026-12-20', false, false],
  ['2026-12-21', true, false],
  ['2027-01-01', true, false],
  ['2027-01-04', true, true],
])('%s is a school day: %s without holidays, %s with them', (text, plain, without) => {
  expect(everyWeekday(day(text))).toBe(plain);
  expect(schoolDaysWithout([winter])(day(text))).toBe(without);
});

it('counts school days up to a day, that one too', () => {
  const friday = day('2026-12-18');
  expect(countSchoolDays(friday, friday, everyWeekday)).toBe(0);
  expect(countSchoolDays(friday, friday + 7, everyWeekday)).toBe(5);
  expect(countSchoolDays(friday, day('2027-01-05'), schoolDaysWithout([winter]))).toBe(2);
});

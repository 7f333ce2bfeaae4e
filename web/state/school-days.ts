import { computed } from '@preact/signals';
import { array, number, object, string } from 'valibot';
import { type SchoolDays, schoolDaysWithout } from '../../core/learners/school-days.ts';
import { remembered } from '../device/remembered.ts';

/** Her days without school, and the day that she looks ahead to, `YYYY-MM-DD`; empty for the next June 12. */
export const calendar = remembered(
  'school-days',
  object({ free: array(object({ from: number(), to: number() })), until: string() }),
  { free: [], until: '' },
);

/** Whether there is school on a day, by weekdays and what she entered. */
export const isSchool = computed<SchoolDays>(() =>
  schoolDaysWithout(calendar.value.free.map(({ from, to }) => ({ first: from, last: to }))),
);

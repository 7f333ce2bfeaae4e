import { computed } from '@preact/signals';
import { parseDay } from '../../core/learners/day.ts';
import { type SchoolDays, schoolDaysWithout } from '../../core/learners/school-days.ts';
import type { DaysOff } from '../../core/log/class-calendar.ts';
import { classState, recordUndoable } from './open-class.ts';

/** Whether there is school on a day, by weekdays and the breaks of the class. */
export const isSchool = computed<SchoolDays>(() =>
  schoolDaysWithout(
    classState.value.calendar.off.flatMap((days) => {
      const [first, last] = [parseDay(days.first), parseDay(days.last)];
      return first === null || last === null ? [] : { first, last };
    }),
  ),
);

/** Says that there is no school on these days, or that there is after all; with a way back. */
export function setDaysOff({ first, last }: DaysOff, holds: boolean): void {
  recordUndoable(holds ? 'A break was added' : 'A break was taken out', {
    kind: 'no-school',
    body: { first, last, holds },
  });
}

/** When a class was last saved as a file, by its id; the day alone is remembered, on this device. */

import { check, pipe, record, string } from 'valibot';
import type { ClassId } from '../../core/ids.ts';
import { parseDay } from '../../core/learners/day.ts';
import { remembered } from '../device/remembered.ts';

const isoDay = pipe(
  string(),
  check((day) => parseDay(day) !== null),
);

const lastCopies = remembered('last-copies', record(string(), isoDay), {});

/** Remembers that these classes were saved on a day, `YYYY-MM-DD`. */
export function noteCopy(classIds: Iterable<ClassId>, day: string): void {
  const days = Object.fromEntries([...classIds].map((classId) => [classId, day]));
  lastCopies.value = { ...lastCopies.peek(), ...days };
}

/** The day of the last copy of a class; null when none was made on this device. */
export function lastCopyOf(classId: ClassId): string | null {
  return lastCopies.value[classId] ?? null;
}

/** Forgets the copies of a class that was deleted. */
export function forgetCopies(deleted: ClassId): void {
  const others = Object.entries(lastCopies.peek()).filter(([classId]) => classId !== deleted);
  lastCopies.value = Object.fromEntries(others);
}

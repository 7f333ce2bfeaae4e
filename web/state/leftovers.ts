/** What she typed or made and has not put into a log yet; it goes when its class is deleted. */

import { array, custom, object, record, string } from 'valibot';
import {
  type ChildId,
  type ClassId,
  type DrillId,
  type GroupId,
  isClassId,
  isDrillId,
  isGroupId,
} from '../../core/ids.ts';
import { remembered } from '../device/remembered.ts';
import { asideCopies, throwAsideAway } from '../device/shelf.ts';
import { forgetDictation } from './dictation-made.ts';
import { forgetCopies } from './last-copy.ts';

/** Names for children; remembered on this device until they are added. */
export const namesTyped = remembered('names-typed', string(), '');

/** Her lines about drills. */
export const noteDrafts = remembered(
  'notes',
  array(
    object({
      classId: custom<ClassId>(isClassId),
      groupId: custom<GroupId>(isGroupId),
      drillId: custom<DrillId>(isDrillId),
      text: string(),
    }),
  ),
  [],
);

/** Her lines on pages, by the class, the page and whom it is about. */
export const lineDrafts = remembered('page-lines', record(string(), string()), {});

/** Leaves nothing that was typed about a child of whom everything was deleted. */
export function forgetLeftoversOf(child: ChildId, name: string): void {
  const isOfChild = (text: string): boolean => text.includes(child) || text.includes(name);
  noteDrafts.value = noteDrafts.peek().filter(({ text }) => !text.includes(name));
  lineDrafts.value = Object.fromEntries(
    Object.entries(lineDrafts.peek()).filter((line) => !line.some(isOfChild)),
  );
  throwAsideAway(
    asideCopies()
      .filter(({ text }) => text.includes(child))
      .map((copy) => copy.name),
  );
}

/** Leaves nothing of a class that was deleted. */
export function forgetLeftovers(deleted: ClassId): void {
  namesTyped.value = '';
  noteDrafts.value = noteDrafts.peek().filter(({ classId }) => classId !== deleted);
  lineDrafts.value = Object.fromEntries(
    Object.entries(lineDrafts.peek()).filter(([key]) => !key.startsWith(`${deleted} `)),
  );
  forgetCopies(deleted);
  forgetDictation();
  throwAsideAway(
    asideCopies()
      .filter(({ text }) => text.includes(deleted))
      .map(({ name }) => name),
  );
}

import { type ClassId, classId } from '../../core/ids.ts';
import type { StoreError } from '../../core/log/event-store.ts';
import { newId } from '../device/log/ids.ts';
import { forgetBoards } from './boards.ts';
import { classesInUse, refreshClasses, tellForgotten } from './class-list.ts';
import { forgetLeftovers } from './leftovers.ts';
import { classState, openClass, store } from './open-class.ts';

/** Deletes a class for good; why it could not be done, or null. */
export async function forgetClass(classId: ClassId): Promise<StoreError | null> {
  if (classId === classState.peek().id) await openAnother(classId);
  const outcome = await store.forget(classId);
  if ('error' in outcome) return outcome.error;
  forgetLeftovers(classId);
  forgetBoards(classId);
  tellForgotten(classId);
  await refreshClasses();
  return null;
}

/** Opens a class in use other than this one; a fresh one when there is none. */
export async function openAnother(left: ClassId): Promise<void> {
  // The list may not have come yet; an empty class must not take the place of one that is there.
  await refreshClasses();
  const other = classesInUse.peek().find((each) => each.classId !== left);
  await openClass(other?.classId ?? classId(newId()));
}

import { computed, effect, signal } from '@preact/signals';
import type { ClassId } from '../../core/ids.ts';
import { type ClassHead, isOfHead } from '../../core/log/event-store.ts';
import { isText } from '../../core/log/is-value.ts';
import { replay } from '../../core/log/replay.ts';
import { openLink } from '../device/link.ts';
import { classHeads, classState, openLastClass, store } from './open-class.ts';

/** A class in the list of those on this device. */
export interface ListedClass {
  readonly classId: ClassId;
  /** Empty until she has named it. */
  readonly name: string;
  /** Put away. */
  readonly archived: boolean;
}

const heads = signal<readonly ClassHead[]>([]);

/** The classes on this device, the open one once it has begun, in the order of their names. */
export const classList = computed<readonly ListedClass[]>(() => {
  const { id, name, archived, last } = classState.value;
  const others = heads.value
    .filter(({ classId }) => classId !== id)
    .map(({ classId, events }) => listed(classId, replay(classId, events)));
  const all = last > 0 ? [...others, listed(id, { name, archived })] : others;
  return all.toSorted(
    (one, other) => one.name.localeCompare(other.name) || one.classId.localeCompare(other.classId),
  );
});

/** Those that are not put away. */
export const classesInUse = computed(() => classList.value.filter(({ archived }) => !archived));

/** What to call a class. */
export function nameOfClass({ name }: Pick<ListedClass, 'name'>): string {
  return name === '' ? 'Class without a name' : name;
}

/** Looks again which classes there are. */
export async function refreshClasses(): Promise<void> {
  heads.value = await classHeads();
}

/** Tells the other windows that a class was deleted, so that none goes on with it. */
export function tellForgotten(classId: ClassId): void {
  link.send(classId);
}

const link = openLink<string>('sweepline.forgotten', isText, async (classId) => {
  if (classState.peek().id === classId) await openLastClass();
  await refreshClasses();
});

store.subscribe((events) => {
  if (events.some(isOfHead)) void refreshClasses();
});

effect(() => {
  if (classState.value.id !== '') void refreshClasses();
});

function listed(
  classId: ClassId,
  { name, archived }: Pick<ListedClass, 'name' | 'archived'>,
): ListedClass {
  return { classId, name, archived };
}

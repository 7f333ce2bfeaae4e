/**
 * The class that is open, for the screens: its log folded into a value, which
 * group is at work, and the one way to add to the log. What happens holds at
 * once; it is kept for good a few milliseconds later (web/device/log/).
 */

import { computed, signal } from '@preact/signals';
import { custom, object } from 'valibot';
import {
  type ClassId,
  classId,
  type EventId,
  type GroupId,
  isClassId,
  isGroupId,
} from '../../core/ids.ts';
import { type ClassState, type Group, WHOLE_CLASS } from '../../core/log/class-state.ts';
import type { EventSpec, LogEvent } from '../../core/log/event.ts';
import type { ClassHead } from '../../core/log/event-store.ts';
import { replay } from '../../core/log/replay.ts';
import { childrenOf, smallGroups } from '../../core/log/roster.ts';
import {
  createDeviceStore,
  type OpenedClass,
  openInMemory,
  openClass as openOnDevice,
} from '../device/log/device-log.ts';
import { newId } from '../device/log/ids.ts';
import { remembered } from '../device/remembered.ts';
import { mayNote } from './my-right.ts';
import { noteUndo } from './undo.ts';

/** Where all classes of this device are kept. */
export const store = createDeviceStore();

/** Until a class was opened on this device. */
const NO_CLASS = classId('');

const open = remembered(
  'open',
  object({ classId: custom<ClassId>(isClassId), groupId: custom<GroupId>(isGroupId) }),
  {
    classId: NO_CLASS,
    groupId: WHOLE_CLASS,
  },
);

/** A class that is only looked at, as long as it is: nothing of it is kept, and hers opens next time. */
const lookedAt = signal<{ readonly classId: ClassId; readonly groupId: GroupId } | null>(null);
const at = computed(() => lookedAt.value ?? open.value);

/** Whether the class that is open is only looked at. */
export const isLookedAt = computed(() => lookedAt.value !== null);

const log = signal<OpenedClass | null>(null);
const none = replay(NO_CLASS, []);

/** The class that is open; an empty one until the first is. */
export const classState = computed<ClassState>(() => log.value?.state.value ?? none);

/** How this device shares the open class; null when it does not. */
export const sharedAs = computed(() => log.value?.shared ?? null);

/** The group at work: a small group that is there, else the whole class. */
export const group = computed<Group>(() => {
  const { groups } = classState.value;
  const chosen = groups.get(at.value.groupId);
  return chosen && !chosen.removed ? chosen : (groups.get(WHOLE_CLASS) as Group);
});

/** The class and the group at work as one key, by which this device remembers what is theirs. */
export const groupKey = computed(() => `${classState.value.id} ${group.value.id}`);

/** The children of the group at work. */
export const children = computed(() => childrenOf(classState.value, group.value.id));

/** What to call the group at work. */
export const groupName = computed(() => nameOfGroup(group.value, classState.value));

/**
 * Opens the class that was open last, which is asked for first since it is nearly always there; else any
 * other. A first one begins with its first event.
 */
export async function openLastClass(): Promise<void> {
  const { classId: last, groupId } = open.peek();
  if (last !== NO_CLASS) {
    await openClass(last, groupId);
    if (classState.peek().last > 0) return;
  }
  const heads = await classHeads();
  const there = heads.find((head) => !replay(head.classId, head.events).archived) ?? heads[0];
  if (there || last === NO_CLASS) await openClass(there?.classId ?? classId(newId()), groupId);
}

/** Every class on this device, with the events that name it. */
export async function classHeads(): Promise<readonly ClassHead[]> {
  const answer = await store.classes();
  return 'classes' in answer ? answer.classes : [];
}

/** Opens a class of this device; one that is not there yet begins with its first event. */
export async function openClass(classId: ClassId, groupId: GroupId = WHOLE_CLASS): Promise<void> {
  const opened = await openOnDevice(store, classId);
  log.peek()?.close();
  lookedAt.value = null;
  open.value = { classId, groupId };
  log.value = opened;
}

/** Opens a class that is only looked at: it is in memory, and no other window hears of it. */
export async function lookAtClass(classId: ClassId, events: readonly LogEvent[]): Promise<void> {
  const opened = await openInMemory(classId, events);
  log.peek()?.close();
  lookedAt.value = { classId, groupId: WHOLE_CLASS };
  log.value = opened;
}

/** Reads the open class again, when its log has grown otherwise than by `record`. */
export function reopenClass(): Promise<void> {
  if (lookedAt.peek()) return Promise.resolve();
  return openClass(open.peek().classId, open.peek().groupId);
}

/** Turns to another group of the class. */
export function chooseGroup(groupId: GroupId): void {
  if (lookedAt.peek()) lookedAt.value = { ...at.peek(), groupId };
  else open.value = { ...open.peek(), groupId };
}

/**
 * Adds to the log of the open class, all at once; what happened holds from now on. Where this device may not
 * note all of it, nothing is added and she is told.
 */
export function record(...specs: readonly EventSpec[]): readonly LogEvent[] {
  if (!mayNote(specs)) return [];
  return log.peek()?.record(...specs).events ?? [];
}

/** Adds to the log; resolves to whether it is kept for good. */
export async function recordForGood(...specs: readonly EventSpec[]): Promise<boolean> {
  if (!mayNote(specs)) return false;
  const outcome = await log.peek()?.record(...specs).kept;
  return outcome !== undefined && 'kept' in outcome;
}

/** Adds to the log, and says so with a way back. */
export function recordUndoable(said: string, ...specs: readonly EventSpec[]): readonly LogEvent[] {
  const events = record(...specs);
  if (events.length === 0) return events;
  const classId = classState.peek().id;
  noteUndo(said, () => {
    if (classState.peek().id === classId) takeBack(events);
  });
  return events;
}

/** Takes events back: they count as if they had not happened. */
export function takeBack(events: readonly { readonly id: EventId }[]): void {
  record(...events.map(({ id }): EventSpec => ({ kind: 'undone', body: { event: id } })));
}

/** What to call a group: its own name, or what it is. */
export function nameOfGroup({ id, name }: Group, state: ClassState): string {
  if (name !== '') return name;
  if (id === WHOLE_CLASS) return 'Whole class';
  return `Group ${smallGroups(state).findIndex((other) => other.id === id) + 1}`;
}

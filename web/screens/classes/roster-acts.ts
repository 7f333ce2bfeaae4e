import { signal } from '@preact/signals';
import { type ChildId, childId, type GroupId, groupId } from '../../../core/ids.ts';
import { type Child, type Group, WHOLE_CLASS } from '../../../core/log/class-state.ts';
import type { EventSpec, NameOrder } from '../../../core/log/event.ts';
import { childMovedBefore, groupMovedBefore } from '../../../core/log/name-order.ts';
import { childrenOf, smallGroups } from '../../../core/log/roster.ts';
import { groupBegun, groupRemoved } from '../../../core/log/roster-changes.ts';
import { newId } from '../../device/log/ids.ts';
import { classState, nameOfGroup, recordUndoable } from '../../state/open-class.ts';
import { askToKeep } from './kept-for-good.ts';
import { say } from './wording.ts';

/** The child whose name takes the focus when it is next shown, so that a move does not lose it. */
export const toFocus = signal<string | null>(null);

/** Adds children, to a small group or to none; can be undone. With the first, the browser is asked to keep all for good. */
export function addChildren(names: readonly string[], group: GroupId | null): void {
  const isFirst = classState.peek().children.size === 0;
  const specs = names.flatMap((name): readonly EventSpec[] => {
    const id = childId(newId());
    const named = set({ of: 'child', id, field: 'name', value: name });
    return group === null
      ? [named]
      : [named, set({ of: 'child', id, field: 'group', value: group })];
  });
  if (specs.length === 0) return;
  const [only] = names;
  recordUndoable(
    names.length === 1
      ? say.rosterActs.added(only ?? '')
      : say.rosterActs.addedChildren(names.length),
    ...specs,
  );
  if (isFirst) void askToKeep();
}

/** Gives a child another name; can be undone. */
export function renameChild({ id, name: before }: Child, name: string): void {
  if (name === '' || name === before) return;
  recordUndoable(
    say.rosterActs.isNow(before, name),
    set({ of: 'child', id, field: 'name', value: name }),
  );
}

/** Moves a child to a small group, or to none; all that was noted of it goes along. Can be undone. */
export function moveChild({ id, name, group: before }: Child, group: Group | null): void {
  if ((group?.id ?? null) === before) return;
  const said = group
    ? say.rosterActs.isInNow(name, nameOfGroup(group, classState.peek()))
    : say.rosterActs.isInNoGroup(name);
  recordUndoable(said, set({ of: 'child', id, field: 'group', value: group?.id ?? null }));
}

const orderNames: Readonly<Record<NameOrder, string>> = {
  name: say.rosterActs.namesGo,
  seat: say.rosterActs.namesGoBySeat,
  typed: say.rosterActs.namesGoAsThey,
};

/** Orders the names of the class, everywhere; can be undone. */
export function orderNamesBy(value: NameOrder): void {
  const { id } = classState.peek();
  recordUndoable(orderNames[value], set({ of: 'class', id, field: 'namesBy', value }));
}

/** Seats a child before another one, or last; can be undone. */
export function seatBefore({ id, name }: Child, before: ChildId | null): void {
  const specs = childMovedBefore(childrenOf(classState.peek(), WHOLE_CLASS), id, before);
  if (specs.length > 0) recordUndoable(say.rosterActs.hasANewSeat(name), ...specs);
}

/** Puts a group before another one in the order of the day, or last; can be undone. */
export function comeBefore(group: Group, before: GroupId | null): void {
  const state = classState.peek();
  const specs = groupMovedBefore(smallGroups(state), group.id, before);
  const said = say.rosterActs.hasANewPlace(nameOfGroup(group, state));
  if (specs.length > 0) recordUndoable(said, ...specs);
}

/** Takes a child out of the class; can be undone, and what was noted is kept. */
export function removeChild({ id, name }: Child): void {
  recordUndoable(
    say.rosterActs.isOut(name),
    set({ of: 'child', id, field: 'removed', value: true }),
  );
}

/** Has a child back who was taken out; can be undone. */
export function bringBack({ id, name }: Child): void {
  recordUndoable(
    say.rosterActs.isInTheClass(name),
    set({ of: 'child', id, field: 'removed', value: false }),
  );
}

/** Begins a small group where the whole class stands; can be undone. */
export function addGroup(name: string): void {
  const state = classState.peek();
  const said = name === '' ? say.rosterActs.group(smallGroups(state).length + 1) : name;
  recordUndoable(say.rosterActs.addedGroup(said), ...groupBegun(state, groupId(newId()), name));
}

/** Gives a group another name; can be undone. */
export function renameGroup(group: Group, name: string): void {
  if (name === group.name) return;
  const before = nameOfGroup(group, classState.peek());
  recordUndoable(
    name === '' ? say.rosterActs.hasNoNameNow(before) : say.rosterActs.isNow(before, name),
    set({ of: 'group', id: group.id, field: 'name', value: name }),
  );
}

/** Takes a small group away, its children into no group; can be undone. */
export function removeGroup(group: Group): void {
  const state = classState.peek();
  recordUndoable(
    say.rosterActs.isNoLonger(nameOfGroup(group, state)),
    ...groupRemoved(state, group.id),
  );
}

function set(body: Extract<EventSpec, { readonly kind: 'set' }>['body']): EventSpec {
  return { kind: 'set', body };
}

import type { ChildId, GroupId } from '../ids.ts';
import { AMERICAN } from '../language/accent/accent.ts';
import { type Child, type ClassState, type Group, WHOLE_CLASS } from './class-state.ts';
import type { EventOf, Setting } from './event.ts';
import { inDayOrder, inNameOrder } from './name-order.ts';

/** The class itself, its groups, its children and what its devices are called. */
export type Roster = Pick<
  ClassState,
  'name' | 'archived' | 'namesBy' | 'accent' | 'groups' | 'children' | 'devices'
>;

/** Reads the roster from the settings in force, in their order: of several on one field, the last holds. */
export function readRoster(settings: readonly EventOf<'set'>[]): Roster {
  const itself = { name: '', archived: false, namesBy: 'name' as const, accent: AMERICAN };
  const groups = new Map<GroupId, Group>([[WHOLE_CLASS, newGroup(WHOLE_CLASS)]]);
  const children = new Map<ChildId, Child>();
  const devices = new Map<string, string>();
  for (const { body } of settings) {
    if (body.of === 'class') Object.assign(itself, fieldOf(body));
    else if (body.of === 'group') {
      groups.set(body.id, { ...(groups.get(body.id) ?? newGroup(body.id)), ...fieldOf(body) });
    } else if (body.of === 'device') devices.set(body.id, body.value);
    else {
      children.set(body.id, { ...(children.get(body.id) ?? newChild(body.id)), ...fieldOf(body) });
    }
  }
  return { ...itself, groups, children, devices };
}

/** The small groups there are now, in the order of the day. */
export function smallGroups({ groups }: Pick<ClassState, 'groups'>): readonly Group[] {
  return inDayOrder(
    [...groups.values()].filter(({ id, removed }) => id !== WHOLE_CLASS && !removed),
  );
}

/** The children there are now, in her order of names: of the whole class or of one small group. */
export function childrenOf(
  { children, namesBy }: Pick<ClassState, 'children'> & Partial<Pick<ClassState, 'namesBy'>>,
  groupId: GroupId,
): readonly Child[] {
  const there = [...children.values()].filter(
    ({ group, removed }) => !removed && (groupId === WHOLE_CLASS || group === groupId),
  );
  return inNameOrder(there, namesBy);
}

function newGroup(id: GroupId): Group {
  return { id, name: '', removed: false, standing: null, place: null };
}

function newChild(id: ChildId): Child {
  return { id, name: '', group: null, removed: false, place: null };
}

function fieldOf({ field, value }: Setting): Record<string, unknown> {
  return { [field]: value };
}

import type { GroupId } from '../ids.ts';
import { type Child, type ClassState, type Group, WHOLE_CLASS } from './class-state.ts';
import type { EventSpec } from './event.ts';
import { childrenOf } from './roster.ts';

/** What begins a small group: its name, which may be empty, and the place where the whole class stands. */
export function groupBegun(
  { groups }: Pick<ClassState, 'groups'>,
  id: GroupId,
  name: string,
): readonly EventSpec[] {
  const standing = groups.get(WHOLE_CLASS)?.standing ?? null;
  const named: EventSpec = { kind: 'set', body: { of: 'group', id, field: 'name', value: name } };
  if (standing === null) return [named];
  return [named, { kind: 'set', body: { of: 'group', id, field: 'standing', value: standing } }];
}

/** What takes a small group away: its children are in none from then on; all that was noted is kept. */
export function groupRemoved(
  state: Pick<ClassState, 'children'>,
  id: GroupId,
): readonly EventSpec[] {
  return [
    { kind: 'set', body: { of: 'group', id, field: 'removed', value: true } },
    ...childrenOf(state, id).map(
      (child): EventSpec => ({
        kind: 'set',
        body: { of: 'child', id: child.id, field: 'group', value: null },
      }),
    ),
  ];
}

/** The small group that a child is in; null for none, and for one that is there no more. */
export function groupOf({ groups }: Pick<ClassState, 'groups'>, { group }: Child): Group | null {
  const found = group === null || group === WHOLE_CLASS ? undefined : groups.get(group);
  return found === undefined || found.removed ? null : found;
}

/** Names that more than one child has, capitals aside, each as it was first written. */
export function sharedNames(children: readonly Child[]): readonly string[] {
  const first = new Map<string, string>();
  const shared = new Map<string, string>();
  for (const { name } of children) {
    const key = name.toLowerCase();
    const before = first.get(key);
    if (before === undefined) first.set(key, name);
    else shared.set(key, before);
  }
  return [...shared.values()];
}

import type { ChildId, GroupId } from '../ids.ts';
import type { ClassState, Group } from './class-state.ts';
import type { EventSpec } from './event.ts';
import { childrenOf, smallGroups } from './roster.ts';
import { groupBegun } from './roster-changes.ts';

/** Where the children of each new group go, in the order of the groups. */
export interface Regrouping {
  /** The small group that each becomes; null for one that is begun. */
  readonly homes: readonly (Group | null)[];
  /** What brings it about, all at once; empty when everyone is there already. */
  readonly specs: readonly EventSpec[];
}

/**
 * Parts the children named into small groups. A group that is there already is
 * kept for the new one that shares most children with it, so that few move and
 * its name and place in the order stay; one that nobody is in serves for the
 * next; for the rest groups are begun where the whole class stands, with ids
 * from `newId`. No group is taken away and no child that is not named moves.
 */
export function regroup(
  state: Pick<ClassState, 'groups' | 'children'>,
  groups: readonly (readonly ChildId[])[],
  newId: () => GroupId,
): Regrouping {
  const homes = homesFor(state, groups);
  const specs = groups.flatMap((members, at): readonly EventSpec[] => {
    const home = homes[at] ?? null;
    const id = home?.id ?? newId();
    const moved = members.filter((child) => state.children.get(child)?.group !== id);
    return [
      ...(home === null && members.length > 0 ? groupBegun(state, id, '') : []),
      ...moved.map(
        (child): EventSpec => ({
          kind: 'set',
          body: { of: 'child', id: child, field: 'group', value: id },
        }),
      ),
    ];
  });
  return { homes, specs };
}

function homesFor(
  state: Pick<ClassState, 'groups' | 'children'>,
  groups: readonly (readonly ChildId[])[],
): readonly (Group | null)[] {
  const there = smallGroups(state);
  const shared = groups.flatMap((members, at) =>
    there.map((group) => ({
      at,
      group,
      count: members.filter((child) => state.children.get(child)?.group === group.id).length,
    })),
  );
  const homes: (Group | null)[] = groups.map(() => null);
  for (const { at, group, count } of shared.toSorted((one, other) => other.count - one.count)) {
    if (count > 0 && homes[at] === null && !homes.includes(group)) homes[at] = group;
  }
  const empty = there.filter(
    (group) => !homes.includes(group) && childrenOf(state, group.id).length === 0,
  );
  return homes.map((home) => home ?? empty.shift() ?? null);
}

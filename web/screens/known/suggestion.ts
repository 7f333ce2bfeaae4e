/** Groups that are suggested, and moved by hand before they are made. */

import { signal } from '@preact/signals';
import { array, maxLength, maxValue, minLength, minValue, number, pipe } from 'valibot';
import { type KeptGroups, keepGroups } from '../../../core/groups/keep-groups.ts';
import { type ChildId, groupId } from '../../../core/ids.ts';
import { regroup } from '../../../core/log/regroup.ts';
import { childrenOf, smallGroups } from '../../../core/log/roster.ts';
import { makeRandom } from '../../../core/random.ts';
import { newId } from '../../device/log/ids.ts';
import { remembered } from '../../device/remembered.ts';
import { everyone } from '../../state/everyone.ts';
import { modelDay } from '../../state/knowledge.ts';
import { classState, recordUndoable } from '../../state/open-class.ts';
import { beliefsOf } from './group-rows.ts';
import { say } from './wording.ts';

/** The most children of a group and the most groups. */
export const MOST_CHILDREN = 40;
export const MOST_GROUPS = 6;

const size = pipe(number(), minValue(1), maxValue(MOST_CHILDREN));

/** How many children each group takes at most; empty until she sets it. */
const sizesSet = remembered(
  'group-sizes',
  pipe(array(size), maxLength(MOST_GROUPS), minLength(0)),
  [],
);

/** The sizes: hers, or up to three groups that hold everyone, of three children at least where there are so many. */
export function sizes(): readonly number[] {
  if (sizesSet.value.length > 0) return sizesSet.value;
  const count = everyone.value.length;
  const groups = Math.min(3, Math.max(1, Math.ceil(count / 3)));
  return Array.from({ length: groups }, () => Math.max(1, Math.ceil(count / groups)));
}

/** Sets the sizes; what was moved by hand begins again. */
export function setSizes(next: readonly number[]): void {
  sizesSet.value = [...next];
  moved.value = null;
}

/** The groups as she has changed them by hand, by child id; null while they are as suggested. */
export const moved = signal<readonly (readonly ChildId[])[] | null>(null);

/** The groups to be made, by child id, with what changes while they are as suggested; or why there can be none. */
export function suggestion():
  | { readonly groups: readonly (readonly ChildId[])[]; readonly kept: KeptGroups | null }
  | { readonly problem: string } {
  const there = new Set(everyone.value.map(({ id }) => id));
  const hand = moved.value;
  // Someone may have come or gone since she moved them.
  if (hand && hand.flat().length === there.size && hand.flat().every((id) => there.has(id))) {
    return { groups: hand, kept: null };
  }
  const state = classState.value;
  const kept = keepGroups({
    children: beliefsOf(everyone.value),
    today: smallGroups(state).map(({ id }) => childrenOf(state, id).map((child) => child.id)),
    sizes: sizes(),
    // The same all day, so that what she looks at does not change under her hand.
    random: makeRandom(modelDay()),
  });
  return 'error' in kept ? { problem: kept.error.message } : { groups: kept.groups, kept };
}

/** Moves a child to another of the groups. */
export function moveTo(child: ChildId, to: number, groups: readonly (readonly ChildId[])[]): void {
  moved.value = groups.map((members, at) => {
    const others = members.filter((id) => id !== child);
    return at === to ? [...others, child] : others;
  });
}

/** Makes the groups: one act, which can be undone. They stay on the screen as they were made. */
export function makeGroups(groups: readonly (readonly ChildId[])[]): void {
  const { specs } = regroup(classState.peek(), groups, () => groupId(newId()));
  if (specs.length > 0) recordUndoable(say.suggestion.madeTheGroups, ...specs);
  moved.value = groups;
}

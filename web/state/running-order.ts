import { type ClassState, type Group, WHOLE_CLASS } from '../../core/log/class-state.ts';
import { smallGroups } from '../../core/log/roster.ts';

/** The groups of a day in the order in which they come: the whole class, then the small groups in hers. */
export function groupsInOrder(state: ClassState): readonly Group[] {
  return [state.groups.get(WHOLE_CLASS) as Group, ...smallGroups(state)];
}

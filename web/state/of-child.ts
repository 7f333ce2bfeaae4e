import type { MapCell } from '../../core/facts/class-map.ts';
import { type Confusion, countConfusions } from '../../core/learners/confusions.ts';
import { type Child, WHOLE_CLASS } from '../../core/log/class-state.ts';
import { groupOf } from '../../core/log/roster-changes.ts';
import { taughtOf } from '../../core/sequence/progress.ts';
import { mapFor, taughtToChild } from './class-now.ts';
import { progressOfChild } from './everyone.ts';
import { observations } from './knowledge.ts';
import { classState, nameOfGroup } from './open-class.ts';

/** What a child knows of each card that its group was taught, in the order of the teaching. */
export function cellsOf({ id }: Child, cards: readonly string[]): readonly MapCell[] {
  return mapFor([{ of: 'child', id }], cards, 'read')[0]?.cells ?? [];
}

/** The same, of the cards of the child's own group. */
export function ownCells(child: Child): readonly MapCell[] {
  return cellsOf(child, taughtToChild(child));
}

/** What was heard instead when the child read, most often first. */
export function ownConfusions({ id }: Child): readonly Confusion[] {
  return countConfusions(
    observations.value.filter(({ child, task }) => child === id && task === 'read'),
  );
}

/** Where the child's group stands. */
export function placeOfChild(child: Child) {
  const state = classState.value;
  const group = groupOf(state, child) ?? state.groups.get(WHOLE_CLASS);
  const progress = progressOfChild(child);
  return {
    name: group ? nameOfGroup(group, state) : '',
    progress,
    taught: taughtOf(progress),
  };
}

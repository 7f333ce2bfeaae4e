import { computed, signal } from '@preact/signals';
import { classMap, type MapRow } from '../../core/facts/class-map.ts';
import { readingsIn } from '../../core/facts/class-readings.ts';
import type { CardId } from '../../core/language/card-id.ts';
import type { Who, WhoChild } from '../../core/learners/estimate.ts';
import { type Child, WHOLE_CLASS } from '../../core/log/class-state.ts';
import { taughtOf } from '../../core/sequence/progress.ts';
import { allTaught } from '../../core/sequence/teach.ts';
import { progressOfChild } from './everyone.ts';
import { knowledge, modelDay, observations } from './knowledge.ts';
import { children, classState, group, groupName } from './open-class.ts';
import { progress, taught } from './progress.ts';
import { inOrder } from './taught-order.ts';
import { thresholds } from './thresholds.ts';

/** Which skill is shown: from letters to sounds, or from sounds to letters. */
export const task = signal<'read' | 'spell'>('read');

/** The children of the group at work, in her order of names. */
export const members = children;

/** The cards that the group at work was taught, in the order of its teaching, words known by sight among them. */
export const taughtCards = computed(() => inOrder(allTaught(taught.value), progress.value));

/** The cards that a child's own group was taught, in the order of their teaching, words known by sight among them. */
export function taughtToChild(child: Child): readonly CardId[] {
  const there = progressOfChild(child);
  return inOrder(allTaught(taughtOf(there)), there);
}

/** The group at work, beside it the whole class, and each child: what they know of these cards today. */
export function rowsFor(cards: readonly CardId[]): {
  readonly groups: readonly MapRow[];
  readonly children: readonly MapRow<WhoChild>[];
} {
  const { id } = group.value;
  const groups: readonly Who[] = [
    { of: 'group', id },
    ...(id === WHOLE_CLASS ? [] : [{ of: 'group', id: WHOLE_CLASS } as const]),
  ];
  return {
    groups: mapFor(groups, cards),
    children: mapFor(
      members.value.map((child) => ({ of: 'child', id: child.id })),
      cards,
    ),
  };
}

/** What each of these knows of these cards today, in the skill that is shown. */
export function mapFor<Of extends Who>(
  all: readonly Of[],
  cards: readonly CardId[],
  skill = task.value,
): readonly MapRow<Of>[] {
  const spec = {
    known: knowledge.value[skill],
    readings: readings[skill].value,
    day: modelDay(),
    thresholds: thresholds.value,
  };
  return classMap(spec, all, cards);
}

/** What was read, by child and group, of each skill. */
export const readings = {
  read: computed(() => readingsIn(observations.value, 'read')),
  spell: computed(() => readingsIn(observations.value, 'spell')),
};

/** What to call a child or a group. */
export function nameOf({ of, id }: Who): string {
  if (of === 'child') return classState.value.children.get(id)?.name || 'a child';
  return id === WHOLE_CLASS ? 'Whole class' : groupName.value;
}

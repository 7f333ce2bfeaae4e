import { missedLast } from '../../core/facts/card-facts.ts';
import { cardsOfChild } from '../../core/facts/cards-of-child.ts';
import type { MapCell } from '../../core/facts/class-map.ts';
import type { Observation } from '../../core/learners/observation.ts';
import { type Child, WHOLE_CLASS } from '../../core/log/class-state.ts';
import { groupOf } from '../../core/log/roster-changes.ts';
import { taughtOf } from '../../core/sequence/progress.ts';
import { type ChildStory, childStory } from '../../core/story/child-story.ts';
import { storySaid } from '../../core/story/story-said.ts';
import { soundStyle } from './accent.ts';
import { mapFor, readings, taughtToChild } from './class-now.ts';
import { progressOfChild } from './everyone.ts';
import { classState, nameOfGroup } from './open-class.ts';

/** What a child knows of all that concerns it: what its group was taught, and what it was asked beyond that. */
export function cellsOf(
  child: Child,
  skill: Observation['task'],
): { readonly taught: readonly MapCell[]; readonly beyond: readonly MapCell[] } {
  const who = { of: 'child', id: child.id } as const;
  const cards = cardsOfChild(taughtToChild(child), readings[skill].value.of(who));
  const cells =
    mapFor(
      [who],
      cards.map(({ card }) => card),
      skill,
    )[0]?.cells ?? [];
  return {
    taught: cells.filter((_, at) => !cards[at]?.beyond),
    beyond: cells.filter((_, at) => cards[at]?.beyond),
  };
}

/** The cells of cards that were read, what needs it most first: the shakiest, then what was missed most often. */
export function neediestFirst(cells: readonly MapCell[]): readonly MapCell[] {
  const order = ['shaky', 'growing', 'secure'];
  return cells
    .filter(({ word }) => word !== 'not yet seen')
    .sort(
      (one, other) =>
        order.indexOf(one.word) - order.indexOf(other.word) ||
        missedLast(other.seen) - missedLast(one.seen) ||
        other.seen.missed - one.seen.missed ||
        one.estimate.p - other.estimate.p,
    );
}

/** What a child's reading comes to, by rules from its cells. */
export function storyOf(child: Child): ChildStory {
  const { taught, beyond } = cellsOf(child, 'read');
  return childStory(taught, beyond);
}

/** The one sentence on a child's reading, without its name. */
export function sentenceOn(child: Child): string {
  return storySaid(storyOf(child), soundStyle.value);
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

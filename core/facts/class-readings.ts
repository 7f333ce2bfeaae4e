import type { ChildId, GroupId } from '../ids.ts';
import type { Who } from '../learners/estimate.ts';
import type { Observation } from '../learners/observation.ts';
import { type ReadingsByCard, readingsByChild, readingsOfGroup } from './card-reading.ts';

/** What a class read, of one skill: by child, and by group. */
export interface ClassReadings {
  readonly of: (who: Who) => ReadingsByCard;
  /** The children of whom a reading of their own counts for a group, as they first read. */
  readonly childrenOf: (group: GroupId) => readonly ChildId[];
}

/** The readings of one skill. A group is gathered when it is first asked for. */
export function readingsIn(
  observations: readonly Observation[],
  task: Observation['task'],
): ClassReadings {
  const children = readingsByChild(observations, task);
  const groups = new Map<GroupId, ReadingsByCard>();
  return {
    of({ of, id }) {
      if (of === 'child') return children.get(id) ?? NONE;
      const known = groups.get(id) ?? readingsOfGroup(observations, task, id);
      groups.set(id, known);
      return known;
    },
    childrenOf(group) {
      const found = new Set<ChildId>();
      for (const { child, groups, task: skill } of observations) {
        if (child !== null && skill === task && groups.includes(group)) found.add(child);
      }
      return [...found];
    },
  };
}

const NONE: ReadingsByCard = new Map();

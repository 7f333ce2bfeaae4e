import type { GroupId } from '../ids.ts';
import type { ClassState, DrillRecord } from './class-state.ts';
import { planAt } from './drill-record.ts';

/** A group's drills, as they were begun. */
export function drillsOf(
  { drills }: Pick<ClassState, 'drills'>,
  groupId: GroupId,
): readonly DrillRecord[] {
  return [...drills.values()].filter((record) => record.groupId === groupId);
}

/** How many drills back a word is not wanted again. */
const DRILLS_BACK = 3;

/** The words that a group was shown in its last drills: tomorrow's run does without them. */
export function recentWords(
  state: Pick<ClassState, 'drills'>,
  groupId: GroupId,
): ReadonlySet<string> {
  const shown = drillsOf(state, groupId)
    .slice(-DRILLS_BACK)
    .flatMap((record) =>
      record.shown.flatMap(({ part, place, at }) =>
        part === 'blending' ? (planAt(record, at).run[place]?.word ?? []) : [],
      ),
    );
  return new Set(shown);
}

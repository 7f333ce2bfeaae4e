import type { ClassState, DrillRecord } from './class-state.ts';

/** A group's drills, as they were begun. */
export function drillsOf(
  { drills }: Pick<ClassState, 'drills'>,
  groupId: string,
): readonly DrillRecord[] {
  return [...drills.values()].filter((record) => record.groupId === groupId);
}

/** How many drills back a word is not wanted again. */
const DRILLS_BACK = 3;

/** The words that a group was shown in its last drills: tomorrow's run does without them. */
export function recentWords(
  state: Pick<ClassState, 'drills'>,
  groupId: string,
): ReadonlySet<string> {
  const shown = drillsOf(state, groupId)
    .slice(-DRILLS_BACK)
    .flatMap(({ drill, shown: places }) =>
      places.flatMap(({ part, place }) =>
        part === 'blending' ? (drill.run[place]?.word ?? []) : [],
      ),
    );
  return new Set(shown);
}

import type { Drill } from '../drills/drill.ts';
import type { ChildId, ClassId, DrillId, GroupId } from '../ids.ts';
import type { Running } from './run-state.ts';

/** What stays the same from act to act, so that it travels once. */
export interface Plan {
  /** Unlike that of any other plan. */
  readonly key: string;
  readonly classId: ClassId;
  readonly groupId: GroupId;
  readonly drillId: DrillId;
  readonly drill: Drill;
  readonly dictated: readonly string[];
  /** The children spoken of, each known by its place here. */
  readonly who: readonly ChildId[];
}

/** How a warm-up stands after an act, beside its plan: under 1 KB as JSON. */
export interface SentPlace
  extends Pick<Running, 'standing' | 'blending' | 'asking' | 'rehearsed' | 'count' | 'by'> {
  readonly plan: string;
  readonly on: boolean;
  readonly readers: readonly (number | null)[];
  readonly upcoming: readonly number[];
}

/** The plan by which a warm-up can be told: the one of before when it still holds. */
export function planFor(running: Running, before: Plan | null, key: string): Plan {
  const { classId, groupId, drillId, drill, dictated, calling } = running;
  const spoken = new Set([
    ...calling.readers.filter((child) => child !== null),
    ...calling.upcoming,
  ]);
  const holds =
    before?.drillId === drillId && before.drill === drill && before.dictated === dictated;
  if (holds && [...spoken].every((child) => before.who.includes(child))) return before;
  const known = before?.drillId === drillId ? before.who : [];
  const who = [...known, ...[...spoken].filter((child) => !known.includes(child))];
  return { key, classId, groupId, drillId, drill, dictated, who };
}

/** Where a warm-up stands, by its plan. What was called in other drills is left out: the log has it. */
export function placeOf(running: Running, plan: Plan): SentPlace {
  const { standing, blending, asking, rehearsed, count, by, calling } = running;
  const numberOf = (child: ChildId): number => plan.who.indexOf(child);
  return {
    plan: plan.key,
    standing,
    blending,
    asking,
    rehearsed,
    count,
    by,
    on: calling.on,
    readers: calling.readers.map((child) => (child === null ? null : numberOf(child))),
    upcoming: calling.upcoming.map(numberOf),
  };
}

/** The warm-up that `placeOf` told of; `earlier` are the children called in other drills, oldest first. */
export function runningAt(plan: Plan, place: SentPlace, earlier: readonly ChildId[]): Running {
  const { key: _, who, ...planned } = plan;
  const { plan: __, on, readers: told, upcoming, ...rest } = place;
  const readers = told.map((number) => (number === null ? null : (who[number] ?? null)));
  return {
    ...planned,
    ...rest,
    calling: {
      on,
      readers,
      upcoming: upcoming.flatMap((number) => who[number] ?? []),
      calls: [...earlier, ...readers.filter((child) => child !== null)],
    },
  };
}

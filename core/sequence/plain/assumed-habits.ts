import { CLUSTER_FAMILIES } from '../../language/clusters.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { HABITS, type Habit } from '../../language/taught.ts';
import type { Item, Step } from '../sequence.ts';

/** A habit that an order never names, and the step with which words that ask for it would open. */
export interface AssumedHabit {
  readonly habit: Habit;
  /** The step's number. */
  readonly step: number;
  /** A word that shows what is meant: “your class reads *stop* from here on?” */
  readonly example: string;
}

/**
 * The habits about length that no step names. In a plain list clusters and
 * longer words come with the letters, as they do in a list of what was taught:
 * with the first line that shows them (a card such as st, a doubled letter, an
 * ending), else with the last of the single letters. The vowel that fades is
 * never assumed.
 */
export function assumedHabits(steps: readonly Step[]): readonly AssumedHabit[] {
  if (steps.length === 0) return [];
  const named = new Set(
    steps.flatMap(({ items }) => items.flatMap((i) => (i.kind === 'habit' ? [i.habit] : []))),
  );
  const lettersBy = lastLetters(steps);
  return HABITS.filter((habit) => EXAMPLES[habit] !== undefined && !named.has(habit)).map(
    (habit) => ({
      habit,
      step: Math.max(firstShown(steps, habit) ?? lettersBy, 1),
      example: EXAMPLES[habit] as string,
    }),
  );
}

/** The steps with assumed habits taught where they were assumed. */
export function withHabits(
  steps: readonly Step[],
  assumed: readonly AssumedHabit[],
): readonly Step[] {
  return steps.map((step) => {
    const here = assumed.filter(({ step: number }) => number === step.number);
    if (here.length === 0) return step;
    const habits = here.map(({ habit }): Item => ({ kind: 'habit', habit }));
    return { ...step, items: [...step.items, ...habits] };
  });
}

const EXAMPLES: Partial<Record<Habit, string>> = {
  'ending-clusters': 'hand',
  's-clusters': 'stop',
  'l-clusters': 'flag',
  'r-clusters': 'drum',
  'three-clusters': 'split',
  'long-words': 'sunset',
};

/** The number of the step that teaches the last of the single letters. */
function lastLetters(steps: readonly Step[]): number {
  const seen = new Set<string>();
  let last = 0;
  for (const step of steps) {
    for (const item of step.items) {
      if (item.kind !== 'card' || seen.has(item.id)) continue;
      const card = correspondenceById.get(item.id);
      const isLetter = card?.grapheme.length === 1 || card?.grapheme === 'qu';
      if (isLetter && card?.tier === 1 && card.id !== 's=Z') last = step.number;
      seen.add(item.id);
    }
  }
  return last === 0 ? (steps.at(-1)?.number ?? 0) : last;
}

function firstShown(steps: readonly Step[], habit: Habit): number | null {
  const shows = SHOWN_BY.get(habit) ?? new Set();
  const step = steps.find(({ items }) => items.some((i) => i.kind === 'card' && shows.has(i.id)));
  if (step) return step.number;
  if (habit === 'long-words') return null;
  // An order with cluster cards, none of this family: with the last of those it has.
  const clusters = steps.findLast(({ items }) =>
    items.some((i) => i.kind === 'card' && correspondenceById.get(i.id)?.kind === 'cluster'),
  );
  return clusters?.number ?? null;
}

/** Cards that show a habit: the clusters of its family; of longer words what stands in no short one. */
const SHOWN_BY: ReadonlyMap<Habit, ReadonlySet<string>> = new Map<Habit, ReadonlySet<string>>([
  ...HABITS.map((habit): [Habit, ReadonlySet<string>] => [
    habit,
    new Set(
      [...correspondenceById.values()]
        .filter(({ kind, grapheme }) => kind === 'cluster' && familyOf(habit).has(grapheme))
        .map(({ id }) => id),
    ),
  ]),
  [
    'long-words',
    new Set(
      'bb=B dd=D gg=G mm=M nn=N pp=P tt=T rr=R ing=IH+NG est=AX+S+T ed=IH+D es=IH+Z y=IY le=AX+L'.split(
        ' ',
      ),
    ),
  ],
]);

function familyOf(habit: Habit): ReadonlySet<string> {
  return new Set(
    CLUSTER_FAMILIES.filter((family) => family.habit === habit).flatMap(({ letters }) => letters),
  );
}

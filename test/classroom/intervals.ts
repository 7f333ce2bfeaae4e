import { estimateCard, estimateCount } from '../../core/learners/estimate.ts';
import type { Known } from '../../core/learners/known.ts';
import { startTracker } from '../../core/learners/tracker.ts';
import type { Classroom, State } from './classroom.ts';

/** Of so many intervals, the share that held the truth, and how wide they were on average. */
export interface Judged {
  readonly share: number;
  readonly count: number;
  readonly width: number;
}

/** The true chances of pupils and taught cards, and the intervals of their days. */
export function judgeIntervals(classes: readonly Classroom[]): Judged {
  return judge(classes, (known, { day, child, states }) =>
    states.map(({ card, chance }) => ({
      ...estimateCard(known, { of: 'child', id: child }, card, day + 1),
      truth: chance,
    })),
  );
}

/** How many of the cards that it has met a pupil would read rightly, by its true chances, and the intervals of that number. */
export function judgeCounts(classes: readonly Classroom[]): Judged {
  return judge(classes, (known, { day, child, states }) => {
    const who = { of: 'child', id: child } as const;
    const met = states.filter(({ card }) => estimateCard(known, who, card, day + 1).n > 0);
    const cards = states.map(({ card }) => card);
    const truth = met.reduce((sum, { chance }) => sum + chance, 0);
    return [{ ...estimateCount(known, who, cards, day + 1), truth }];
  });
}

/** A pupil on a day, with the true state of its cards. */
interface PupilDay extends Pick<State, 'day' | 'child'> {
  readonly states: readonly State[];
}

type Interval = { readonly low: number; readonly high: number; readonly truth: number };

/** Follows the readings of each class up to each day and pupil, and asks for intervals there. */
function judge(
  classes: readonly Classroom[],
  intervalsOf: (known: Known, pupilDay: PupilDay) => readonly Interval[],
): Judged {
  const intervals = classes.flatMap(({ observations, states }) => {
    const tracker = startTracker();
    let at = 0;
    return pupilDays(states).flatMap((one) => {
      for (let next = observations[at]; next && next.day <= one.day; next = observations[++at]) {
        tracker.observe(next);
      }
      return intervalsOf(tracker.known, one);
    });
  });
  const inside = intervals.filter(({ low, high, truth }) => low <= truth && truth <= high);
  const width = intervals.reduce((sum, { low, high }) => sum + high - low, 0);
  const count = intervals.length;
  return { share: inside.length / count, count, width: width / count };
}

function pupilDays(states: readonly State[]): readonly PupilDay[] {
  const days = new Map<string, State[]>();
  for (const state of states) {
    const key = `${state.day} ${state.child}`;
    days.set(key, [...(days.get(key) ?? []), state]);
  }
  return [...days.values()].flatMap((own) =>
    own[0] ? [{ day: own[0].day, child: own[0].child, states: own }] : [],
  );
}

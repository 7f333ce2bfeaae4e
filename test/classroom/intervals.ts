import { markingOf } from '../../core/learners/belief/marking.ts';
import type { Day } from '../../core/learners/day.ts';
import { type Estimate, estimateCard, estimateCount } from '../../core/learners/estimate.ts';
import type { Known } from '../../core/learners/known.ts';
import { startTracker } from '../../core/learners/tracker.ts';
import type { Classroom, State } from './classroom.ts';

/** An estimate and what is true. */
export interface Compared extends Pick<Estimate, 'p' | 'low' | 'high' | 'n'> {
  readonly truth: number;
  /** Whether it was asked after weeks without school. */
  readonly afterBreak: boolean;
}

/** How intervals held the truth. */
export interface Judged {
  /** The share of intervals with the truth inside, above and below them, 0 to 1. */
  readonly inside: number;
  readonly above: number;
  readonly below: number;
  /** The share inside of those whose truth is over 0.95, and how many they are. */
  readonly insideHigh: number;
  readonly countHigh: number;
  readonly width: number;
  readonly count: number;
}

/** The true chances of pupils with taught cards that they read, and the estimates of their days. */
export function comparedCards(classes: readonly Classroom[]): readonly Compared[] {
  return follow(classes, (known, { day, child, states, afterBreak }) =>
    states.flatMap(({ card, chance }) => {
      const estimate = estimateCard(known, { of: 'child', id: child }, card, day + 1);
      return estimate.n > 0 ? [{ ...estimate, truth: chance, afterBreak }] : [];
    }),
  );
}

/** How many of the cards that it has met a pupil would read correctly, by its true chances, and the estimates of that number. */
export function comparedCounts(classes: readonly Classroom[]): readonly Compared[] {
  return follow(classes, (known, { day, child, states, afterBreak }) => {
    const who = { of: 'child', id: child } as const;
    const met = states.filter(({ card }) => estimateCard(known, who, card, day + 1).n > 0);
    if (met.length === 0) return [];
    const cards = states.map(({ card }) => card);
    const count = estimateCount(known, who, cards, day + 1);
    const truth = met.reduce((sum, { chance }) => sum + chance, 0);
    return [{ ...count, p: count.known, n: met.length, truth, afterBreak }];
  });
}

/** How often intervals held the truth. */
export function judgeIntervals(all: readonly Compared[]): Judged {
  const share = (some: readonly Compared[], is: (one: Compared) => boolean) =>
    some.length === 0 ? 1 : some.filter(is).length / some.length;
  const isInside = ({ low, high, truth }: Compared) => low <= truth && truth <= high;
  const high = all.filter(({ truth }) => truth > 0.95);
  return {
    inside: share(all, isInside),
    above: share(all, ({ high, truth }) => truth > high),
    below: share(all, ({ low, truth }) => truth < low),
    insideHigh: share(high, isInside),
    countHigh: high.length,
    width: all.reduce((sum, { low, high }) => sum + high - low, 0) / all.length,
    count: all.length,
  };
}

/** A pupil on a day, with the true state of its cards. */
interface PupilDay extends Pick<State, 'day' | 'child'> {
  readonly states: readonly State[];
  readonly afterBreak: boolean;
}

/** Follows the readings of each class up to each day and pupil, and asks there. */
function follow(
  classes: readonly Classroom[],
  ask: (known: Known, pupilDay: PupilDay) => readonly Compared[],
): readonly Compared[] {
  return classes.flatMap(({ observations, states }) => {
    const tracker = startTracker(markingOf(observations, 'read'));
    const end = observations.at(-1)?.day ?? 0;
    let at = 0;
    return pupilDays(states, end).flatMap((one) => {
      for (let next = observations[at]; next && next.day <= one.day; next = observations[++at]) {
        tracker.observe(next);
      }
      return ask(tracker.known, one);
    });
  });
}

function pupilDays(states: readonly State[], end: Day): readonly PupilDay[] {
  const days = new Map<string, PupilDay & { readonly states: State[] }>();
  for (const state of states) {
    const { day, child } = state;
    const one = days.get(`${day} ${child}`) ?? { day, child, states: [], afterBreak: day > end };
    one.states.push(state);
    days.set(`${day} ${child}`, one);
  }
  return [...days.values()];
}

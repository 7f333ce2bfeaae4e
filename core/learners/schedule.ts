import { FSRSAlgorithm, type FSRSState, Rating } from 'ts-fsrs';
import type { Day } from './day.ts';
import type { DayOfCard } from './history.ts';

/** When a card should come back. */
export interface Schedule {
  readonly due: Day;
  /** Days from the last time to `due`. */
  readonly interval: number;
}

/**
 * When a card should come back after these days, oldest first: when the chance
 * of remembering it will have fallen to nine in ten, by FSRS 6 with its
 * published parameters (ts-fsrs; Ye, Su & Cao 2022, A Stochastic Shortest Path
 * Algorithm for Optimizing Spaced Repetition Scheduling, KDD). Those were fitted
 * to people who learn by themselves from cards, not to classes: it is a plan for
 * returning, no claim about any child. Null for no days.
 *
 * A day counts as one review. All right is `good`, fewer than half wrong is
 * `hard`, half or more is `again` (common practice, no source).
 */
export function scheduleOf(days: readonly DayOfCard[]): Schedule | null {
  let state: FSRSState | null = null;
  let last: Day | null = null;
  for (const one of days) {
    state = fsrs.next_state(state, last === null ? 0 : one.day - last, gradeOf(one));
    last = one.day;
  }
  if (state === null || last === null) return null;
  const interval = fsrs.next_interval(state.stability, 0);
  return { due: last + interval, interval };
}

/** A school year: nothing is put off longer than that. */
const LONGEST = 180;

const fsrs = new FSRSAlgorithm({
  request_retention: 0.9,
  maximum_interval: LONGEST,
  enable_fuzz: false,
});

function gradeOf({ asked, missed, unclear }: DayOfCard): Rating {
  const wrong = missed + unclear / 2;
  if (wrong === 0) return Rating.Good;
  return wrong / (asked + unclear) < 0.5 ? Rating.Hard : Rating.Again;
}

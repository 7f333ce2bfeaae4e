/** The order of flips of two sorts: real and nonsense, with a focus card and without. */
import { type Random, shuffled } from '../../random.ts';

/** For each flip, which sort is planned: 1 for the one, 0 for the other. */
export type RunPlan = number[];

/** A plan with this many flips of the one sort, in random order. */
export function makeRunPlan(flips: number, ofOneSort: number, random: Random): RunPlan {
  return shuffled(
    Array.from({ length: flips }, (_, at) => (at < ofOneSort ? 1 : 0)),
    random,
  );
}

/** Notes what came at a place. When the other sort was due, it is made up for later. */
export function noteSort(plan: RunPlan, place: number, sort: number): void {
  const due = plan[place];
  if (due === sort || due === undefined) return;
  const later = plan.indexOf(sort, place + 1);
  if (later < 0) return;
  plan[place] = sort;
  plan[later] = due;
}

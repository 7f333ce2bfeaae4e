/** The order in which flips of two sorts are to come: real and nonsense, with a focus card and without. */
import { type Random, shuffled } from '../../random.ts';

/** For each flip whether it is to be of the one sort (1) or the other (0). */
export type RunPlan = number[];

/** So many flips of one sort among all, in random order. */
export function makeRunPlan(flips: number, ofOneSort: number, random: Random): RunPlan {
  return shuffled(
    Array.from({ length: flips }, (_, at) => (at < ofOneSort ? 1 : 0)),
    random,
  );
}

/** Notes what came at a place; when the other sort was due, the next of that sort is due later. */
export function noteSort(plan: RunPlan, place: number, sort: number): void {
  const due = plan[place];
  if (due === sort || due === undefined) return;
  const later = plan.indexOf(sort, place + 1);
  if (later < 0) return;
  plan[place] = sort;
  plan[later] = due;
}

import type { Happening } from './class-state.ts';

/**
 * Whether one thing of a drill came before another. A device that was cut off marks at once, and the lead
 * notes what came up there only when it hears of it: where both bear the count of the warm-up, the count
 * says which was first; else the time does.
 */
export function isBefore(one: Came, other: Came): boolean {
  if (one.count !== undefined && other.count !== undefined) return one.count < other.count;
  return one.at < other.at;
}

type Came = Pick<Happening, 'at' | 'count'>;

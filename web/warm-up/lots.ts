/** The lots that are drawn for who reads next, in this class and among those who are there today. */
import type { ChildId, DrillId } from '../../core/ids.ts';
import { makeRandom } from '../../core/random.ts';
import type { Lots } from '../../core/warm-up/calling.ts';
import { nextChildren } from '../../core/warm-up/next-child.ts';
import { present } from '../state/absent.ts';
import { classState } from '../state/open-class.ts';
import { freshSeed } from '../state/plan.ts';

/** Draws who reads next from those who are there. */
export const lots: Lots = {
  get present() {
    return present.peek();
  },
  draw: (calls, count) =>
    nextChildren({ present: present.peek(), calls }, count, makeRandom(freshSeed())),
};

/** So many of the last calls are looked back at. */
const CALLS_BACK = 400;

/** The children called in other drills than this one, oldest first. */
export function calledBefore(drill: DrillId): readonly ChildId[] {
  const others = [...classState.peek().drills.values()].filter(({ id }) => id !== drill);
  return others.flatMap(({ calls }) => calls.map(({ child }) => child)).slice(-CALLS_BACK);
}

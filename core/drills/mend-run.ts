import type { Taught } from '../language/taught.ts';
import type { Drill } from './drill.ts';
import type { DrillEngine } from './drill-spec.ts';
import { flipChoices } from './edit-drill.ts';

/**
 * A drill that was planned before the teacher blocked a word, or a child came
 * whose name it makes: every flip that the screen clears no longer gives way to
 * the first word that fits between its neighbours, of the same kind if there is
 * one; where none fits it is left out, though two cards may then turn at once.
 * The same drill when nothing is to be mended.
 */
export function mendRun(drill: Drill, taught: Taught, engine: DrillEngine): Drill {
  let mended = drill;
  for (let place = 0; place < mended.run.length; ) {
    const flip = mended.run[place];
    if (!flip || engine.screen.judge(flip.word, flip.sounds).verdict === 'clear') {
      place++;
      continue;
    }
    const [other] = flipChoices(mended, place, taught, engine);
    const run = other ? mended.run.with(place, other) : mended.run.toSpliced(place, 1);
    mended = { ...mended, run };
    if (other) place++;
  }
  return mended;
}

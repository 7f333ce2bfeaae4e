import type { Flip } from '../boards/shapes/board.ts';
import type { Taught } from '../language/taught.ts';
import type { Drill } from './drill.ts';
import type { DrillEngine } from './drill-spec.ts';
import { choicesOn, tableOf } from './edit-drill.ts';

/**
 * A drill that was planned before the teacher blocked a word, or a child came
 * whose name it makes: every flip that the screen clears no longer gives way to
 * the first word that fits between its neighbors, of the same kind if there is
 * one; where none fits it is left out, though two cards may then turn at once.
 * The same drill when nothing is to be mended.
 */
export function mendRun(drill: Drill, taught: Taught, engine: DrillEngine): Drill {
  const isFit = ({ word, sounds }: Flip) => engine.screen.judge(word, sounds).verdict === 'clear';
  if (drill.run.every(isFit)) return drill;
  const table = tableOf(drill, taught, engine);
  let run = drill.run;
  for (let place = 0; place < run.length; ) {
    if (isFit(run[place] as Flip)) {
      place++;
      continue;
    }
    const other = table && choicesOn(table, run, place)[0];
    run = other ? run.with(place++, other) : run.toSpliced(place, 1);
  }
  return { ...drill, run };
}

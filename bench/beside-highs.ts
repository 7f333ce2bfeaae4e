import loadHighs from 'highs';
import type { BoardModel } from '../core/boards/search/board-model.ts';
import { solveBoard } from '../core/boards/search/search.ts';
import { makeLinearProgram } from './linear-program.ts';
import { type Measurement, summary } from './measure.ts';

/**
 * Our search and HiGHS on the same models, each solved once after a warm-up; the ratio of the
 * medians stands in the name. Throws when they disagree on a value.
 */
export async function besideHighs(
  spec: { readonly name: string; readonly aim?: number },
  models: readonly BoardModel[],
): Promise<readonly Measurement[]> {
  const highs = await loadHighs();
  const ours: number[] = [];
  const theirs: number[] = [];
  for (const model of models) solveBoard(model);
  for (const model of models) {
    const program = makeLinearProgram(model);
    const started = performance.now();
    const found = solveBoard(model);
    const between = performance.now();
    const solved = highs.solve(program, { output_flag: false });
    theirs.push(performance.now() - between);
    ours.push(between - started);
    if (found.kind !== 'found' || found.value !== Math.round(solved.ObjectiveValue)) {
      throw new Error('The board search and HiGHS disagree.');
    }
  }
  const own = summary({ name: spec.name, unit: 'ms', aim: spec.aim, values: ours });
  const other = summary({ name: 'the same by HiGHS', unit: 'ms', values: theirs });
  const ratio = (other.median / own.median).toFixed(0);
  return [own, { ...other, name: `the same by HiGHS (${ratio} times our median)` }];
}

/**
 * Changes a teacher makes to the run of a drill: another flip, one left out, another order. All give a
 * new drill; the old one stays.
 */

import { makeWordTable, mayShow, type WordTable } from '../boards/judge/word-table.ts';
import { flipOf } from '../boards/runs/run.ts';
import { cardsInPiles, type Flip } from '../boards/shapes/board.ts';
import { shapeById } from '../boards/shapes/shape-list.ts';
import type { Taught } from '../language/taught.ts';
import type { Drill } from './drill.ts';
import type { DrillEngine, RunSpec } from './drill-spec.ts';
import { runOnBoard } from './run-on-board.ts';

/** A changed drill, or why it could not be changed, in a teacher's words. */
export type Edited =
  | { readonly kind: 'changed'; readonly drill: Drill }
  | { readonly kind: 'refused'; readonly message: string };

/**
 * Every word that can take the place of flip `index`: on the board, fit to be
 * shown, not elsewhere in the run, and one card away from both neighbors.
 * Words of the same kind come first. Empty when there is none.
 */
export function flipChoices(
  drill: Drill,
  index: number,
  taught: Taught,
  engine: DrillEngine,
): readonly Flip[] {
  const table = tableOf(drill, taught, engine);
  return table ? choicesOn(table, drill.run, index) : [];
}

/** The same for a board that was judged already. */
export function choicesOn(table: WordTable, run: readonly Flip[], index: number): readonly Flip[] {
  const now = run[index];
  if (!now) return [];
  const neighbors = [run[index - 1], run[index + 1]].filter((flip) => flip !== undefined);
  const used = new Set(run.map(({ word }) => word));
  const choices: Flip[] = [];
  table.words.forEach((word, at) => {
    if (used.has(word) || !mayShow(table, at)) return;
    const flip = flipOf(table, at);
    if (neighbors.every((neighbor) => isOneCardAway(flip, neighbor))) choices.push(flip);
  });
  return choices.sort(
    (one, other) => Number(other.kind === now.kind) - Number(one.kind === now.kind),
  );
}

/** Leaves out flip `index`, when the flips before and after it are one card apart. */
export function dropFlip(drill: Drill, index: number): Edited {
  const before = drill.run[index - 1];
  const after = drill.run[index + 1];
  if (!drill.run[index]) return refuse(`This run has ${drill.run.length} flips.`);
  if (before && after && !isOneCardAway(before, after)) {
    return refuse('Without this flip two cards would change at once. Swap it for another word.');
  }
  return changed(drill, { run: drill.run.filter((_, at) => at !== index) });
}

/** The same board in a new order, by the wishes given; without any by those of a usual drill. */
export function reshuffleRun(
  drill: Drill,
  taught: Taught,
  engine: DrillEngine,
  wishes: RunSpec & { readonly seed: number },
): Edited {
  const table = tableOf(drill, taught, engine);
  if (!table) return refuse('There is no board to shuffle yet.');
  const { flips, score } = runOnBoard(table, wishes, engine.lexicon);
  return changed(drill, { run: flips, score });
}

/** Whether exactly one card differs between two flips of a board. */
export function isOneCardAway(one: Flip, other: Flip): boolean {
  const [mine, theirs] = [cardsInPiles(one), cardsInPiles(other)];
  if (mine.length !== theirs.length) return false;
  return mine.filter((id, pile) => id !== theirs[pile]).length === 1;
}

/** All combinations of a drill's board, judged; null where there is no board. */
export function tableOf(drill: Drill, taught: Taught, engine: DrillEngine): WordTable | null {
  const shape = shapeById.get(drill.board.shape);
  if (!shape || drill.board.piles.some((pile) => pile.length === 0)) return null;
  return makeWordTable(shape, drill.board.piles, { taught, ...engine });
}

function changed(drill: Drill, change: Partial<Drill>): Edited {
  return { kind: 'changed', drill: { ...drill, ...change } };
}

function refuse(message: string): Edited {
  return { kind: 'refused', message };
}

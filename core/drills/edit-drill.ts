/**
 * Changes a teacher makes to a drill on the table: another card, another
 * sound, another flip, another order. All give a new drill; the old one stays.
 */

import { makeWordTable, mayShow, type WordTable } from '../boards/judge/word-table.ts';
import { flipOf, makeRun } from '../boards/runs/run.ts';
import type { Flip } from '../boards/shapes/board.ts';
import { shapeById } from '../boards/shapes/shape-list.ts';
import type { Taught } from '../language/taught.ts';
import { makeRandom } from '../random.ts';
import { soundsTaught } from './auditory.ts';
import { commonnessIn } from './commonness.ts';
import type { Drill } from './drill.ts';
import { type DrillEngine, type RunSpec, runWishesOf } from './drill-spec.ts';
import { lookAlike, visualPool } from './visual.ts';

/** A changed drill, or why it could not be changed, in a teacher's words. */
export type Edited =
  | { readonly kind: 'changed'; readonly drill: Drill }
  | { readonly kind: 'refused'; readonly message: string };

/** Puts another taught card in place `index` of the visual drill, none that is there already. */
export function swapVisual(drill: Drill, index: number, taught: Taught, seed: number): Edited {
  const there = new Set(drill.visual.map(graphemeOf));
  const before = drill.visual[index - 1];
  const after = drill.visual[index + 1];
  const others = visualPool(taught.correspondences).filter((id) => !there.has(graphemeOf(id)));
  const calm = others.filter(
    (id) => !(before && lookAlike(before, id)) && !(after && lookAlike(id, after)),
  );
  const pool = calm.length > 0 ? calm : others;
  const chosen = pool[makeRandom(seed).below(Math.max(1, pool.length))];
  if (chosen === undefined || drill.visual[index] === undefined) {
    return refuse('Every card that was taught is in this drill already.');
  }
  return changed(drill, { visual: replaceAt(drill.visual, index, chosen) });
}

/** Puts another sound, with all its taught spellings, in place `index` of the auditory drill. */
export function swapAuditory(
  drill: Drill,
  index: number,
  taught: Taught,
  engine: DrillEngine,
  seed: number,
): Edited {
  const there = new Set(drill.auditory.map(({ phonemes }) => phonemes.join(' ')));
  const others = soundsTaught(taught.correspondences, commonnessIn(engine.lexicon)).filter(
    ({ phonemes }) => !there.has(phonemes.join(' ')),
  );
  const chosen = others[makeRandom(seed).below(Math.max(1, others.length))];
  if (!chosen || !drill.auditory[index]) {
    return refuse('Every sound that was taught is in this drill already.');
  }
  return changed(drill, { auditory: replaceAt(drill.auditory, index, chosen) });
}

/**
 * Every word that can take the place of flip `index`: on the board, fit to be
 * shown, not elsewhere in the run, and one card away from both neighbours.
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
  const neighbours = [run[index - 1], run[index + 1]].filter((flip) => flip !== undefined);
  const used = new Set(run.map(({ word }) => word));
  const choices: Flip[] = [];
  table.words.forEach((word, at) => {
    if (used.has(word) || !mayShow(table, at)) return;
    const flip = flipOf(table, at);
    if (neighbours.every((neighbour) => isOneCardAway(flip, neighbour))) choices.push(flip);
  });
  return choices.sort(
    (one, other) => Number(other.kind === now.kind) - Number(one.kind === now.kind),
  );
}

/** Shows another word at flip `index`, of the same kind if there is one; the rest stays. */
export function replaceFlip(
  drill: Drill,
  index: number,
  taught: Taught,
  engine: DrillEngine,
  seed: number,
): Edited {
  const now = drill.run[index];
  if (!now) return refuse(`This run has ${drill.run.length} flips.`);
  const choices = flipChoices(drill, index, taught, engine);
  const alike = choices.filter(({ kind }) => kind === now.kind);
  const pool = alike.length > 0 ? alike : choices;
  const chosen = pool[makeRandom(seed).below(Math.max(1, pool.length))];
  if (!chosen) {
    return refuse(
      `No other word is one card away from both its neighbors. Reshuffle the run, or swap the flip before or after ${now.word}.`,
    );
  }
  return changed(drill, { run: replaceAt(drill.run, index, chosen) });
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
  const { flips, score } = makeRun(table, runWishesOf(wishes, wishes.seed), engine.lexicon);
  return changed(drill, { run: flips, score });
}

/** Whether exactly one card differs between two flips of a board. */
export function isOneCardAway(one: Flip, other: Flip): boolean {
  if (one.cards.length !== other.cards.length) return false;
  return one.cards.filter((id, pile) => id !== other.cards[pile]).length === 1;
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

function replaceAt<T>(items: readonly T[], index: number, item: T): readonly T[] {
  return items.map((old, at) => (at === index ? item : old));
}

function graphemeOf(id: string): string {
  return id.slice(0, id.indexOf('='));
}

/**
 * Today's board. From all cards that fit, the wanted ones are pinned and a random
 * handful of the others is drawn, so that no two days are alike; of these the
 * search takes the best. A clean board is preferred, one whose bad combinations
 * the screen must skip is the second choice.
 */

import { makeWordTable } from '../boards/judge/word-table.ts';
import type { BuiltRun } from '../boards/runs/run.ts';
import { type FoundBoard, searchTable } from '../boards/search/best-board.ts';
import type { WordWeights } from '../boards/search/board-wishes.ts';
import { type Board, cardsInPiles } from '../boards/shapes/board.ts';
import { candidates, type Shape } from '../boards/shapes/shapes.ts';
import type { CardId } from '../language/card-id.ts';
import { makeRandom } from '../random.ts';
import { cardsFor, likingFor } from './card-liking.ts';
import { drawBeats } from './draw-beats.ts';
import { type DrawChance, drawPile, drawVowels, pileSizes } from './draw-piles.ts';
import {
  type DrillEngine,
  type DrillSpec,
  dayCards,
  runWishesOf,
  taughtPairs,
  wantedCards,
} from './drill-spec.ts';
import { layWords } from './lay-words.ts';
import { runOnBoard } from './run-on-board.ts';
import { shapesToTry } from './shapes-to-try.ts';
import { wantedThatWork, withoutIdleCards } from './used-cards.ts';

/** A board and the run over it. */
export interface DrawnBoard {
  readonly board: Board;
  readonly run: BuiltRun;
  /** How many of the wanted cards make words in this shape and are not on the board. */
  readonly leftOut: number;
  /** How many contrasts of taught cards are never turned one into the other. */
  readonly contrastsLeftOut: number;
  /** Flips too few that show what the day is about, where that lies on the board. */
  readonly dueLeftOut: number;
  /** Whether no flip shows anything of what the day is about, though it is about something. */
  readonly isDayUnseen: boolean;
}

/** How many more consonants are drawn than the pile will hold: what the search chooses from. */
const SPARE = 8;
/** The same for boards of more than three piles, whose combinations multiply. */
const MANY_SPARE = 2;
const TRIES = 4;
/** What it costs to leave the shape of the newest cards: less than one word off the set share. */
const SECOND_SHAPE = 5;

/** Draws the board and its run; null when no card can lie in some pile. */
export function drawBoard(spec: DrillSpec, engine: DrillEngine): DrawnBoard | null {
  const random = makeRandom(spec.seed + 1);
  let best: DrawnBoard | null = null;
  let least = Infinity;
  const shapes = shapesToTry(spec);
  for (const [turn, shape] of shapes.entries()) {
    if (least < turn * SECOND_SHAPE) break;
    const chance = { random, weight: likingFor(shape, spec, engine) };
    const own = turn * SECOND_SHAPE;
    for (let attempt = 0; attempt < TRIES && least > own; attempt++) {
      const drawn = drawOnce(shape, spec, engine, chance, attempt);
      const fault = drawn ? faults(drawn) + own : Infinity;
      if (fault < least) {
        least = fault;
        best = drawn;
      }
      // Nothing else is amiss, and another draw of the same shape would not show it either.
      if (drawn?.isDayUnseen && fault <= own + DAY_UNSEEN) break;
    }
  }
  return best;
}

/** What is new too seldom shown never outweighs a real word too many or too few. */
const MOST_FOR_DUE = 9;

/** It costs more that nothing of the day is shown than that another shape is used, less than two real words off. */
const DAY_UNSEEN = 12;

/** How far a board and its run are from what was wished; a wanted card left out weighs most. */
function faults(drawn: DrawnBoard): number {
  const { leftOut, contrastsLeftOut, dueLeftOut, isDayUnseen } = drawn;
  const { missing } = drawn.run;
  return (
    missing.flips * 100 +
    (leftOut + contrastsLeftOut) * 30 +
    Math.abs(missing.real) * 10 +
    Math.abs(missing.focused) * 8 +
    missing.fresh * 8 +
    missing.contrastTurns * 6 +
    Math.min(MOST_FOR_DUE, dueLeftOut) +
    (isDayUnseen ? DAY_UNSEEN : 0) +
    missing.cards
  );
}

function drawOnce(
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
  chance: DrawChance,
  attempt: number,
): DrawnBoard | null {
  if (shape.form === 'beats') {
    const found = drawBeats(shape, spec, engine, chance.random);
    return found && withRun(found, [], spec, engine, chance);
  }
  const { flips, realShare } = runWishesOf(spec, 0);
  const wanted = wantedCards(spec);
  const manyPiles = shape.piles.length > 3;
  const wide = attempt === TRIES - 1 && !manyPiles;
  const mostVowels = manyPiles ? 3 : Math.min(6, Math.max(2, Math.round(flips / 5)));
  const fitting = candidates(shape, cardsFor(spec, shape));
  const vowels = fitting.map((cards, at) =>
    shape.piles[at]?.role === 'vowel' ? drawVowels(cards, wanted, mostVowels, chance) : [],
  );
  const vowelCounts = vowels.map(({ length }) => length);
  const limits = pileSizes(flips, shape, vowelCounts, wide);
  const drawn = fitting.map((cards, at) => {
    if (shape.piles[at]?.role === 'vowel') return (vowels[at] ?? []).map(({ id }) => id);
    const spare = manyPiles ? MANY_SPARE : SPARE;
    const most = wide ? Infinity : (limits[at] as number) + spare;
    return drawPile(cards, wanted, most, chance).map(({ id }) => id);
  });
  if (drawn.some((pile) => pile.length === 0)) return null;
  const piles =
    shape.form === 'two' ? layWords(drawn, limits, shape, spec, engine, chance.random) : drawn;

  const table = makeWordTable(shape, piles, { taught: spec.taught, ...engine });
  const pinnedEverywhere = wantedThatWork(table, wanted, limits);
  const wishes = {
    limits,
    pinnedEverywhere,
    focus: wanted,
    contrasts: taughtPairs(spec.taught, spec.contrasts ?? []),
    weights: weightsFor(realShare, manyPiles ? MANY_REAL : attempt),
    nodeLimit: 60,
  };
  const clean = attempt < 2 ? searchTable(table, { ...wishes, clean: true }) : null;
  const found = clean?.kind === 'found' ? clean : searchTable(table, wishes);
  return found.kind === 'found' ? withRun(found, pinnedEverywhere, spec, engine, chance) : null;
}

/** The run over a board, and the board with the cards that the run shows. */
function withRun(
  found: FoundBoard,
  pinned: readonly CardId[],
  spec: DrillSpec,
  engine: DrillEngine,
  { random }: DrawChance,
): DrawnBoard {
  const { board, table } = withoutIdleCards(found);
  const run = runOnBoard(table, { ...spec, seed: random.bits() }, engine.lexicon);
  const about = spec.focusShare === undefined ? dayCards(spec) : [];
  const shown = new Set(
    run.flips.flatMap((flip) => cardsInPiles(flip).map((id, pile) => `${pile} ${id}`)),
  );
  const lying = board.piles.map((pile, at) => pile.filter((id) => shown.has(`${at} ${id}`)));
  return {
    board: { ...board, piles: lying },
    run,
    leftOut: pinned.filter((id) => !lying.flat().includes(id)).length,
    contrastsLeftOut: contrastsLeftOut(spec, lying, run),
    dueLeftOut: about.some((id) => pinned.includes(id)) ? run.missing.due : 0,
    isDayUnseen:
      about.length > 0 && !run.flips.some(({ cards }) => cards.some((id) => about.includes(id))),
  };
}

function contrastsLeftOut(
  { taught, contrasts = [] }: DrillSpec,
  piles: readonly (readonly string[])[],
  { missing }: BuiltRun,
): number {
  const apart = taughtPairs(taught, contrasts).filter(
    (pair) => !piles.some((pile) => pair.every((id) => pile.includes(id))),
  );
  return apart.length + missing.contrasts;
}

/** Of many piles real words are rare, and are what the board is chosen for. */
const MANY_REAL = 24;

/** What words weigh when so many of them are to be real; the real ones more at each new try. */
function weightsFor(realShare: number, attempt: number): WordWeights {
  if (realShare >= 0.9) return { familiar: 4, rare: 1, nonsense: 0 };
  if (realShare <= 0.1) return { familiar: 0, rare: 0, nonsense: 4 };
  return { familiar: 4 + 4 * attempt, rare: 1, nonsense: 1 };
}

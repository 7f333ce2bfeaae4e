/**
 * A run: flips over a board, one card changing at a time.
 *
 * Problem: a path in the graph whose nodes are the words that may be shown and
 * whose edges join words that differ in one card. No spelling comes twice; real
 * words and focus cards come a given number of times; every card of the board is
 * seen if there are flips enough; and nobody can guess the order. Paths of this kind are
 * NP-hard in general and easy on boards, which are dense.
 *
 * Method: at most 24 walks that look ahead (walk.ts), 96 where look-alikes are
 * asked for. A few start fresh; most follow the best walk so far and leave it at
 * a random place (ruin and recreate: Schrimpf et al., Journal of Computational
 * Physics 159, 2000). A walk that gets stuck too soon goes on from its other
 * end. The walk with the most points (score.ts) is kept and improved flip by
 * flip (polish.ts); the first one that grants every wish ends the search.
 * Uncommon words, awkward nonsense and words of the last days are left out at
 * first, and come in only when a run is worth more with them.
 *
 * Alternative: exact search with backtracking is no better where a run exists
 * and does not end where none does.
 */
import { correspondenceById } from '../../language/correspondences.ts';
import { cardsOnCard } from '../../language/syllable-card.ts';
import { makeRandom, type Random } from '../../random.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import { soundsOfRow } from '../judge/judge-syllables.ts';
import { cardsAt, outcomeAt, type WordTable } from '../judge/word-table.ts';
import type { Flip } from '../shapes/board.ts';
import { walkByChance } from './chance-walk.ts';
import { contrastTurnsAsked, mostContrastTurns } from './contrast-turns.ts';
import { countRun } from './counts.ts';
import { leastDue, makeRunGoal } from './goal.ts';
import { makeRunGraph } from './graph.ts';
import { polishPath } from './polish.ts';
import { isAsWished, mostPoints, pointsOf, type RunScore } from './score.ts';
import { takeWalk } from './walk.ts';
import type { RunWishes } from './wishes.ts';
import { AGAIN, GLADLY, IF_NEEDED } from './words.ts';

/** A run and what it could not keep of the wishes; all are 0 for a run as wished. */
export interface BuiltRun {
  readonly flips: readonly Flip[];
  readonly missing: {
    readonly flips: number;
    /** Real words too many (above 0) or too few (below 0). */
    readonly real: number;
    /** Words of the last days. */
    readonly fresh: number;
    /** Flips with a focus card too many (above 0) or too few (below 0). */
    readonly focused: number;
    /** Flips fewer than wished that show a card which is to come in at least a share of them; 0 or more. */
    readonly due: number;
    /** Cards of the board that no flip shows. */
    readonly cards: number;
    /** Contrasts that lie in one pile and are never turned one into the other. */
    readonly contrasts: number;
    /** Flips fewer than a third that turn one card into its look-alike, that being asked; 0 or more. */
    readonly contrastTurns: number;
  };
  /** Flips that turn one card into its look-alike, and how many of them no run of this length over the board exceeds. */
  readonly turned: { readonly flips: number; readonly atMost: number };
  readonly score: RunScore;
}

/** Walks for each degree of reserve. */
const WALKS = 8;
/** Walks where look-alikes are asked for, which are harder to grant. */
const WALKS_WITH_CONTRASTS = 32;
/** So many of them are new from the start; the others leave the best so far at a place by chance. */
const NEW_WALKS = 3;

/** Builds a run from a judged board. The same table, wishes and word list give the same run. */
export function makeRun(table: WordTable, wishes: RunWishes, lexicon: Lexicon): BuiltRun {
  const random = makeRandom(wishes.seed);
  const graph = makeRunGraph(table, wishes, lexicon);
  const goal = makeRunGoal(graph, wishes);
  let best = walkByChance(graph, goal.flips, makeRandom(wishes.seed));
  let counts = countRun(graph, best, goal.flips);
  const floor = pointsOf(counts, goal);
  const walks = goal.contrastTurns > 0 ? WALKS_WITH_CONTRASTS : WALKS;
  let reached = floor;
  search: for (const reserve of [GLADLY, IF_NEEDED, AGAIN]) {
    if (!graph.reserve.includes(reserve)) continue;
    for (let walk = 0; walk < walks; walk++) {
      const level = walk % 4 === 3;
      const begun = walk < NEW_WALKS ? [] : cutAtRandom(best, random, level || !wishes.rise);
      let path = takeWalk(graph, goal, random, { reserve, level }, begun);
      if (path.length < goal.flips) {
        path = takeWalk(graph, goal, random, { reserve, level }, path.toReversed());
      }
      const found = countRun(graph, path, goal.flips);
      const points = pointsOf(found, goal);
      if (points <= reached) continue;
      best = path;
      counts = found;
      reached = points;
      if (isAsWished(counts, goal)) break search;
    }
  }
  best = polishPath(graph, best, goal);
  counts = countRun(graph, best, goal.flips);
  reached = pointsOf(counts, goal);
  const { flips } = counts;
  const focused =
    goal.focused === null ? counts.focused : Math.round(flips * (wishes.focusShare ?? 0));
  const isContrasting = (wishes.contrasts ?? []).length > 0;
  return {
    flips: best.map((node) => flipOf(table, graph.index[node] as number)),
    missing: {
      flips: wishes.flips - flips,
      real: counts.real - Math.round(flips * wishes.realShare),
      fresh: flips - counts.fresh,
      focused: counts.focused - focused,
      due: Math.max(0, leastDue(flips, wishes) - counts.due),
      cards: graph.cards - counts.cards,
      contrasts: graph.contrasts - counts.contrasts,
      contrastTurns: isContrasting
        ? Math.max(0, contrastTurnsAsked(flips) - counts.contrastTurns)
        : 0,
    },
    turned: { flips: counts.contrastTurns, atMost: mostContrastTurns(graph, graph, flips) },
    score: { reached, floor, bound: mostPoints(goal) },
  };
}

/** A flip of a combination that may be shown. */
export function flipOf(table: WordTable, index: number): Flip {
  const laid = cardsAt(table, index);
  const word = table.words[index] as string;
  const kind = outcomeAt(table, index) === 'nonsense' ? 'nonsense' : 'real';
  if (table.shape.form !== 'beats') {
    const sounds = laid.flatMap((id) => correspondenceById.get(id)?.phonemes ?? []);
    return { cards: laid, word, sounds, kind };
  }
  const cards = laid.map(cardsOnCard);
  let at = 0;
  const joints = cards.slice(0, -1).map(({ length }) => {
    at += length;
    return at;
  });
  return { cards: cards.flat(), word, sounds: soundsOfRow(laid), kind, joints };
}

/** The first part of a path, of either of its ends where it may be turned about. */
function cutAtRandom(path: readonly number[], random: Random, mayTurn: boolean): readonly number[] {
  if (path.length === 0) return [];
  const length = 1 + random.below(path.length);
  const turned = mayTurn && random.below(2) === 1;
  return turned ? path.slice(-length).reverse() : path.slice(0, length);
}

/**
 * The best board, exactly.
 *
 * Problem: choose at most so many cards for each pile (pins always, no forbidden
 * combination) so that the weights of all their combinations sum to the most.
 * With one vowel and nothing forbidden this is already the heaviest k × k
 * submatrix, which is NP-hard; boards are small enough to solve.
 *
 * Method: depth-first branch and bound. At a node every card is in, out or free.
 *  1. Forbidden combinations, said in the fewest cards (forbidden.ts), put cards
 *     out; a card that nothing open is about goes in where all fit.
 *  2. Two piles are looked at, mostly beginnings and endings, and the others
 *     summed over with all that may still lie there (pair-gains.ts).
 *  3. The Lagrangian bound of pair-bound.ts, its prices handed down from node to
 *     node, bounds all boards below; its reduced costs settle cards; boards are
 *     built from what it chooses.
 *  4. What is left is branched on. After a short plain search, the card is found
 *     by looking ahead: promising cards (choose-card.ts) are bounded both in and
 *     out, and the one that lowers both bounds most is taken. A card that proves
 *     impossible one way is settled without branching.
 * With one pile open its cards decouple, and the best are taken.
 *
 * Complexity: exponential at worst; a node costs one pass over the combinations
 * left and some over beginnings × endings. `nodeLimit` stops early with the best
 * board so far and a proven bound; without it the answer is optimal.
 *
 * References: Guignard & Kim, "Lagrangean decomposition", Math. Programming 39
 * (1987); Applegate, Bixby, Chvátal & Cook, "Finding cuts in the TSP" (1995), for
 * strong branching, the look ahead.
 *
 * Alternatives: branching on the card in most forbidden combinations takes some
 * five times the subproblems on clean boards of many vowels, and does not end on
 * late strict ones. Leaving three piles to this search and branching on the cards
 * of a fourth in an outer one forgets what a free card forbids, so that four
 * piles stay far from proven. Bounding by vowels and endings instead, or as well,
 * is hardly ever lower. A general MILP solver (HiGHS, the tests' oracle) takes
 * tens of times as long on the same models of three piles (bench/search.bench.ts)
 * and would have to be shipped.
 */
import type { BoardChoice, BoardModel, NoBoard } from './board-model.ts';
import { solveMany } from './search-many.ts';

/** Solves a model of three piles; `nodeLimit` (none by default) bounds how many subproblems are looked at. */
export function solveBoard(
  model: BoardModel,
  options: { readonly nodeLimit?: number } = {},
): BoardChoice | NoBoard {
  return solveMany(model, options) as BoardChoice | NoBoard;
}

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

import {
  type BoardChoice,
  type BoardModel,
  boardValue,
  combinationsOf,
  type NoBoard,
  stridesOf,
} from './board-model.ts';
import type { Incumbent } from './build-boards.ts';
import { growAround } from './grow-around.ts';
import { growBoards } from './grow-board.ts';
import { placeGroups } from './place-groups.ts';
import { refine } from './refine-board.ts';
import { searchTree } from './search-tree.ts';

/** The share of forbidden combinations from which good boards to start from are hard to find. */
const MANY_FORBIDDEN = 0.1;

/**
 * Solves a model of two or more piles. `nodeLimit` (none by default) bounds how many subproblems are
 * looked at; the board is then the best so far, and its bound is proven all the same. Why there is no
 * board is told as a value.
 */
export function solveBoard(
  model: BoardModel,
  { nodeLimit = Infinity }: { readonly nodeLimit?: number } = {},
): BoardChoice | NoBoard {
  const refused = refusePins(model);
  if (refused) return refused;
  const placed = placeGroups(model);
  if (!placed) return { kind: 'no-place', places: model.pinGroups ?? [] };
  const start = startingBoard({ ...model, pinned: placed });
  const { piles, value, bound, nodes } = searchTree(model, start, { nodeLimit });
  const chosen = piles.map((cards) => [...cards].sort((one, other) => one - other));
  return { kind: 'found', chosen, value, bound, optimal: bound === value, nodes };
}

/** A good board quickly, where the bound's own boards would be poor. */
function startingBoard(model: BoardModel): Incumbent {
  const { sizes, weights, forbidden, limits, pinned } = model;
  let best: Incumbent = { piles: pinned, value: boardValue(model, pinned) };
  const share = forbidden.reduce((sum, one) => sum + one, 0) / Math.max(1, weights.length);
  if (sizes.length <= 3 && share <= MANY_FORBIDDEN) return best;
  const [, vowels = 0] = sizes;
  const fewest = sizes.indexOf(Math.min(...sizes));
  const anyVowels = sizes.length === 3 && (limits[1] as number) >= vowels && !pinned[1]?.length;
  const grown = anyVowels ? growAround(model) : growBoards(model, fewest);
  for (const board of [...grown, refine(model, pinned)]) {
    if (board.value > best.value) best = board;
  }
  return best;
}

/** Whether the pinned cards can lie together, in one pile or another. */
export function canLayPins(model: BoardModel): boolean {
  return refusePins(model) === null && placeGroups(model) !== null;
}

/** Why the pins alone rule out every board; null when they do not. */
function refusePins({ sizes, limits, pinned, forbidden }: BoardModel): NoBoard | null {
  const crowded = pinned.findIndex((cards, pile) => cards.length > (limits[pile] as number));
  if (crowded >= 0) return { kind: 'too-many-pins', pile: crowded };
  const strides = stridesOf(sizes);
  const clash = combinationsOf(strides, pinned).find((at) => forbidden[at]);
  if (clash === undefined) return null;
  const combination = sizes.map(
    (size, pile) => Math.floor(clash / (strides[pile] as number)) % size,
  );
  return { kind: 'pins-clash', combination };
}

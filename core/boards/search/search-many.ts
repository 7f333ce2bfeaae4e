import type { Incumbent } from './build-boards.ts';
import { growAround } from './grow-around.ts';
import { growBoards } from './grow-board.ts';
import {
  combinationsOf,
  type ManyChoice,
  type ManyModel,
  manyValue,
  type NoManyBoard,
  stridesOf,
} from './many-model.ts';
import { placeGroups } from './place-groups.ts';
import { refine } from './refine-board.ts';
import { searchTree } from './search-tree.ts';

/** The share of forbidden combinations from which good boards to start from are hard to find. */
const MANY_FORBIDDEN = 0.1;

/**
 * Solves a model of two or more piles: the best board, by the method of
 * search.ts. `nodeLimit` (none by default) bounds how many subproblems are
 * looked at; the board is then the best so far, and its bound is proven all the
 * same. Why there is no board is told as a value.
 */
export function solveMany(
  model: ManyModel,
  { nodeLimit = Infinity }: { readonly nodeLimit?: number } = {},
): ManyChoice | NoManyBoard {
  const refused = refusePins(model);
  if (refused) return refused;
  const placed = placeGroups(model);
  if (!placed) return { kind: 'no-place', places: model.somewhere ?? [] };
  const start = startingBoard({ ...model, pinned: placed });
  const { piles, value, bound, nodes } = searchTree(model, start, { nodeLimit });
  const chosen = piles.map((cards) => [...cards].sort((one, other) => one - other));
  return { kind: 'found', chosen, value, bound, optimal: bound === value, nodes };
}

/** A good board quickly, where the bound's own boards would be poor. */
function startingBoard(model: ManyModel): Incumbent {
  const { sizes, weights, forbidden, limits, pinned } = model;
  let best: Incumbent = { piles: pinned, value: manyValue(model, pinned) };
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

/** Why the pins alone rule out every board; null when they do not. */
function refusePins({ sizes, limits, pinned, forbidden }: ManyModel): NoManyBoard | null {
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

import { type BoardModel, boardValue } from './board-model.ts';
import { OUT } from './pairs.ts';

type Piles = readonly [readonly number[], readonly number[], readonly number[]];

/**
 * Improves a board by choosing one pile after the other anew, the best for the
 * two that lie, until nothing gets better. A local optimum, and usually the
 * best board; null when the piles given leave no room for the pinned cards.
 */
export function improve(
  model: BoardModel,
  start: Piles,
): { readonly piles: Piles; readonly value: number } | null {
  let piles = start;
  let value = -1;
  for (;;) {
    for (const pile of [2, 0, 1] as const) {
      const better = bestPile(model, piles, pile);
      if (!better) return null;
      piles = withPile(piles, pile, better);
    }
    const reached = boardValue(model, piles);
    if (reached <= value) return { piles, value };
    value = reached;
  }
}

/**
 * The best cards for one pile when the other two lie fixed; null if a pinned
 * card cannot stand. Cards whose `status` is OUT are left aside. O(cards of the
 * pile × cards that lie in the other two).
 */
export function bestPile(
  model: BoardModel,
  piles: Piles,
  pile: 0 | 1 | 2,
  status?: Uint8Array,
): number[] | null {
  const gains = gainsOf(model, piles, pile);
  const pinned = model.pinned[pile];
  if (pinned.some((card) => (gains[card] as number) < 0)) return null;
  const free: number[] = [];
  for (let card = 0; card < gains.length; card++) {
    if ((gains[card] as number) < 0 || status?.[card] === OUT || pinned.includes(card)) continue;
    free.push(card);
  }
  const room = Math.max(0, model.limits[pile] - pinned.length);
  if (free.length > room) {
    free.sort((one, other) => (gains[other] as number) - (gains[one] as number) || one - other);
    free.length = room;
  }
  return [...pinned, ...free].sort((one, other) => one - other);
}

/** What each card of a pile brings with the other two as they lie; -1 if it is forbidden there. */
function gainsOf(model: BoardModel, piles: Piles, pile: 0 | 1 | 2): Int32Array {
  const { sizes, weights, forbidden } = model;
  const strides = [sizes[1] * sizes[2], sizes[2], 1] as const;
  const [first, second] = pile === 0 ? ([1, 2] as const) : ([0, pile === 1 ? 2 : 1] as const);
  const gains = new Int32Array(sizes[pile]);
  const stride = strides[pile];
  for (const one of piles[first]) {
    for (const other of piles[second]) {
      let at = one * strides[first] + other * strides[second];
      for (let card = 0; card < gains.length; card++, at += stride) {
        if (forbidden[at]) gains[card] = -1;
        else if ((gains[card] as number) >= 0) gains[card]! += weights[at] as number;
      }
    }
  }
  return gains;
}

function withPile(piles: Piles, pile: 0 | 1 | 2, cards: readonly number[]): Piles {
  if (pile === 0) return [cards, piles[1], piles[2]];
  return pile === 1 ? [piles[0], cards, piles[2]] : [piles[0], piles[1], cards];
}

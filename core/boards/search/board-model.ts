/**
 * The choice of a board as a plain optimization model, so that any solver can check ours: piles of
 * candidates, each combination of one card from each pile with a weight and perhaps forbidden.
 * Combination (i, j, k …) has index ((i · n₁ + j) · n₂ + k) …
 */
export interface BoardModel {
  /** How many candidates each pile has. */
  readonly sizes: readonly number[];
  /** Whole numbers, none negative. A forbidden combination weighs 0. */
  readonly weights: Int32Array;
  /** 1 where a combination must not be possible on the board. */
  readonly forbidden: Uint8Array;
  /** The most cards a pile may hold. */
  readonly limits: readonly number[];
  /** Indices of candidates that must be chosen, by pile. */
  readonly pinned: readonly (readonly number[])[];
  /** Of each group at least one must be chosen: a pinned card that fits several piles. */
  readonly pinGroups?: readonly (readonly BoardPlace[])[];
}

/** A candidate by its pile and its index there. */
export type BoardPlace = readonly [pile: number, card: number];

/** The best board found: indices by pile in ascending order, and what is proven of it. */
export interface BoardChoice {
  readonly kind: 'found';
  readonly chosen: readonly (readonly number[])[];
  /** The sum of the weights of all combinations of chosen cards. */
  readonly value: number;
  /** No board is worth more than this. */
  readonly bound: number;
  readonly optimal: boolean;
  /** How many subproblems were looked at. */
  readonly nodes: number;
}

/**
 * Why no board exists: more pins than a pile holds, pins that make a forbidden combination, or cards
 * pinned in any pile that find no place together.
 */
export type NoBoard =
  | { readonly kind: 'too-many-pins'; readonly pile: number }
  | { readonly kind: 'pins-clash'; readonly combination: readonly number[] }
  | { readonly kind: 'no-place'; readonly places: readonly (readonly BoardPlace[])[] };

/** How far apart in the index neighbors of each pile are. */
export function stridesOf(sizes: readonly number[]): readonly number[] {
  return sizes.map((_, pile) => sizes.slice(pile + 1).reduce((all, size) => all * size, 1));
}

/** The indices of all combinations of chosen cards; `without` leaves a pile at its card 0. */
export function combinationsOf(
  strides: readonly number[],
  chosen: readonly (readonly number[])[],
  without = -1,
): readonly number[] {
  let found = [0];
  chosen.forEach((cards, pile) => {
    if (pile === without) return;
    const stride = strides[pile] as number;
    found = found.flatMap((at) => cards.map((card) => at + card * stride));
  });
  return found;
}

/** The value of chosen cards; -1 when they hold a forbidden combination. */
export function boardValue(
  { sizes, weights, forbidden }: BoardModel,
  chosen: readonly (readonly number[])[],
): number {
  const strides = stridesOf(sizes);
  return visit(0, 0);

  function visit(pile: number, from: number): number {
    const cards = chosen[pile];
    if (!cards) return forbidden[from] ? -1 : (weights[from] as number);
    let value = 0;
    for (const card of cards) {
      const own = visit(pile + 1, from + card * (strides[pile] as number));
      if (own < 0) return -1;
      value += own;
    }
    return value;
  }
}

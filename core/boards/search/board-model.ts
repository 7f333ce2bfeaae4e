/**
 * The choice of a board as a plain optimisation model, so that any solver can
 * check ours: beginnings × vowels × endings, each combination with a weight and
 * perhaps forbidden. Index of a combination: (b · vowels + v) · endings + e.
 */
export interface BoardModel {
  /** How many candidates there are: beginnings, vowels, endings. */
  readonly sizes: readonly [number, number, number];
  /** Whole numbers, none negative. A forbidden combination weighs 0. */
  readonly weights: Int32Array;
  /** 1 where a combination must not be possible on the board. */
  readonly forbidden: Uint8Array;
  /** The most cards a pile may hold. */
  readonly limits: readonly [number, number, number];
  /** Indices of candidates that must be chosen, by pile. */
  readonly pinned: readonly [readonly number[], readonly number[], readonly number[]];
  /** Of each group at least one must be chosen: a pinned card that fits several piles. */
  readonly somewhere?: readonly (readonly Place[])[];
}

/** A candidate by its pile and its index there. */
export type Place = readonly [pile: 0 | 1 | 2, card: number];

/** The best board found: indices by pile in ascending order, and what is proven of it. */
export interface BoardChoice {
  readonly kind: 'found';
  readonly chosen: readonly [readonly number[], readonly number[], readonly number[]];
  /** The sum of the weights of all combinations of chosen cards. */
  readonly value: number;
  /** No board is worth more than this. */
  readonly bound: number;
  readonly optimal: boolean;
  /** How many subproblems were looked at. */
  readonly nodes: number;
}

/**
 * Why no board exists: more pins than a pile holds, pins that make a forbidden
 * combination, or cards pinned somewhere that find no place together.
 */
export type NoBoard =
  | { readonly kind: 'too-many-pins'; readonly pile: 0 | 1 | 2 }
  | { readonly kind: 'pins-clash'; readonly combination: readonly [number, number, number] }
  | { readonly kind: 'no-place'; readonly places: readonly (readonly Place[])[] };

/** The value of a set of chosen cards; -1 when it holds a forbidden combination. */
export function boardValue(
  { sizes: [, vowels, endings], weights, forbidden }: BoardModel,
  [begin, middle, end]: readonly [readonly number[], readonly number[], readonly number[]],
): number {
  let value = 0;
  for (const b of begin) {
    for (const v of middle) {
      for (const e of end) {
        const at = (b * vowels + v) * endings + e;
        if (forbidden[at]) return -1;
        value += weights[at] as number;
      }
    }
  }
  return value;
}

import type { BoardModel, Place } from './board-model.ts';

/**
 * The choice of a board of any number of piles. As in BoardModel, combination
 * (i, j, k …) has index ((i · n₁ + j) · n₂ + k) …
 */
export interface ManyModel {
  readonly sizes: readonly number[];
  readonly weights: Int32Array;
  readonly forbidden: Uint8Array;
  readonly limits: readonly number[];
  readonly pinned: readonly (readonly number[])[];
  readonly somewhere?: readonly (readonly AnyPlace[])[];
}

/** A candidate by its pile and its index there. */
export type AnyPlace = readonly [pile: number, card: number];

/** The best board found, as BoardChoice. */
export interface ManyChoice {
  readonly kind: 'found';
  readonly chosen: readonly (readonly number[])[];
  readonly value: number;
  readonly bound: number;
  readonly optimal: boolean;
  readonly nodes: number;
}

/** Why there is no board, as NoBoard. */
export type NoManyBoard =
  | { readonly kind: 'too-many-pins'; readonly pile: number }
  | { readonly kind: 'pins-clash'; readonly combination: readonly number[] }
  | { readonly kind: 'no-place'; readonly places: readonly (readonly AnyPlace[])[] };

/** How far apart in the index neighbours of each pile are. */
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
export function manyValue(
  { sizes, weights, forbidden }: ManyModel,
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

/** A model of at most three piles in the form that the exact search takes; blanks, which always lie, fill up to three. */
export function asThree(model: ManyModel): BoardModel {
  const fill = <T>(values: readonly T[], blank: T): readonly [T, T, T] =>
    [0, 1, 2].map((pile) => values[pile] ?? blank) as unknown as readonly [T, T, T];
  const { weights, forbidden } = model;
  return {
    sizes: fill(model.sizes, 1),
    limits: fill(model.limits, 1),
    pinned: fill(model.pinned, [0]),
    weights,
    forbidden,
    ...(model.somewhere ? { somewhere: model.somewhere as readonly (readonly Place[])[] } : {}),
  };
}

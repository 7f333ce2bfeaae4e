import { type BoardModel, boardValue, combinationsOf, stridesOf } from './board-model.ts';
import { gainsOf, refine } from './refine-board.ts';

type Piles = readonly (readonly number[])[];

/**
 * Good boards to start from where many combinations are forbidden: start with
 * one combination, lay the card that adds most until no more fits, then choose
 * each pile again while the board gets better. One board for each card of
 * the pile `by`. A heuristic: nothing is proven. O(cards laid × candidates ×
 * combinations on the board) for each board.
 */
export function growBoards(
  model: BoardModel,
  by: number,
): readonly { piles: Piles; value: number }[] {
  const boards: { piles: Piles; value: number }[] = [];
  const degrees = degreesOf(model);
  for (let card = 0; card < (model.sizes[by] as number); card++) {
    const seed = seedFor(model, by, card, degrees);
    if (!seed) continue;
    boards.push(refine(model, grow(model, seed, degrees)));
  }
  return boards;
}

function grow(model: BoardModel, seed: Piles, degrees: readonly Float64Array[]): Piles {
  let piles = seed;
  for (;;) {
    let most = -1;
    let next: readonly [pile: number, card: number] | null = null;
    for (let pile = 0; pile < piles.length; pile++) {
      const lying = piles[pile] as readonly number[];
      if (lying.length >= (model.limits[pile] as number)) continue;
      const gains = gainsOf(model, piles, pile);
      for (let card = 0; card < gains.length; card++) {
        if ((gains[card] as number) < 0 || lying.includes(card)) continue;
        const worth = (gains[card] as number) + ((degrees[pile] as Float64Array)[card] as number);
        if (worth <= most) continue;
        most = worth;
        next = [pile, card];
      }
    }
    if (!next) return piles;
    const [at, card] = next;
    piles = piles.map((cards, pile) => (pile === at ? [...cards, card] : cards));
  }
}

/** The pins, and in each pile without one the card of the best combination with `card`. */
function seedFor(
  model: BoardModel,
  by: number,
  card: number,
  degrees: readonly Float64Array[],
): Piles | null {
  const seed = model.pinned.map((pins, pile) =>
    pile === by && !pins.includes(card) ? [...pins, card] : [...pins],
  );
  if ((seed[by] as readonly number[]).length > (model.limits[by] as number)) return null;
  const open = seed.flatMap((cards, pile) => (cards.length === 0 ? [pile] : []));
  const choices = seed.map((cards, pile) =>
    open.includes(pile)
      ? Array.from({ length: model.sizes[pile] as number }, (_, index) => index)
      : cards.slice(-1),
  );
  const strides = stridesOf(model.sizes);
  let best = -1;
  let most = 0;
  for (const at of combinationsOf(strides, choices)) {
    if (model.forbidden[at] || !model.weights[at]) continue;
    let worth = model.weights[at] as number;
    for (const pile of open) {
      const own = Math.floor(at / (strides[pile] as number)) % (model.sizes[pile] as number);
      worth += (degrees[pile] as Float64Array)[own] as number;
    }
    if (worth <= most) continue;
    most = worth;
    best = at;
  }
  if (best < 0) return null;
  const piles = seed.map((cards, pile) =>
    open.includes(pile)
      ? [Math.floor(best / (strides[pile] as number)) % (model.sizes[pile] as number)]
      : cards,
  );
  return boardValue(model, piles) < 0 ? null : piles;
}

/** For each card what its combinations weigh in all, as a share of the heaviest card of its pile. */
function degreesOf({ sizes, weights }: BoardModel): readonly Float64Array[] {
  const strides = stridesOf(sizes);
  const degrees = sizes.map((size) => new Float64Array(size));
  for (let at = 0; at < weights.length; at++) {
    const weight = weights[at] as number;
    if (weight === 0) continue;
    degrees.forEach((pile, own) => {
      pile[Math.floor(at / (strides[own] as number)) % pile.length]! += weight;
    });
  }
  for (const pile of degrees) {
    const most = Math.max(1, ...pile);
    pile.forEach((sum, card) => {
      pile[card] = sum / most;
    });
  }
  return degrees;
}

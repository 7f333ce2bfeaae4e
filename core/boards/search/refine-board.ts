import { type BoardModel, boardValue, stridesOf } from './board-model.ts';
import { OUT } from './pairs.ts';

type Piles = readonly (readonly number[])[];

/**
 * Chooses each pile again, beginning with the pile `from`: the best cards for the
 * other piles as they lie, until nothing gets better. The result is a local
 * optimum and often the best board. It is worth -1 where the pins cannot all lie
 * beside the rest.
 */
export function refine(
  model: BoardModel,
  start: Piles,
  from = 0,
): { readonly piles: Piles; readonly value: number } {
  let piles = start;
  let value = boardValue(model, piles);
  for (;;) {
    for (let turn = 0; turn < start.length; turn++) {
      const pile = (from + turn) % start.length;
      const better = bestOf(model, piles, pile);
      if (better) piles = piles.map((cards, at) => (at === pile ? better : cards));
    }
    const reached = boardValue(model, piles);
    if (reached <= value) return { piles, value };
    value = reached;
  }
}

/**
 * The best cards of one pile for the others as they lie, ascending; null if a
 * pin cannot stand. Cards whose `status` is OUT are left aside. O(cards of the
 * pile × combinations of the others).
 */
export function bestOf(
  model: BoardModel,
  piles: Piles,
  pile: number,
  status?: Uint8Array,
): readonly number[] | null {
  const gains = gainsOf(model, piles, pile);
  const pinned = model.pinned[pile] ?? [];
  if (pinned.some((card) => (gains[card] as number) < 0)) return null;
  const free: number[] = [];
  for (let card = 0; card < gains.length; card++) {
    if ((gains[card] as number) < 0 || status?.[card] === OUT || pinned.includes(card)) continue;
    free.push(card);
  }
  const room = Math.max(0, (model.limits[pile] as number) - pinned.length);
  if (free.length > room) {
    free.sort((one, other) => (gains[other] as number) - (gains[one] as number) || one - other);
    free.length = room;
  }
  return [...pinned, ...free].sort((one, other) => one - other);
}

/** What each card of a pile brings with the other piles as they lie; -1 if it is forbidden there. */
export function gainsOf(model: BoardModel, piles: Piles, pile: number): Int32Array {
  const { weights, forbidden } = model;
  const strides = stridesOf(model.sizes);
  const stride = strides[pile] as number;
  const gains = new Int32Array(model.sizes[pile] as number);
  const others = piles.flatMap((cards, own) =>
    own === pile ? [] : [cards.map((card) => card * (strides[own] as number))],
  );
  visit(0, 0);
  return gains;

  function visit(level: number, from: number): void {
    const cards = others[level];
    if (cards) {
      for (let k = 0; k < cards.length; k++) visit(level + 1, from + (cards[k] as number));
      return;
    }
    for (let card = 0, at = from; card < gains.length; card++, at += stride) {
      if (forbidden[at]) gains[card] = -1;
      else if ((gains[card] as number) >= 0) gains[card]! += weights[at] as number;
    }
  }
}

import { FREE, OUT } from './pairs.ts';

/**
 * The cards of all piles in one row of numbers, pile after pile, so that one
 * array of bytes says where each stands: FREE, IN or OUT.
 */
export interface CardNumbers {
  readonly sizes: readonly number[];
  /** The number of the first card of each pile. */
  readonly starts: readonly number[];
  readonly total: number;
  /** The pile of each card. */
  readonly pileOf: Uint8Array;
  /** What each card adds to the index of a combination. */
  readonly offsetOf: Int32Array;
}

/** Numbers the cards of piles of these sizes. */
export function numberCards(sizes: readonly number[]): CardNumbers {
  const starts = sizes.map((_, pile) => sizes.slice(0, pile).reduce((sum, size) => sum + size, 0));
  const total = sizes.reduce((sum, size) => sum + size, 0);
  const pileOf = new Uint8Array(total);
  const offsetOf = new Int32Array(total);
  sizes.forEach((size, pile) => {
    const stride = sizes.slice(pile + 1).reduce((all, own) => all * own, 1);
    for (let card = 0; card < size; card++) {
      pileOf[(starts[pile] as number) + card] = pile;
      offsetOf[(starts[pile] as number) + card] = card * stride;
    }
  });
  return { sizes, starts, total, pileOf, offsetOf };
}

/** The part of a status array that is one pile's; a view, not a copy. */
export function pileStatus(cards: CardNumbers, status: Uint8Array, pile: number): Uint8Array {
  const start = cards.starts[pile] as number;
  return status.subarray(start, start + (cards.sizes[pile] as number));
}

/** The cards of a pile that stand there, by their index in the pile. */
export function cardsAs(own: Uint8Array, standing: number): number[] {
  const found: number[] = [];
  for (let card = 0; card < own.length; card++) if (own[card] === standing) found.push(card);
  return found;
}

/** The cards of a pile that are not out, by their index in the pile. */
export function cardsLeft(own: Uint8Array): number[] {
  const found: number[] = [];
  for (let card = 0; card < own.length; card++) if (own[card] !== OUT) found.push(card);
  return found;
}

/** All cards that are free, by number. */
export function freeCards(status: Uint8Array): number[] {
  return cardsAs(status, FREE);
}

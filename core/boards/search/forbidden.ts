/**
 * Forbidden combinations, stated with as few cards as possible.
 *
 * Problem: on strict boards four of five combinations are forbidden, mostly for
 * one reason: *c* never stands before *e*, whatever follows. As combinations
 * these are a hundred thousand; as pairs some two thousand.
 *
 * Method: a set of cards, one each of some piles, is forbidden when all its
 * completions are. Working down from all piles, a table for each set of piles says
 * which of its card sets are forbidden. Only those with no forbidden part are kept. A
 * board whose every pile holds a card has no forbidden combination exactly when
 * it holds none of these sets. O(2^piles × combinations).
 *
 * The alternative, keeping whole combinations only, finds out far later that a
 * vowel and an ending cannot lie together: when the last beginning is ruled out.
 */

import type { BoardModel } from './board-model.ts';
import { type CardNumbers, numberCards } from './card-numbers.ts';

/** Sets of cards that must not lie on a board together. */
export interface Clauses {
  /** The cards of each clause by number, `width` places a clause, filled up with -1. */
  readonly cards: Int32Array;
  readonly width: number;
  readonly count: number;
}

/** The smallest forbidden sets of a model. They hold for boards that have a card in every pile. */
export function smallestForbidden({ sizes, forbidden }: BoardModel): Clauses {
  const width = sizes.length;
  if (!forbidden.includes(1)) return { cards: new Int32Array(0), width, count: 0 };
  const numbers = numberCards(sizes);
  const tables = tablesBySet(sizes, forbidden);
  const cards: number[] = [];
  tables.forEach((table, set) => {
    if (table.includes(1)) collect(set, table, tables, numbers, cards);
  });
  return { cards: Int32Array.from(cards), width, count: cards.length / width };
}

/** For each set of piles, as bits, which of its card sets are forbidden with all that may follow. */
function tablesBySet(sizes: readonly number[], forbidden: Uint8Array): Map<number, Uint8Array> {
  const all = (1 << sizes.length) - 1;
  const tables = new Map([[all, forbidden]]);
  for (let set = all - 1; set > 0; set--) {
    const dropped = sizes.findIndex((_, pile) => !(set & (1 << pile)));
    const wider = set | (1 << dropped);
    tables.set(set, dropPile(tables.get(wider) as Uint8Array, wider, dropped, sizes));
  }
  return tables;
}

function dropPile(
  table: Uint8Array,
  set: number,
  pile: number,
  sizes: readonly number[],
): Uint8Array {
  const after = sizes.reduce(
    (all, size, at) => (at > pile && set & (1 << at) ? all * size : all),
    1,
  );
  const size = sizes[pile] as number;
  const narrower = new Uint8Array(table.length / size);
  for (let to = 0; to < narrower.length; to++) {
    const from = Math.floor(to / after) * after * size + (to % after);
    let card = 0;
    while (card < size && table[from + card * after]) card++;
    if (card === size) narrower[to] = 1;
  }
  return narrower;
}

/** Adds the forbidden card sets of these piles that have no forbidden part. */
function collect(
  set: number,
  table: Uint8Array,
  tables: ReadonlyMap<number, Uint8Array>,
  { sizes, starts }: CardNumbers,
  clauses: number[],
): void {
  const piles = sizes.flatMap((_, pile) => (set & (1 << pile) ? [pile] : []));
  const parts = piles.length > 1 ? piles.map((pile) => partWithout(set, pile, sizes)) : [];
  const cards = piles.map(() => 0);
  for (let at = 0; at < table.length; at++) {
    if (table[at] && parts.every(({ part, strides }) => !tables.get(part)?.[indexOf(strides)])) {
      sizes.forEach((_, k) => {
        clauses.push(
          k < piles.length ? (starts[piles[k] as number] as number) + (cards[k] as number) : -1,
        );
      });
    }
    for (let k = piles.length - 1; k >= 0; k--) {
      cards[k]! += 1;
      if ((cards[k] as number) < (sizes[piles[k] as number] as number)) break;
      cards[k] = 0;
    }
  }

  function indexOf(strides: readonly number[]): number {
    let index = 0;
    for (let k = 0; k < strides.length; k++) index += (cards[k] as number) * (strides[k] as number);
    return index;
  }

  function partWithout(whole: number, left: number, all: readonly number[]) {
    const part = whole & ~(1 << left);
    const strides = piles.map((pile) =>
      pile === left
        ? 0
        : all.reduce(
            (product, size, at) => (at > pile && part & (1 << at) ? product * size : product),
            1,
          ),
    );
    return { part, strides };
  }
}

/**
 * Any number of piles seen as two: what each pair of a beginning and an ending
 * could bring with all cards that may still lie between them.
 *
 * Method: two piles are looked at, the others are summed over: the cards in, and
 * the free ones, or the best that still fit where a pile is limited. A
 * combination counts only if no forbidden set lies in it and the cards that are
 * in. A pair is in clash when it and cards in make a forbidden set. Every board
 * below a node is worth at most what its pairs are worth here, so that
 * pair-bound.ts bounds them all. O(combinations left).
 */

import type { BoardModel } from './board-model.ts';
import { type CardNumbers, cardsAs, cardsLeft, pileStatus } from './card-numbers.ts';
import type { Clauses } from './forbidden.ts';
import { FREE, IN, OUT } from './pairs.ts';

/** The two piles that are looked at, and those summed over. */
export interface Pairing {
  readonly first: number;
  readonly second: number;
  readonly between: readonly number[];
}

/** Gains and clashes by pair, index first · size of second + second. Overwritten by the next use. */
export interface PairGains {
  readonly gains: Int32Array;
  readonly clash: Uint8Array;
}

/** Sees the cards as they stand, and the clauses still open among them, as pairs. */
export type Projection = (status: Uint8Array, live: Int32Array) => PairGains;

/** Two piles of a model, the others between them. */
export function pairUp(piles: number, first: number, second: number): Pairing {
  const between = Array.from({ length: piles }, (_, pile) => pile).filter(
    (pile) => pile !== first && pile !== second,
  );
  return { first, second, between };
}

/** Prepares a projection; it keeps arrays to work in. */
export function makeProjection(
  { sizes, weights, limits }: BoardModel,
  numbers: CardNumbers,
  { cards, width }: Clauses,
  { first, second, between }: Pairing,
): Projection {
  const { starts, pileOf, offsetOf } = numbers;
  const rows = sizes[first] as number;
  const columns = sizes[second] as number;
  const rowStart = starts[first] as number;
  const columnStart = starts[second] as number;
  const gains = new Int32Array(rows * columns);
  const clash = new Uint8Array(rows * columns);
  const possible = weights.slice();
  const struck: number[] = [];

  return (status, live) => {
    strike(status, live);
    markClashes(status, live);
    gains.fill(0);
    const ends = cardsLeft(pileStatus(numbers, status, second));
    const piles = between.map((pile) => openPile(status, pile));
    if (piles.every(({ free, room }) => free.length <= room)) addAll(status, ends, piles);
    else addBest(status, ends, piles);
    return { gains, clash };
  };

  /** Sets to nothing the combinations that a clause and the cards in rule out. */
  function strike(status: Uint8Array, live: Int32Array): void {
    for (let k = 0; k < struck.length; k++) {
      const at = struck[k] as number;
      possible[at] = weights[at] as number;
    }
    struck.length = 0;
    for (let k = 0; k < live.length; k++) {
      let from = 0;
      let piles = 0;
      let some = false;
      for (let at = (live[k] as number) * width, stop = at + width; at < stop; at++) {
        const card = cards[at] as number;
        if (card < 0) break;
        if (status[card] === IN) some = true;
        else {
          piles |= 1 << (pileOf[card] as number);
          from += offsetOf[card] as number;
        }
      }
      if (some) strikeFrom(0, piles, from, status);
    }
  }

  function strikeFrom(pile: number, fixed: number, from: number, status: Uint8Array): void {
    let next = pile;
    while (next < width && fixed & (1 << next)) next++;
    if (next === width) {
      if (!possible[from]) return;
      possible[from] = 0;
      struck.push(from);
      return;
    }
    const start = starts[next] as number;
    for (let card = start; card < start + (sizes[next] as number); card++) {
      if (status[card] !== OUT) {
        strikeFrom(next + 1, fixed, from + (offsetOf[card] as number), status);
      }
    }
  }

  function markClashes(status: Uint8Array, live: Int32Array): void {
    clash.fill(0);
    for (let k = 0; k < live.length; k++) {
      let row = -1;
      let column = -1;
      let at = (live[k] as number) * width;
      const stop = at + width;
      for (; at < stop; at++) {
        const card = cards[at] as number;
        if (card < 0) continue;
        if (pileOf[card] === first) row = card - rowStart;
        else if (pileOf[card] === second) column = card - columnStart;
        else if (status[card] !== IN) break;
      }
      if (at === stop && row >= 0 && column >= 0) clash[row * columns + column] = 1;
    }
  }

  /** The cards of a pile as offsets: those in, those free, and how many of these still fit. */
  function openPile(status: Uint8Array, pile: number): OpenPile {
    const own = pileStatus(numbers, status, pile);
    const offset = (card: number): number => offsetOf[(starts[pile] as number) + card] as number;
    const chosen = cardsAs(own, IN);
    const free = cardsAs(own, FREE).map(offset);
    const room = Math.max(0, (limits[pile] as number) - chosen.length);
    return { chosen: chosen.map(offset), free, room };
  }

  function addAll(status: Uint8Array, ends: readonly number[], piles: readonly OpenPile[]): void {
    let offsets = [0];
    for (const { chosen, free } of piles) {
      offsets = offsets.flatMap((offset) => [...chosen, ...free].map((card) => offset + card));
    }
    const between = Int32Array.from(offsets);
    const places = Int32Array.from(ends, (end) => offsetOf[columnStart + end] as number);
    const row = new Int32Array(ends.length);
    for (let begin = 0; begin < rows; begin++) {
      if (status[rowStart + begin] === OUT) continue;
      row.fill(0);
      const from = offsetOf[rowStart + begin] as number;
      for (let k = 0; k < between.length; k++) {
        const at = from + (between[k] as number);
        for (let e = 0; e < places.length; e++)
          row[e]! += possible[at + (places[e] as number)] as number;
      }
      for (let e = 0; e < row.length; e++)
        gains[begin * columns + (ends[e] as number)] = row[e] as number;
    }
  }

  function addBest(status: Uint8Array, ends: readonly number[], piles: readonly OpenPile[]): void {
    const sorted = piles.map(({ free }) => new Int32Array(free.length));
    for (let begin = 0; begin < rows; begin++) {
      if (status[rowStart + begin] === OUT) continue;
      const from = offsetOf[rowStart + begin] as number;
      for (const end of ends) {
        gains[begin * columns + end] = best(0, from + (offsetOf[columnStart + end] as number));
      }
    }

    function best(level: number, at: number): number {
      const pile = piles[level];
      if (!pile) return possible[at] as number;
      const { chosen, free, room } = pile;
      let sum = 0;
      for (let k = 0; k < chosen.length; k++) sum += best(level + 1, at + (chosen[k] as number));
      if (room === 0) return sum;
      const own = sorted[level] as Int32Array;
      for (let k = 0; k < free.length; k++) own[k] = best(level + 1, at + (free[k] as number));
      if (free.length > room) own.sort();
      for (let k = Math.max(0, free.length - room); k < free.length; k++) sum += own[k] as number;
      return sum;
    }
  }
}

interface OpenPile {
  readonly chosen: readonly number[];
  readonly free: readonly number[];
  readonly room: number;
}

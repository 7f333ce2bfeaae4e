/**
 * Which card to decide next.
 *
 * The bound's last step chose beginnings and endings as if every card between
 * them might stay. A card is worth deciding when much hangs on it there (its
 * stake: the weight of the combinations it is part of) and when it stands in
 * many forbidden sets that these would complete (its trouble), for then both
 * having it in and having it out lowers the bound.
 */

import type { BoardModel } from './board-model.ts';
import { type CardNumbers, cardsLeft, freeCards, pileStatus } from './card-numbers.ts';
import type { Clauses } from './forbidden.ts';
import type { PairGains, Pairing } from './pair-gains.ts';
import { FREE } from './pairs.ts';

/** A node as the bound left it. */
export interface Seen {
  readonly status: Uint8Array;
  readonly live: Int32Array;
  /** The beginnings and endings that the bound's last look chose. */
  readonly begin: readonly number[];
  readonly end: readonly number[];
  readonly pairs: PairGains;
}

/** What the choice is made from; the same for the whole search. */
export interface Instance {
  readonly model: BoardModel;
  readonly numbers: CardNumbers;
  readonly clauses: Clauses;
  readonly pairing: Pairing;
}

/** The free card that is most worth deciding, by stake and trouble; -1 when none is free. */
export function cardToDecide(known: Instance, seen: Seen): number {
  const { scores } = prospects(known, seen);
  let top = -1;
  for (let card = 0; card < scores.length; card++) {
    if (seen.status[card] !== FREE) continue;
    if (top < 0 || (scores[card] as number) > (scores[top] as number)) top = card;
  }
  return top;
}

/**
 * Free cards worth deciding, the best first: of each kind (between the two
 * piles, or in them) at most `most` by stake and trouble and `most` by the
 * number of open clauses.
 */
export function cardsToDecide(known: Instance, seen: Seen, most: number): readonly number[] {
  const { first, second } = known.pairing;
  const { scores, clauseCounts } = prospects(known, seen);
  const free = freeCards(seen.status);
  const isBetween = (card: number): boolean => {
    const pile = known.numbers.pileOf[card];
    return pile !== first && pile !== second;
  };
  const between = free.filter(isBetween);
  const beside = free.filter((card) => !isBetween(card));
  const ranked = [scores, clauseCounts].flatMap((by) => [
    ranking(between, by).slice(0, most),
    ranking(beside, by).slice(0, most),
  ]);
  return [...new Set(interleave(ranked))];
}

/** Each card's stake times its trouble, and the open clauses it stands in. */
function prospects(
  known: Instance,
  seen: Seen,
): { readonly scores: Float64Array; readonly clauseCounts: Float64Array } {
  const { clauseCounts, trouble } = troubleOf(known, seen);
  const scores = stakesOf(known, seen).map(
    (stake, card) =>
      (stake + 0.5) * ((trouble[card] as number) + 0.01 * (clauseCounts[card] as number) + 0.001),
  );
  return { scores, clauseCounts };
}

function ranking(cards: readonly number[], by: Float64Array): readonly number[] {
  return [...cards].sort((one, other) => (by[other] as number) - (by[one] as number));
}

function interleave(lists: readonly (readonly number[])[]): readonly number[] {
  const longest = Math.max(...lists.map((list) => list.length));
  return Array.from({ length: longest }, (_, at) =>
    lists.flatMap((list) => (at < list.length ? [list[at] as number] : [])),
  ).flat();
}

/** In how many open clauses each card stands, and how many of them the chosen cards would complete. */
function troubleOf(
  { numbers, clauses: { cards, width }, pairing: { first, second } }: Instance,
  { status, live, begin, end }: Seen,
): { readonly clauseCounts: Float64Array; readonly trouble: Float64Array } {
  const { starts, total, pileOf } = numbers;
  const clauseCounts = new Float64Array(total);
  const trouble = new Float64Array(total);
  const picked = new Uint8Array(total);
  for (const card of begin) picked[(starts[first] as number) + card] = 1;
  for (const card of end) picked[(starts[second] as number) + card] = 1;
  for (let k = 0; k < live.length; k++) {
    const from = (live[k] as number) * width;
    let frees = 0;
    let completed = true;
    for (let at = from; at < from + width; at++) {
      const card = cards[at] as number;
      if (card < 0) break;
      clauseCounts[card]! += 1;
      if (status[card] === FREE) frees++;
      const pile = pileOf[card];
      if ((pile === first || pile === second) && !picked[card]) completed = false;
    }
    if (!completed) continue;
    for (let at = from; at < from + width; at++) {
      const card = cards[at] as number;
      // A clause of many free cards can be avoided in as many ways, so each card bears less of it.
      if (card >= 0 && status[card] === FREE) trouble[card]! += 1 / (frees * frees);
    }
  }
  return { clauseCounts, trouble };
}

/** What each card not out brings with the chosen beginnings and endings and all others not out. */
export function stakesOf(
  { model, numbers, pairing }: Instance,
  { status, begin, end, pairs }: Omit<Seen, 'live'>,
): Float64Array {
  const { first, second, between } = pairing;
  const { starts, offsetOf } = numbers;
  const stakes = new Float64Array(numbers.total);
  const lists = between.map((pile) =>
    cardsLeft(pileStatus(numbers, status, pile)).map((card) => (starts[pile] as number) + card),
  );
  const rowStart = starts[first] as number;
  const columnStart = starts[second] as number;
  const columns = model.sizes[second] as number;
  for (const b of begin) {
    for (const e of end) {
      visit(0, (offsetOf[rowStart + b] as number) + (offsetOf[columnStart + e] as number));
    }
  }
  for (let b = 0; b < (model.sizes[first] as number); b++) {
    for (const e of end) stakes[rowStart + b]! += pairs.gains[b * columns + e] as number;
  }
  for (const b of begin) {
    for (let e = 0; e < columns; e++) {
      stakes[columnStart + e]! += pairs.gains[b * columns + e] as number;
    }
  }
  return stakes;

  function visit(level: number, at: number): number {
    const cards = lists[level];
    if (!cards) return model.weights[at] as number;
    let sum = 0;
    for (let k = 0; k < cards.length; k++) {
      const card = cards[k] as number;
      const weight = visit(level + 1, at + (offsetOf[card] as number));
      stakes[card]! += weight;
      sum += weight;
    }
    return sum;
  }
}

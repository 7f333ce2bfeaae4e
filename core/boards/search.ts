/**
 * The best three-pile board, exactly.
 *
 * Problem: choose at most so many beginnings, vowels and endings (pins always,
 * no forbidden combination) that the weights of all their combinations sum to
 * the most. With one vowel and no forbidden combination this is already the
 * heaviest k × k submatrix, which is NP-hard; boards are small enough to solve.
 *
 * Method: depth-first branch and bound. At a node every card is in, out or
 * free. Cards that would complete a forbidden combination go out; cards that
 * the bound shows cannot (or must) be part of a better board are settled
 * without branching. While a vowel is in dispute, the card in most forbidden
 * combinations still open is branched on; after that only beginnings are, since
 * with beginnings and vowels settled the endings decouple: each has its own
 * value, and the best are taken. The bound is the
 * Lagrangian one of pair-bound.ts, its prices handed down from node to node.
 *
 * Complexity: exponential at worst; a node costs some passes over beginnings ×
 * endings. `nodeLimit` stops early with the best board so far and a proven
 * bound; without it the answer is optimal.
 *
 * Alternatives: enumerating beginnings with the simple bound 'each ending picks
 * its own best beginnings' does for 12 candidates and is hopeless for 40; a
 * general MILP solver (HiGHS, the tests' oracle) takes tens of times as long on
 * the same models (bench/boards.bench.ts) and would have to be shipped. Hard
 * for this search are many vowels of which only some may stay: there the bound
 * is loose, and a node limit is advised.
 */
import { bestPile, improve } from './board-heuristic.ts';
import { type BoardChoice, type BoardModel, boardValue, type NoBoard } from './board-model.ts';
import {
  forbiddenTriples,
  openGroup,
  refusePins,
  type Statuses,
  settleForbidden,
  settleGroups,
  type Triple,
} from './forbidden.ts';
import { growBoards } from './grow-board.ts';
import { boundPairs } from './pair-bound.ts';
import { countIn, FREE, IN, OUT, type Prices } from './pairs.ts';

type Piles = BoardChoice['chosen'];

const ROOT_STEPS = 80;
const NODE_STEPS = 8;
/** The share of forbidden combinations from which good boards to start from are hard to find. */
const MANY_FORBIDDEN = 0.1;
/** A board is built from every so many-th step of the bound. */
const LOOK_EVERY = 12;

/** Solves the model; `nodeLimit` (none by default) bounds how many subproblems are looked at. */
export function solveBoard(
  model: BoardModel,
  options: { readonly nodeLimit?: number } = {},
): BoardChoice | NoBoard {
  const refused = refusePins(model);
  if (refused) return refused;
  const { sizes, weights, limits, pinned } = model;
  const [rows, layers, columns] = sizes;
  const forbidden = forbiddenTriples(model);
  const nodeLimit = options.nodeLimit ?? Infinity;
  const vowelsLimited = limits[1] < layers;

  const groups = model.somewhere ?? [];
  let best: { piles: Piles; value: number } = {
    piles: pinned,
    value: groups.length > 0 ? -1 : boardValue(model, pinned),
  };
  let nodes = 0;
  let openBound = -1;
  const offer = (found: { piles: Piles; value: number } | null): void => {
    if (!found || found.value <= best.value) return;
    if (groups.every((group) => group.some(([pile, card]) => found.piles[pile].includes(card)))) {
      best = found;
    }
  };

  const root: Statuses = [new Uint8Array(rows), new Uint8Array(layers), new Uint8Array(columns)];
  pinned.forEach((cards, pile) => {
    for (const card of cards) (root[pile] as Uint8Array)[card] = IN;
  });
  const prices: Prices = {
    lambda: new Float64Array(rows * columns),
    mu: new Float64Array(rows * columns),
  };
  if (forbidden.length > MANY_FORBIDDEN * weights.length) {
    for (const { piles, value } of growBoards(model, 1)) offer({ piles: piles as Piles, value });
  }
  branch(root, prices, ROOT_STEPS, Infinity);
  if (best.value < 0) return { kind: 'no-place', places: groups };
  const bound = Math.max(best.value, openBound);
  return {
    kind: 'found',
    chosen: best.piles,
    value: best.value,
    bound,
    optimal: bound === best.value,
    nodes,
  };

  function branch(statuses: Statuses, handed: Prices, steps: number, above: number): void {
    if (nodes >= nodeLimit && best.value >= 0) {
      openBound = Math.max(openBound, above);
      return;
    }
    nodes++;
    const [begin, middle, end] = statuses;
    if (!settleGroups(statuses, groups)) return;
    const disputed = settleForbidden(statuses, forbidden, limits);
    if (!disputed) return;
    settleFreeVowels(middle, disputed);
    const { gains, clash } = layersToPairs(statuses, disputed);
    const problem = {
      begin: { status: begin, limit: limits[0] },
      end: { status: end, limit: limits[2] },
      gains,
      clash,
    };
    const reached = boundPairs(problem, handed, {
      steps,
      best: () => best.value,
      lookEvery: LOOK_EVERY,
      lookAt(b, e) {
        const start: Piles = [b, vowelsToTry(middle, gainsByVowel(b, e)), e];
        const held = groups.length > 0 ? (statuses.map(chosenOf) as unknown as Piles) : pinned;
        offer(improve({ ...model, pinned: held }, start));
      },
    });
    const bound = Math.min(above, reached);
    if (bound <= best.value) return;
    const live = settleForbidden(statuses, forbidden, limits);
    if (!live) return;
    const open = openGroup(statuses, groups);
    if (open) {
      split(statuses, handed, open[0], open[1], bound);
      return;
    }
    settleFreeVowels(middle, live);
    const vowel = disputedVowel(statuses, live);
    if (vowel >= 0) {
      const [pile, card] = mostDisputed(statuses, live, vowel);
      split(statuses, handed, pile, card, bound);
      return;
    }
    if (!begin.includes(FREE) || !end.includes(FREE)) {
      const side = begin.includes(FREE) ? 0 : 2;
      offer(lastPile(statuses, side));
      return;
    }
    split(statuses, handed, 0, weightiest(statuses), bound);
  }

  function split(
    statuses: Statuses,
    handed: Prices,
    pile: 0 | 1 | 2,
    card: number,
    above: number,
  ): void {
    for (const status of [IN, OUT]) {
      const child = statuses.map((side) => side.slice()) as unknown as Statuses;
      child[pile][card] = status;
      const own = { lambda: handed.lambda.slice(), mu: handed.mu.slice() };
      branch(child, own, NODE_STEPS, above);
    }
  }

  /** Without a limit in the way, a vowel in no live forbidden combination can only add. */
  function settleFreeVowels(middle: Uint8Array, live: readonly Triple[]): void {
    const possible = layers - countOut(middle);
    if (possible > limits[1]) return;
    for (let v = 0; v < layers; v++) {
      if (middle[v] === FREE && !live.some((triple) => triple[1] === v)) middle[v] = IN;
    }
  }

  /** Sums the vowels' layers; where the vowel pile is limited, the best that fit, pair by pair. */
  function layersToPairs(
    [begin, middle, end]: Statuses,
    live: readonly Triple[],
  ): { gains: Int32Array; clash: Uint8Array } {
    const gains = new Int32Array(rows * columns);
    const clash = new Uint8Array(rows * columns);
    const room = limits[1] - countIn(middle);
    const limited = vowelsLimited && room < layers - countOut(middle) - countIn(middle);
    for (let b = 0; b < rows; b++) {
      if (begin[b] === OUT) continue;
      for (let e = 0; e < columns; e++) {
        if (end[e] === OUT) continue;
        let gain = 0;
        const free: number[] = [];
        for (let v = 0; v < layers; v++) {
          if (middle[v] === OUT) continue;
          const weight = weights[(b * layers + v) * columns + e] as number;
          if (limited && middle[v] === FREE) free.push(weight);
          else gain += weight;
        }
        if (limited) {
          free.sort((one, other) => other - one);
          for (let k = 0; k < room; k++) gain += free[k] ?? 0;
        }
        gains[b * columns + e] = gain;
      }
    }
    for (const [b, v, e] of live) if (middle[v] === IN) clash[b * columns + e] = 1;
    return { gains, clash };
  }

  function gainsByVowel(begin: readonly number[], end: readonly number[]): Float64Array {
    const gains = new Float64Array(layers);
    for (const b of begin) {
      for (let v = 0; v < layers; v++) {
        for (const e of end) gains[v]! += weights[(b * layers + v) * columns + e] as number;
      }
    }
    return gains;
  }

  /** The vowels that are in, and the best free ones that still fit. */
  function vowelsToTry(middle: Uint8Array, gains: Float64Array): number[] {
    const free: number[] = [];
    const chosen: number[] = [];
    for (let v = 0; v < layers; v++) {
      if (middle[v] === IN) chosen.push(v);
      else if (middle[v] === FREE) free.push(v);
    }
    free.sort((one, other) => (gains[other] as number) - (gains[one] as number));
    return [...chosen, ...free.slice(0, Math.max(0, limits[1] - chosen.length))];
  }

  /** A free vowel that a limit or a forbidden combination is about; -1 when none is. */
  function disputedVowel([, middle]: Statuses, live: readonly Triple[]): number {
    if (!middle.includes(FREE)) return -1;
    const counts = new Float64Array(layers);
    for (const [, v] of live) counts[v]! += 1;
    let most = -1;
    for (let v = 0; v < layers; v++) {
      if (middle[v] !== FREE) continue;
      if (most < 0 || (counts[v] as number) > (counts[most] as number)) most = v;
    }
    return most;
  }

  /** The free card in most live forbidden combinations; the vowel when none is in more. */
  function mostDisputed(
    statuses: Statuses,
    live: readonly Triple[],
    vowel: number,
  ): readonly [0 | 1 | 2, number] {
    const counts = sizes.map((size) => new Float64Array(size));
    for (const triple of live) {
      triple.forEach((card, pile) => {
        (counts[pile] as Float64Array)[card]! += 1;
      });
    }
    let best: readonly [0 | 1 | 2, number] = [1, vowel];
    let most = (counts[1] as Float64Array)[vowel] as number;
    for (const pile of [0, 2] as const) {
      for (let card = 0; card < sizes[pile]; card++) {
        const count = (counts[pile] as Float64Array)[card] as number;
        if (statuses[pile][card] !== FREE || count <= most) continue;
        most = count;
        best = [pile, card];
      }
    }
    return best;
  }

  function weightiest([begin, middle, end]: Statuses): number {
    let card = -1;
    let most = -1;
    for (let b = 0; b < rows; b++) {
      if (begin[b] !== FREE) continue;
      let sum = 0;
      for (let v = 0; v < layers; v++) {
        if (middle[v] === OUT) continue;
        for (let e = 0; e < columns; e++) {
          if (end[e] !== OUT) sum += weights[(b * layers + v) * columns + e] as number;
        }
      }
      if (sum > most) {
        most = sum;
        card = b;
      }
    }
    return card;
  }

  /** With the other two piles settled, the best cards among those not out. */
  function lastPile(statuses: Statuses, pile: 0 | 2): { piles: Piles; value: number } | null {
    const piles = statuses.map(chosenOf) as unknown as Piles;
    const narrowed: BoardModel = {
      ...model,
      pinned: statuses.map(chosenOf) as unknown as BoardModel['pinned'],
    };
    const open = bestPile(narrowed, piles, pile, statuses[pile]);
    if (!open) return null;
    const whole: Piles = pile === 0 ? [open, piles[1], piles[2]] : [piles[0], piles[1], open];
    return { piles: whole, value: boardValue(model, whole) };
  }
}

function chosenOf(status: Uint8Array): number[] {
  const cards: number[] = [];
  status.forEach((one, card) => {
    if (one === IN) cards.push(card);
  });
  return cards;
}

function countOut(status: Uint8Array): number {
  return status.reduce((sum, one) => sum + (one === OUT ? 1 : 0), 0);
}

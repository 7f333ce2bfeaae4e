/**
 * An upper bound for choosing beginnings and endings together.
 *
 * Problem: gains g(b, e) ≥ 0, some pairs in clash; choose at most p beginnings
 * and q endings without a clash so that the gains of all chosen pairs sum to
 * the most.
 *
 * Method: Lagrangian decomposition. Each pair's gain is split between its
 * beginning and its ending (half ± λ); then each beginning picks its own best q
 * endings and each ending its own best p beginnings, and the best p and q of
 * these are taken. Clashes, x + y ≤ 1, are priced by μ ≥ 0. Subgradient steps
 * on λ and μ pull the two sides together. Every step is a valid bound, and its
 * reduced costs settle cards: one that cannot be part of a better board goes
 * out, one that must be goes in. O(beginnings × endings) a step.
 *
 * Reference: Guignard & Kim, "Lagrangean decomposition", Math. Programming 39
 * (1987). The alternative, the same relaxation as a linear program, gives the
 * same bound at many times the cost.
 */
import {
  closePairs,
  countIn,
  FREE,
  IN,
  OUT,
  openPairs,
  type PairProblem,
  type Pairs,
  type Prices,
} from './pairs.ts';
import { choose, settle, settleClashes } from './settle-cards.ts';

/** How a bound is sought. */
export interface BoundEffort {
  /** How many subgradient steps. */
  readonly steps: number;
  /** Only boards worth more than this matter. It is asked again at each step. */
  readonly best: () => number;
  /** Called with the beginnings and endings that a step chose, so that boards can be built from them. */
  readonly lookAt: (begin: readonly number[], end: readonly number[]) => void;
  /** Every step whose number is a multiple of this is looked at. */
  readonly lookEvery: number;
}

/**
 * Steps the prices down and settles cards in place (in `begin.status` and
 * `end.status`), given that only boards better than `best()` matter. Returns the
 * lowest bound seen, rounded down, or -1 when nothing feasible is left.
 */
export function boundPairs(problem: PairProblem, prices: Prices, effort: BoundEffort): number {
  const pairs = openPairs(problem, prices);
  const lowest = stepDown(pairs, effort);
  closePairs(pairs, problem, prices);
  return lowest;
}

function stepDown(pairs: Pairs, { steps, best, lookAt, lookEvery }: BoundEffort): number {
  const { begin, end, half, lambda, mu, clash } = pairs;
  const rows = begin.status.length;
  const columns = end.status.length;
  const clashes = clash.includes(1);
  const rowValue = new Float64Array(rows);
  const columnValue = new Float64Array(columns);
  const rowPicks = new Int16Array(rows * (columns + 1));
  const columnPicks = new Int16Array(columns * (rows + 1));
  const x = new Uint8Array(rows);
  const y = new Uint8Array(columns);
  const slope = new Int8Array(rows * columns);
  let lowest = Infinity;
  let pace = 1;
  let stale = 0;
  let changed = true;

  for (let step = 0; step < steps; step++) {
    if (changed && !settleClashes(pairs)) return -1;
    const endRoom = end.limit - countIn(end.status);
    const beginRoom = begin.limit - countIn(begin.status);
    for (let b = 0; b < rows; b++) {
      if (begin.status[b] !== OUT) rowValue[b] = pickEnds(b, endRoom);
    }
    for (let e = 0; e < columns; e++) {
      if (end.status[e] !== OUT) columnValue[e] = pickBegins(e, beginRoom);
    }
    let bound = choose(begin.status, beginRoom, rowValue, x);
    bound += choose(end.status, endRoom, columnValue, y);
    if (clashes) for (let at = 0; at < mu.length; at++) if (clash[at]) bound += mu[at] as number;
    const floor = Math.floor(bound + 1e-6);
    if (floor < lowest) {
      lowest = floor;
      stale = 0;
    } else if (++stale >= 4) {
      pace /= 2;
      stale = 0;
    }
    if (step % lookEvery === 0) lookAt(marked(x, pairs.begins), marked(y, pairs.ends));
    if (lowest <= best()) return lowest;
    const slack = bound - best() - 1 + 1e-6;
    changed = settle(begin.status, beginRoom, rowValue, x, slack);
    changed = settle(end.status, endRoom, columnValue, y, slack) || changed;
    if (step < steps - 1 && !follow(bound)) break;
  }
  return settleClashes(pairs) ? lowest : -1;

  /** Moves the prices against the slope; false when the two sides agree. */
  function follow(bound: number): boolean {
    slope.fill(0);
    for (let b = 0; b < rows; b++) {
      if (!x[b]) continue;
      const from = b * (columns + 1);
      for (let k = rowPicks[from] as number; k > 0; k--) {
        slope[b * columns + (rowPicks[from + k] as number)]! += 1;
      }
    }
    for (let e = 0; e < columns; e++) {
      if (!y[e]) continue;
      const from = e * (rows + 1);
      for (let k = columnPicks[from] as number; k > 0; k--) {
        slope[(columnPicks[from + k] as number) * columns + e]! -= 1;
      }
    }
    let norm = 0;
    for (let b = 0, at = 0; b < rows; b++) {
      for (let e = 0; e < columns; e++, at++) {
        if (clash[at] && begin.status[b] === FREE && end.status[e] === FREE) {
          slope[at] = 1 - (x[b] as number) - (y[e] as number);
        }
        if (slope[at] !== 0) norm++;
      }
    }
    if (norm === 0) return false;
    const length = (pace * (bound - Math.max(best(), 0))) / norm;
    for (let at = 0; at < slope.length; at++) {
      const down = slope[at] as number;
      if (down === 0) continue;
      if (clash[at]) mu[at] = Math.max(0, (mu[at] as number) - length * down);
      else lambda[at]! -= length * down;
    }
    return true;
  }

  /** What a beginning is worth with all endings that are in and its best free ones. */
  function pickEnds(b: number, room: number): number {
    const top = b * (columns + 1) + 1;
    let value = 0;
    let taken = 0;
    let fixed = columns;
    for (let e = 0, at = b * columns; e < columns; e++, at++) {
      const status = end.status[e];
      if (status === OUT) continue;
      if (clash[at]) {
        value -= mu[at] as number;
        continue;
      }
      const gain = (half[at] as number) + (lambda[at] as number);
      if (status === IN) {
        value += gain;
        rowPicks[top + --fixed] = e;
      } else if (gain > 0) taken = insert(rowPicks, top, taken, room, e, gain);
    }
    for (let k = 0; k < taken; k++) value += sorted[k] as number;
    while (fixed < columns) rowPicks[top + taken++] = rowPicks[top + fixed++] as number;
    rowPicks[top - 1] = taken;
    return value;
  }

  /** What an ending is worth with all beginnings that are in and its best free ones. */
  function pickBegins(e: number, room: number): number {
    const top = e * (rows + 1) + 1;
    let value = 0;
    let taken = 0;
    let fixed = rows;
    for (let b = 0, at = e; b < rows; b++, at += columns) {
      const status = begin.status[b];
      if (status === OUT) continue;
      if (clash[at]) {
        value -= mu[at] as number;
        continue;
      }
      const gain = (half[at] as number) - (lambda[at] as number);
      if (status === IN) {
        value += gain;
        columnPicks[top + --fixed] = b;
      } else if (gain > 0) taken = insert(columnPicks, top, taken, room, b, gain);
    }
    for (let k = 0; k < taken; k++) value += sorted[k] as number;
    while (fixed < rows) columnPicks[top + taken++] = columnPicks[top + fixed++] as number;
    columnPicks[top - 1] = taken;
    return value;
  }
}

/** Keeps the best `room` cards, best first, in `picks` and their gains in `sorted`; returns how many. */
function insert(
  picks: Int16Array,
  top: number,
  taken: number,
  room: number,
  card: number,
  gain: number,
): number {
  let slot = taken;
  if (taken >= room) {
    if (room <= 0 || gain <= (sorted[room - 1] as number)) return taken;
    slot = room - 1;
  }
  const count = Math.min(taken + 1, room);
  while (slot > 0 && (sorted[slot - 1] as number) < gain) {
    sorted[slot] = sorted[slot - 1] as number;
    picks[top + slot] = picks[top + slot - 1] as number;
    slot--;
  }
  sorted[slot] = gain;
  picks[top + slot] = card;
  return count;
}

const sorted = new Float64Array(256);

function marked(marks: Uint8Array, cards: readonly number[]): number[] {
  return cards.filter((_, at) => marks[at]);
}

/**
 * The order of units inside one stage.
 *
 * Problem: put the units in an order that makes many common words readable
 * soon, while look-alikes and sound-alikes keep their distance.
 * Method: the value of a set of taught units is the summed weight of the words
 * that it lets a child read (with all that came before the stage); the value of
 * an order is the sum over its steps, the area under the curve, so that a word
 * counts for every step at which it is readable. Dynamic programming step by step:
 * two beginnings with the same units that keep the rest waiting equally long
 * have the same future, and only the better is kept. Of those left, the
 * best WIDTH go on, so for up to about eight units the result is exact; for the
 * alphabet it is a beam, and single units are then moved or swapped as long as
 * that raises the value. Ties go to the order of the table, so the outcome is
 * always the same.
 * Rejected: greedy choice by words opened now, which cannot see that a vowel
 * pays off a step later; and an exact search of the alphabet, whose answer is
 * no better than the weights that it rests on.
 */
import type { Apart } from '../core/sequence/apart.ts';

/** Items that are taught together; `needs` are item keys. */
export interface Unit {
  readonly keys: readonly string[];
}

/** A word, what it asks for (item keys), and how much it counts. */
export interface WeighedWord {
  readonly needs: readonly string[];
  readonly weight: number;
}

/** Whether an order may begin this way; `order` holds indexes of units. */
export type OrderRule = (order: readonly number[]) => boolean;

const WIDTH = 600;

/**
 * Indexes of `units` in the order found; null when no order keeps the
 * distances and the rule. `before` maps item keys to the step that taught them,
 * numbered so that the stage's first step is `firstStep`.
 */
export function orderUnits(
  units: readonly Unit[],
  words: readonly WeighedWord[],
  apart: readonly Apart[],
  before: ReadonlyMap<string, number>,
  firstStep: number,
  rule: OrderRule = () => true,
): readonly number[] | null {
  const worthOf = worths(units, words, before);
  const distances = distancesOf(units, apart, before);
  let states: readonly State[] = [{ set: 0, order: [], score: 0, from: distances.from }];
  for (let step = firstStep; step < firstStep + units.length; step++) {
    const next: State[] = [];
    for (const state of states) {
      for (let unit = 0; unit < units.length; unit++) {
        if (state.set & (1 << unit) || step < (state.from[unit] as number)) continue;
        const order = [...state.order, unit];
        if (!rule(order)) continue;
        const set = state.set | (1 << unit);
        const from = distances.after(state.from, unit, step);
        next.push({ set, order, score: state.score + worthOf(set), from });
      }
    }
    states = bestOf(next, step + 1);
  }
  const found = states[0];
  if (!found) return null;
  return polish(found.order, worthOf, (order) => distances.keeps(order, firstStep, rule));
}

/** The beginning of an order: its units as bits and in order, and the first step open to each unit. */
interface State {
  readonly set: number;
  readonly order: readonly number[];
  readonly score: number;
  readonly from: readonly number[];
}

/** The best beginnings; of those with the same future only the best. */
function bestOf(states: State[], nextStep: number): readonly State[] {
  const best = new Map<string, State>();
  for (const state of states.sort((left, right) => right.score - left.score)) {
    const waits = state.from.map((step, unit) =>
      state.set & (1 << unit) ? 0 : Math.max(0, step - nextStep),
    );
    const future = `${state.set} ${waits.join(' ')}`;
    if (!best.has(future)) best.set(future, state);
    if (best.size === WIDTH) break;
  }
  return [...best.values()];
}

/** Moves or swaps single units, the most useful change first, until none helps. */
function polish(
  order: readonly number[],
  worthOf: (set: number) => number,
  isLegal: (order: readonly number[]) => boolean,
): readonly number[] {
  const score = (candidate: readonly number[]): number => {
    let set = 0;
    let sum = 0;
    for (const unit of candidate) {
      set |= 1 << unit;
      sum += worthOf(set);
    }
    return sum;
  };
  let best = order;
  let bestScore = score(order);
  while (true) {
    const better = neighbors(best)
      .map((candidate) => ({ candidate, score: score(candidate) }))
      .filter((change) => change.score > bestScore)
      .sort((left, right) => right.score - left.score)
      .find(({ candidate }) => isLegal(candidate));
    if (!better) return best;
    best = better.candidate;
    bestScore = better.score;
  }
}

/** Every order that differs by one unit moved elsewhere, or by two units swapped. */
function neighbors(order: readonly number[]): readonly (readonly number[])[] {
  const found: (readonly number[])[] = [];
  for (let from = 0; from < order.length; from++) {
    for (let to = 0; to < order.length; to++) {
      if (from === to) continue;
      found.push(order.toSpliced(from, 1).toSpliced(to, 0, order[from] as number));
      if (from < to) {
        found.push(order.with(from, order[to] as number).with(to, order[from] as number));
      }
    }
  }
  return found;
}

/** The weight of all words readable with a set of units (as bits), each set summed once. */
function worths(
  units: readonly Unit[],
  words: readonly WeighedWord[],
  before: ReadonlyMap<string, number>,
): (set: number) => number {
  const bitOf = new Map<string, number>();
  for (const [unit, { keys }] of units.entries()) {
    for (const key of keys) if (!bitOf.has(key)) bitOf.set(key, 1 << unit);
  }
  const weightOf = new Map<number, number>();
  for (const { needs, weight } of words) {
    let asked = 0;
    let reachable = true;
    for (const need of needs) {
      if (before.has(need)) continue;
      const bit = bitOf.get(need);
      if (bit === undefined) reachable = false;
      else asked |= bit;
    }
    if (reachable && asked !== 0) weightOf.set(asked, (weightOf.get(asked) ?? 0) + weight);
  }
  const sums = new Map<number, number>();
  return (set) => {
    const known = sums.get(set);
    if (known !== undefined) return known;
    let sum = 0;
    for (const [asked, weight] of weightOf) if ((asked & set) === asked) sum += weight;
    sums.set(set, sum);
    return sum;
  };
}

/** What the distances ask: the first step open to each unit, and how that moves as units are placed. */
interface Distances {
  readonly from: readonly number[];
  after(from: readonly number[], placed: number, step: number): readonly number[];
  keeps(order: readonly number[], firstStep: number, rule: OrderRule): boolean;
}

function distancesOf(
  units: readonly Unit[],
  apart: readonly Apart[],
  before: ReadonlyMap<string, number>,
): Distances {
  const least = units.map(() => new Map<number, number>());
  const from = units.map(() => 0);
  const unitOf = (card: string): number =>
    before.has(`card:${card}`) ? -1 : units.findIndex(({ keys }) => keys.includes(`card:${card}`));
  for (const { cards, steps } of apart) {
    const [left, right] = cards.map(unitOf) as [number, number];
    if (left >= 0 && right >= 0) {
      const known = least[left]?.get(right) ?? 0;
      least[left]?.set(right, Math.max(steps, known));
      least[right]?.set(left, Math.max(steps, known));
    } else if (left >= 0 || right >= 0) {
      const unit = Math.max(left, right);
      const other = before.get(`card:${left >= 0 ? cards[1] : cards[0]}`);
      if (other !== undefined) from[unit] = Math.max(from[unit] ?? 0, other + steps);
    }
  }
  const after: Distances['after'] = (open, placed, step) => {
    const moved = [...open];
    for (const [unit, steps] of least[placed] ?? []) {
      moved[unit] = Math.max(moved[unit] ?? 0, step + steps);
    }
    return moved;
  };
  const keeps: Distances['keeps'] = (order, firstStep, rule) => {
    let open: readonly number[] = from;
    return order.every((unit, place) => {
      const step = firstStep + place;
      if (step < (open[unit] as number) || !rule(order.slice(0, place + 1))) return false;
      open = after(open, unit, step);
      return true;
    });
  };
  return { from, after, keeps };
}

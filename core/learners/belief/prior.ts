import { HIGHEST, LOWEST, NODES, STEP } from './grid.ts';
import { TAIL } from './numbers.ts';

/**
 * Writes how likely each strength is before anything was read of a pair: a bell curve around `mean`,
 * and beside it the heavy tail, a wider and lower one with `share` of all. `variance` is that of the
 * mean, `spread` that of a pair around it. The nodes are `step` apart, from LOWEST to HIGHEST; what is
 * written adds up to what falls on them, not to 1.
 */
export function fillPrior(
  into: Float64Array,
  step: number,
  mean: number,
  variance: number,
  spread: number,
  share: number,
): void {
  into.fill(0);
  addBell(into, step, mean, variance + spread, 1 - share);
  addBell(into, step, mean - TAIL.lowered, variance + tailSpread(spread), share);
}

/** The variance of a pair of the heavy tail around its mean. */
export function tailSpread(spread: number): number {
  return Math.max(TAIL.least, TAIL.widening * spread);
}

/**
 * Adds `weight` of a normal density, but for its constant. From the node nearest to its mean outwards:
 * from one node to the next the density falls by a factor that itself falls by a constant one, so that
 * three exponentials do for all.
 */
export function addBell(
  into: Float64Array,
  step: number,
  mean: number,
  variance: number,
  weight: number,
): void {
  const center = mean < LOWEST ? LOWEST : Math.min(mean, HIGHEST);
  const nearest = Math.round((center - LOWEST) / step);
  const off = LOWEST + nearest * step - center;
  const half = 0.5 / variance;
  const peak = (weight / Math.sqrt(variance)) * Math.exp(-off * off * half);
  const first = Math.exp(-step * step * half);
  const falls = first * first;
  const aside = Math.exp(-2 * off * step * half);
  let value = peak;
  let factor = first * aside;
  for (let node = nearest; node < into.length; node++) {
    into[node] = (into[node] as number) + value;
    value *= factor;
    factor *= falls;
  }
  value = peak;
  factor = first / aside;
  for (let node = nearest - 1; node >= 0; node--) {
    value *= factor;
    factor *= falls;
    into[node] = (into[node] as number) + value;
  }
}

/** Means from −6 to 9 by a quarter, which is fine enough while a class is followed. */
const FIRST = -6;
const PER_ONE = 4;
const ROWS = 61;
const OWN_VARIANCE = 0.1;

/** The priors of pairs while a class is followed, each adding up to 1, one after another. */
export const PRIORS: Float64Array = priorsByMean();

function priorsByMean(): Float64Array {
  const all = new Float64Array(ROWS * NODES);
  for (let row = 0; row < ROWS; row++) {
    const prior = all.subarray(row * NODES, (row + 1) * NODES);
    fillPrior(prior, STEP, FIRST + row / PER_ONE, OWN_VARIANCE, 1, TAIL.share);
    const sum = prior.reduce((total, weight) => total + weight, 0);
    for (let node = 0; node < NODES; node++) prior[node] = (prior[node] as number) / sum;
  }
  return all;
}

/** Where in PRIORS the prior around a mean begins. */
export function priorPlace(mean: number): number {
  const row = Math.round((mean - FIRST) * PER_ONE);
  return (row < 0 ? 0 : row >= ROWS ? ROWS - 1 : row) * NODES;
}

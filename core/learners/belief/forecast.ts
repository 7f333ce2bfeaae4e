import { LOGISTIC, LOWEST, NODES, STEP } from './grid.ts';

/** Where each average of a forecast stands in its row. */
export const CHANCE = 0;
/** Of the chance times itself. */
export const SQUARE = 1;
/** Of the strength. */
export const STRENGTH = 2;
/** Of the strength times the chance. */
export const PRODUCT = 3;
/** Numbers in a row. */
export const AVERAGES = 4;

const LEAST = 1e-6;

/**
 * Writes a row of averages under prior × likelihood, of the chance of a right reading and of the
 * strength: all that a forecast and what is common to a class need. `table` is where the lowest node
 * stands in LOGISTIC (tablePlace), for the same `slope`. The prior adds
 * up to anything; what comes back is the sum of prior × likelihood.
 */
export function forecastInto(
  averages: Float64Array,
  row: number,
  priors: Float64Array,
  prior: number,
  likelihoods: Float64Array,
  first: number,
  table: number,
  slope: number,
): number {
  // Constants of a module are looked up each time they are named: here once.
  const logistic = LOGISTIC;
  const apart = first - prior;
  const end = prior + NODES;
  let sum = 0;
  let chance = 0;
  let square = 0;
  let strength = 0;
  let product = 0;
  let at = table;
  // Half steps: a fraction stays a number that needs no conversion before it is multiplied.
  let halves = 0.5;
  for (let node = prior; node < end; node++) {
    const weight = (priors[node] as number) * (likelihoods[node + apart] as number);
    const right = logistic[at] as number;
    const well = weight * right;
    sum += weight;
    chance += well;
    square += well * right;
    strength += weight * halves;
    product += well * halves;
    at += slope;
    halves += 0.5;
  }
  strength = 2 * strength - sum;
  product = 2 * product - chance;
  const p = chance / sum;
  averages[row + CHANCE] = p < LEAST ? LEAST : Math.min(p, 1 - LEAST);
  averages[row + SQUARE] = square / sum;
  averages[row + STRENGTH] = LOWEST + (STEP * strength) / sum;
  averages[row + PRODUCT] = (LOWEST * chance + STEP * product) / sum;
  return sum;
}

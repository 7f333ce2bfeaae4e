import type { Observation } from '../../core/learners/observation.ts';
import type { Classroom } from './classroom.ts';

/** Says how likely each card of a child's own reading is to be read correctly, then learns from it. */
export interface Forecaster {
  readonly expect: (reading: Observation) => readonly number[];
  readonly observe: (reading: Observation) => void;
}

/** A forecast of one card, its true chance, and how likely the reading was to come as far as it. */
export interface Forecast {
  readonly p: number;
  readonly truth: number;
  readonly weight: number;
}

/**
 * Every card of every reading of a child's own, forecast from all that came before it. What is compared
 * with is the true chance and not the outcome, so that nothing hangs on which mistakes were named: a
 * judge that leaves out mistakes whose card was not said keeps the right readings beside them, and
 * prefers those who forecast too high.
 */
export function forecasts(
  forecaster: Forecaster,
  { observations, truths }: Pick<Classroom, 'observations' | 'truths'>,
): readonly Forecast[] {
  const all: Forecast[] = [];
  for (const [n, reading] of observations.entries()) {
    const chances = truths[n] ?? [];
    if (reading.child !== null && chances.length > 0) {
      const expected = forecaster.expect(reading);
      let weight = 1;
      for (const [at, truth] of chances.entries()) {
        all.push({ p: expected[at] as number, truth, weight });
        weight *= truth;
      }
    }
    forecaster.observe(reading);
  }
  return all;
}

/** The mean of −ln(the chance given to what happens), in nats, as it is to be expected; lower is better. */
export function logLoss(all: readonly Forecast[]): number {
  let sum = 0;
  let weights = 0;
  for (const { p, truth, weight } of all) {
    const held = Math.min(1 - 1e-6, Math.max(1e-6, p));
    sum -= weight * (truth * Math.log(held) + (1 - truth) * Math.log(1 - held));
    weights += weight;
  }
  return sum / weights;
}

const BINS = 10;

/**
 * Expected calibration error: in ten bins of equal width by forecast, how far
 * the mean forecast lies from the mean true chance, weighted by how many
 * fell there (Naeini, Cooper & Hauskrecht 2015).
 */
export function calibrationError(all: readonly Forecast[]): number {
  const off = new Float64Array(BINS);
  let weights = 0;
  for (const { p, truth, weight } of all) {
    const bin = Math.min(BINS - 1, Math.floor(p * BINS));
    off[bin] = (off[bin] as number) + weight * (p - truth);
    weights += weight;
  }
  return off.reduce((sum, one) => sum + Math.abs(one), 0) / weights;
}

/** The mean of some numbers; at least one is needed. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

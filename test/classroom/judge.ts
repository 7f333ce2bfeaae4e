import type { Observation } from '../../core/learners/observation.ts';

/** Says how likely each card of a child's own reading is to be read rightly, then learns from it. */
export interface Forecaster {
  readonly expect: (reading: Observation) => readonly number[];
  readonly observe: (reading: Observation) => void;
}

/** A forecast of one card, and whether it was read rightly. */
export interface Forecast {
  readonly p: number;
  readonly right: boolean;
}

/**
 * Every card of the children's own readings of which it is known how it went,
 * forecast from all that came before it.
 */
export function forecasts(
  forecaster: Forecaster,
  observations: readonly Observation[],
): readonly Forecast[] {
  const all: Forecast[] = [];
  for (const reading of observations) {
    if (reading.child !== null && (reading.right || reading.broke !== null)) {
      const chances = forecaster.expect(reading);
      const last = reading.right ? reading.cards.length : (reading.broke ?? 0);
      for (let at = 0; at < last; at++) {
        const right = reading.right || at < last - 1;
        all.push({ p: chances[at] as number, right });
      }
    }
    forecaster.observe(reading);
  }
  return all;
}

/** The mean of −ln(the chance given to what happened), in nats; lower is better. */
export function logLoss(all: readonly Forecast[]): number {
  const losses = all.map(({ p, right }) => {
    const held = Math.min(1 - 1e-6, Math.max(1e-6, p));
    return -Math.log(right ? held : 1 - held);
  });
  return mean(losses);
}

const BINS = 10;

/**
 * Expected calibration error: in ten bins of equal width by forecast, how far
 * the mean forecast lies from the share that went right, weighted by how many
 * fell there (Naeini, Cooper & Hauskrecht 2015).
 */
export function calibrationError(all: readonly Forecast[]): number {
  let error = 0;
  for (let bin = 0; bin < BINS; bin++) {
    const inside = all.filter(({ p }) => Math.min(BINS - 1, Math.floor(p * BINS)) === bin);
    if (inside.length === 0) continue;
    const share = mean(inside.map(({ right }) => (right ? 1 : 0)));
    error += (inside.length / all.length) * Math.abs(share - mean(inside.map(({ p }) => p)));
  }
  return error;
}

/** The mean of some numbers; at least one is needed. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

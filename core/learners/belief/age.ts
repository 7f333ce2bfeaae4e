import { NODES, STEP } from './grid.ts';
import { DRIFT } from './numbers.ts';

/** Blurring further than this at once would swing. */
const MOST_AT_ONCE = 0.25;
/** Of a pair at most so much begins again. */
const MOST_RENEWED = 0.5;

/**
 * What days do to the likelihood that stands in `all` from `first` on. Strength wanders: the grid is
 * blurred as heat spreads (the explicit scheme of the diffusion equation, stable below a half; Crank
 * 1975, The Mathematics of Diffusion, 8.2), its ends shut. And with a small chance it begins again from
 * the prior that stands in `priors` from `prior` on, whatever was read before. `restless` scales both.
 */
export function ageLikelihood(
  all: Float64Array,
  first: number,
  days: number,
  restless: number,
  priors: Float64Array,
  prior: number,
): void {
  let left = (DRIFT.pair * restless * days) / (2 * STEP * STEP);
  while (left > MOST_AT_ONCE) {
    blur(all, first, MOST_AT_ONCE, priors, prior);
    left -= MOST_AT_ONCE;
  }
  const mean = blur(all, first, left, priors, prior);
  const renewed = Math.min(MOST_RENEWED, DRIFT.renewal * restless * days);
  // That the rest becomes less is left out: only how likelihoods compare counts.
  const added = (renewed / (1 - renewed)) * mean;
  for (let at = first; at < first + NODES; at++) all[at] = (all[at] as number) + added;
}

/** Blurs once, and tells the mean under the prior. */
function blur(
  all: Float64Array,
  first: number,
  part: number,
  priors: Float64Array,
  prior: number,
): number {
  const last = NODES - 1;
  let before = all[first] as number;
  let here = before;
  let mean = 0;
  for (let node = 0; node < last; node++) {
    const next = all[first + node + 1] as number;
    const blurred = here + part * (before + next - 2 * here);
    all[first + node] = blurred;
    mean += (priors[prior + node] as number) * blurred;
    before = here;
    here = next;
  }
  const blurred = here + part * (before - here);
  all[first + last] = blurred;
  return mean + (priors[prior + last] as number) * blurred;
}

import { NODES, STEP } from './grid.ts';
import { DRIFT } from './numbers.ts';

/** Blurring further than this at once would swing. */
const MOST_AT_ONCE = 0.25;
/** Of a pair at most so much begins anew. */
const MOST_RENEWED = 0.5;

/**
 * What days do to the likelihood that stands in `all` from `first` on. Strength wanders: the grid is
 * blurred as heat spreads (the explicit scheme of the diffusion equation, stable below a half; Crank
 * 1975, The Mathematics of Diffusion, 8.2), its ends shut. And with a small chance it begins anew from
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
  while (left > 1e-9) {
    const part = Math.min(left, MOST_AT_ONCE);
    left -= part;
    blur(all, first, part);
  }
  const anew = Math.min(MOST_RENEWED, DRIFT.renewal * restless * days);
  let mean = 0;
  for (let node = 0; node < NODES; node++) {
    mean += (priors[prior + node] as number) * (all[first + node] as number);
  }
  const added = anew * mean;
  const kept = 1 - anew;
  for (let at = first; at < first + NODES; at++) all[at] = kept * (all[at] as number) + added;
}

function blur(all: Float64Array, first: number, part: number): void {
  const last = first + NODES - 1;
  let before = all[first] as number;
  let here = before;
  for (let at = first; at < last; at++) {
    const next = all[at + 1] as number;
    all[at] = here + part * (before + next - 2 * here);
    before = here;
    here = next;
  }
  all[last] = here + part * (before - here);
}

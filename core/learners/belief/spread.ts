import { NODES, STEP } from './grid.ts';
import { fillPrior } from './prior.ts';
import { type Cavity, cavityInto, type Fit, type ToldPairs } from './usual.ts';

/** Standard deviations of pairs, and shares of the heavy tail, that are compared. */
const DEVIATIONS = [0.12, 0.25, 0.45, 0.7, 1, 1.4, 1.9, 2.6];
const SHARES = [0.02, 0.15];
/** Before a class has told anything a deviation of 1 is likeliest, by a bell curve over its logarithm. */
const USUAL = { deviation: 1, spread: 0.8 };
/** So many pairs are enough. */
const ENOUGH = 300;
/** Pairs share what is usual, so that their evidence counts for less than its sum. */
const TEMPER = 0.7;

/**
 * How much pairs differ beside what child and card explain: each value is weighed by the evidence of
 * the pairs under it. A class whose children differ by card is read by what each child does, one in
 * which they do not by what is usual.
 */
export function fitSpread(fit: Fit, pairs: Float64Array, told: ToldPairs): void {
  if (told.ofChildren.length === 0) return;
  const step = Math.max(1, Math.floor(told.ofChildren.length / ENOUGH));
  const candidates = DEVIATIONS.flatMap((deviation) =>
    SHARES.map((share) => ({
      deviation,
      share,
      evidence: -0.5 * (Math.log(deviation / USUAL.deviation) / USUAL.spread) ** 2,
    })),
  );
  for (let one = 0; one < told.ofChildren.length; one += step) {
    const at = told.ofChildren[one] as number;
    const pair = told.pairs[at] as number;
    cavityInto(cavity, fit, told.readers[at] as number, told.cards[at] as number, pair);
    const mean = cavity.reader + cavity.card;
    const variance = cavity.readerVariance + cavity.cardVariance;
    for (const candidate of candidates) {
      const { deviation, share } = candidate;
      fillPrior(prior, STEP, mean, variance, deviation ** 2, share);
      candidate.evidence += TEMPER * step * Math.log(meanLikelihood(pairs, pair));
    }
  }
  const best = Math.max(...candidates.map(({ evidence }) => evidence));
  let whole = 0;
  let logs = 0;
  let shares = 0;
  for (const { deviation, share, evidence } of candidates) {
    const weight = Math.exp(evidence - best);
    whole += weight;
    logs += weight * Math.log(deviation);
    shares += weight * share;
  }
  fit.pairSpread = Math.exp((2 * logs) / whole);
  fit.tailShare = shares / whole;
}

const cavity: Cavity = { reader: 0, readerVariance: 1, card: 0, cardVariance: 1 };
const prior = new Float64Array(NODES);

function meanLikelihood(pairs: Float64Array, pair: number): number {
  let sum = 1e-300;
  let product = 1e-300;
  for (let node = 0; node < NODES; node++) {
    const weight = prior[node] as number;
    sum += weight;
    product += weight * (pairs[pair + node] as number);
  }
  return product / sum;
}

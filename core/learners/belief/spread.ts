import { NODES, STEP } from './grid.ts';
import { TAIL } from './numbers.ts';
import { addBell, tailSpread } from './prior.ts';
import { type Cavity, cavityInto, type Fit, type ToldPairs } from './usual.ts';

/** Standard deviations of pairs, and shares of the heavy tail, that are compared. */
const DEVIATIONS = [0.12, 0.25, 0.45, 0.7, 1, 1.4, 1.9, 2.6];
const SHARES = [0.05, 0.15];
/** Before a class has told anything a deviation of 1 is likeliest, by a bell curve over its logarithm. */
const USUAL = { deviation: 1, spread: 0.8 };
/** So many pairs are enough. */
const ENOUGH = 300;
/** Pairs share what is usual, so that their evidence counts for less than its sum. */
const TEMPER = 0.7;

/** What may be true of a class, and how much speaks for it. */
interface Candidate {
  readonly deviation: number;
  readonly share: number;
  evidence: number;
}

/**
 * How much pairs differ beside what child and card explain: each value is weighed by the evidence of
 * the pairs under it. A class whose children differ by card is read by what each child does, one in
 * which they do not by what is usual.
 */
export function fitSpread(fit: Fit, pairs: Float64Array, told: ToldPairs): void {
  if (told.ofChildren.length === 0) return;
  const step = Math.max(1, Math.floor(told.ofChildren.length / ENOUGH));
  const candidates: readonly Candidate[] = DEVIATIONS.flatMap((deviation) =>
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
    for (let first = 0; first < candidates.length; first += SHARES.length) {
      const spread = (candidates[first] as Candidate).deviation ** 2;
      bell.fill(0);
      tail.fill(0);
      addBell(bell, STEP, mean, variance + spread, 1);
      addBell(tail, STEP, mean - TAIL.lowered, variance + tailSpread(spread), 1);
      sumUp(pairs, pair);
      for (let of = first; of < first + SHARES.length; of++) {
        const candidate = candidates[of] as Candidate;
        candidate.evidence += TEMPER * step * Math.log(meanLikelihood(candidate.share));
      }
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
const bell = new Float64Array(NODES);
const tail = new Float64Array(NODES);
/** Of the bell curve and the tail: their sums, and those of each times a likelihood. */
const sums = { bell: 0, tail: 0, byBell: 0, byTail: 0 };

function sumUp(pairs: Float64Array, pair: number): void {
  let ofBell = 0;
  let ofTail = 0;
  let byBell = 0;
  let byTail = 0;
  for (let node = 0; node < NODES; node++) {
    const likelihood = pairs[pair + node] as number;
    const near = bell[node] as number;
    const far = tail[node] as number;
    ofBell += near;
    ofTail += far;
    byBell += near * likelihood;
    byTail += far * likelihood;
  }
  sums.bell = ofBell;
  sums.tail = ofTail;
  sums.byBell = byBell;
  sums.byTail = byTail;
}

/** The mean of the likelihood that was summed up, with so much of the heavy tail. */
function meanLikelihood(share: number): number {
  const whole = (1 - share) * sums.bell + share * sums.tail + 1e-300;
  return ((1 - share) * sums.byBell + share * sums.byTail + 1e-300) / whole;
}

/**
 * The fit held against an exact sampler. Given what the readings of each pair say (its likelihood on the
 * grid) and how far children, cards and pairs differ, what is believed of each pair is a sum over all
 * strengths of all children and cards. The model approximates it by expectation propagation (fit.ts);
 * here it is sampled by a random-walk Metropolis algorithm (Metropolis et al. 1953), one child or card
 * at a time, the pair's own strength summed out exactly at each step.
 */
import { GRID, LOWEST, logistic, NODES, STEP } from '../../core/learners/belief/grid.ts';
import { PAIR_WIDTH } from '../../core/learners/belief/pair.ts';
import { fillPrior } from '../../core/learners/belief/prior.ts';
import { cavityInto } from '../../core/learners/belief/usual.ts';
import type { Known } from '../../core/learners/known.ts';
import { makeChances } from './chances.ts';

/** What is believed of one pair by the one way and the other: the mean chance, and the 5% and 95% points. */
export interface BothWays {
  readonly fitted: readonly [p: number, low: number, high: number];
  readonly exact: readonly [p: number, low: number, high: number];
}

/** Sums of a child and a card for which each pair is summed out beforehand. */
const FIRST = -10;
const BETWEEN = 0.1;
const SUMS = 221;
const BURN_IN = 500;

interface Pair {
  readonly reader: number;
  readonly card: number;
  readonly at: number;
  /** By sum: the log of how likely its readings are, and its distribution over the grid. */
  readonly evidence: Float64Array;
  readonly beliefs: readonly Float64Array[];
  readonly sampled: Float64Array;
}

/** Every pair that was read, both ways, from so many samples of the whole class. */
export function bothWays(known: Known, samples: number, seed: number): readonly BothWays[] {
  const { book } = known;
  const fit = known.fit();
  const pairs = book.all.flatMap((reader) =>
    [...book.cardNumber.values()].flatMap((card): readonly Pair[] => {
      const at = reader.pairs.at(card);
      return at < 0 ? [] : [summedOut(known, reader.number, card, at)];
    }),
  );
  const chances = makeChances(seed);
  const children = new Float64Array(book.all.length);
  const cards = new Float64Array(book.cardNumber.size).fill(fit.mean);
  const ofChild = Array.from(children, (_, n) => pairs.filter(({ reader }) => reader === n));
  const ofCard = Array.from(cards, (_, n) => pairs.filter(({ card }) => card === n));
  const place = (sum: number) =>
    Math.max(0, Math.min(SUMS - 1, Math.round((sum - FIRST) / BETWEEN)));
  const sumOf = ({ reader, card }: Pair) => (children[reader] as number) + (cards[card] as number);
  const move = (
    all: Float64Array,
    n: number,
    own: readonly Pair[],
    mean: number,
    spread: number,
  ) => {
    const before = all[n] as number;
    const evidence = () =>
      own.reduce((sum, pair) => sum + (pair.evidence[place(sumOf(pair))] as number), 0) -
      ((all[n] as number) - mean) ** 2 / (2 * spread);
    const was = evidence();
    all[n] = before + chances.normal(0, 0.6);
    if (Math.log(chances.fraction() + 1e-300) > evidence() - was) all[n] = before;
  };
  for (let sample = 0; sample < BURN_IN + samples; sample++) {
    for (const [n, own] of ofChild.entries()) move(children, n, own, 0, fit.childSpread);
    for (const [n, own] of ofCard.entries()) move(cards, n, own, fit.mean, fit.cardSpread);
    if (sample < BURN_IN) continue;
    for (const pair of pairs) {
      const belief = pair.beliefs[place(sumOf(pair))] as Float64Array;
      for (let node = 0; node < NODES; node++) {
        pair.sampled[node] = (pair.sampled[node] as number) + (belief[node] as number) / samples;
      }
    }
  }
  return pairs.map((pair) => ({ fitted: told(fittedOf(known, pair)), exact: told(pair.sampled) }));
}

function summedOut(known: Known, reader: number, card: number, at: number): Pair {
  const evidence = new Float64Array(SUMS);
  const beliefs = Array.from(evidence, (_, n) => {
    const belief = timesLikelihood(known, at, FIRST + n * BETWEEN, 0);
    let sum = 0;
    for (const one of belief) sum += one;
    evidence[n] = Math.log(sum + 1e-300);
    return belief.map((one) => one / (sum + 1e-300));
  });
  return { reader, card, at, evidence, beliefs, sampled: new Float64Array(NODES) };
}

/** The prior around a mean that is so unsure, times what the pair's readings say. */
function timesLikelihood(known: Known, at: number, mean: number, variance: number): Float64Array {
  const fit = known.fit();
  const belief = new Float64Array(NODES);
  fillPrior(belief, STEP, mean, variance, fit.pairSpread, fit.tailShare);
  const likelihoods = known.book.pairs.numbers.subarray(at, at + PAIR_WIDTH);
  return belief.map((prior, node) => prior * (likelihoods[node] as number));
}

function fittedOf(known: Known, { reader, card, at }: Pair): Float64Array {
  const cavity = { reader: 0, readerVariance: 1, card: 0, cardVariance: 1 };
  cavityInto(cavity, known.fit(), reader, card, at);
  const { readerVariance, cardVariance } = cavity;
  const belief = timesLikelihood(
    known,
    at,
    cavity.reader + cavity.card,
    readerVariance + cardVariance,
  );
  const sum = belief.reduce((total, one) => total + one, 0);
  return belief.map((one) => one / sum);
}

/** The mean chance, and the ends of the 90% interval, each node standing for what is nearest to it. */
function told(belief: Float64Array): readonly [number, number, number] {
  const p = belief.reduce((sum, one, node) => sum + one * logistic(GRID[node] as number), 0);
  const end = (share: number) => {
    let below = 0;
    for (let node = 0; node < NODES; node++) {
      const one = belief[node] as number;
      if (below + one >= share) {
        return logistic(LOWEST + (node - 0.5 + (share - below) / one) * STEP);
      }
      below += one;
    }
    return 1;
  };
  return [p, end(0.05), end(0.95)];
}

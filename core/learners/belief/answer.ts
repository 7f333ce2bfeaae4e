/**
 * What is believed of one reader and one card on a day, as a distribution of its strength: the
 * likelihood of what was read, aged, times what is usual in the class; wider by what no reading tells,
 * moved by practice and place, and mixed with "known or not". A forecast is its mean, an interval its
 * 5% and 95% points.
 */
import { ageLikelihood } from './age.ts';
import {
  type Book,
  CONTEXT_WIDTH,
  COULD,
  cardRow,
  DAY,
  HAPPENED,
  OWN_CONTEXTS,
  type Reader,
  SHIFT_VARIANCE,
} from './book.ts';
import { HIGHEST, LOWEST, logistic, logOdds, NODES, STEP } from './grid.ts';
import {
  cautious,
  gridWeight,
  guessOf,
  knownFrom,
  knownOn,
  slipOf,
  standsAt,
} from './known-or-not.ts';
import type { Marking } from './marking.ts';
import { DOUBT, DRIFT, KNOWN_OR_NOT, LOSS } from './numbers.ts';
import { offsetInto } from './offset.ts';
import { isTold, LAST, TOUCHED, toldOf } from './pair.ts';
import { fillPrior } from './prior.ts';
import { lastThere } from './there.ts';
import { type Cavity, cavityInto, type Fit } from './usual.ts';

/** Whose belief about which card is asked for. */
export interface BeliefAsked {
  readonly book: Book;
  readonly fit: Fit;
  readonly marking: Marking;
  /** Null for one who never read. */
  readonly reader: Reader | null;
  /** The card's number; −1 for one that never came up. */
  readonly card: number;
  /** The number of its place in a word. */
  readonly context: number;
  readonly day: number;
}

/** An answer: the chance of a right reading and, if asked for, its 90% interval. */
export interface BeliefAnswer {
  readonly p: number;
  readonly low: number;
  readonly high: number;
  /** How much of the variance of the strength is common to all cards of the reader, and to all readers of the card. */
  readonly ofReader: number;
  readonly ofCard: number;
}

/** The grid between the nodes of likelihoods is so many times as fine. */
const FINE = 4;
const FINE_NODES = (NODES - 1) * FINE + 1;
const FINE_STEP = STEP / FINE;
const TAIL = 0.05;

const cavity: Cavity = { reader: 0, readerVariance: 1, card: 0, cardVariance: 1 };
const likelihood = new Float64Array(NODES);
const prior = new Float64Array(NODES);
const weights = new Float64Array(FINE_NODES);
/** Up to each node, the weights so far. */
const below = new Float64Array(FINE_NODES + 1);
const room = { practice: new Float64Array(1), away: new Float64Array(1) };

/** Answers. Without `isWide` the interval is not worked out and both its ends are p. */
export function answer(asked: BeliefAsked, isWide: boolean): BeliefAnswer {
  const { book, fit, reader, card, day } = asked;
  const pair = reader === null ? -1 : reader.pairs.at(card);
  cavityInto(cavity, fit, reader?.number ?? -1, card, pair);
  const usual = cavity.reader + cavity.card;
  const around = cavity.readerVariance + cavity.cardVariance;
  takeLikelihood(book, fit, pair, day, usual, around);
  spreadOut(usual, around, fit);
  const mean = momentOf(weights, 1, 0);
  const variance = Math.max(0.005, momentOf(weights, 2, mean));
  const doubt = doubtOf(asked, pair);
  const all = variance + doubt.alone + doubt.ofReader + doubt.ofCard;
  const stretch = Math.sqrt(all / variance);
  const { offset } = doubt;
  const wide = chanceAt(mean, stretch, offset);
  // An interval must reach as far as the readings do; what is expected may be more careful.
  const told = toldOf(book.pairs.numbers, pair);
  const grid =
    asked.marking === 'all'
      ? logistic(cautious(book.common.knownOrNot, logOdds(wide), told))
      : wide;

  const mixture = mixtureOf(asked, pair, grid);
  const p = mixture.weight * grid + (1 - mixture.weight) * mixture.chance;
  // How much of what is unsure of the reader or the card is left once the pair's own readings are known.
  const left = (variance / (around + fit.pairSpread)) ** 2;
  const shares = {
    ofReader: Math.min(1, (cavity.readerVariance * left + doubt.ofReader) / all),
    ofCard: Math.min(1, (cavity.cardVariance * left + doubt.ofCard) / all),
  };
  if (!isWide) return { p, low: p, high: p, ...shares };
  const low = logistic(quantile(TAIL, mean, stretch, offset, mixture));
  const high = logistic(quantile(1 - TAIL, mean, stretch, offset, mixture));
  return { p: Math.min(high, Math.max(low, p)), low, high, ...shares };
}

/** The likelihood of a pair as it is on a day; all alike where nothing was read. */
function takeLikelihood(
  book: Book,
  fit: Fit,
  pair: number,
  day: number,
  usual: number,
  around: number,
): void {
  const pairs = book.pairs.numbers;
  if (pair < 0 || !isTold(pairs, pair)) {
    likelihood.fill(1);
    return;
  }
  for (let node = 0; node < NODES; node++) likelihood[node] = pairs[pair + node] as number;
  const days = day - (pairs[pair + TOUCHED] as number);
  if (days <= 0) return;
  fillPrior(prior, STEP, usual, around, fit.pairSpread, fit.tailShare);
  let sum = 0;
  for (let node = 0; node < NODES; node++) sum += prior[node] as number;
  for (let node = 0; node < NODES; node++) prior[node] = (prior[node] as number) / sum;
  ageLikelihood(likelihood, 0, days, book.common.restless, prior, 0);
}

/** Prior times likelihood on the fine grid, adding up to 1. */
function spreadOut(usual: number, around: number, fit: Fit): void {
  fillPrior(weights, FINE_STEP, usual, around, fit.pairSpread, fit.tailShare);
  let sum = 0;
  for (let node = 0; node < FINE_NODES; node++) {
    const at = node >> 2;
    const part = (node & 3) / FINE;
    const here = likelihood[at] as number;
    const between = part === 0 ? here : here * (1 - part) + (likelihood[at + 1] as number) * part;
    const weight = (weights[node] as number) * between;
    weights[node] = weight;
    sum += weight;
  }
  let so = 0;
  for (let node = 0; node < FINE_NODES; node++) {
    const weight = (weights[node] as number) / sum;
    weights[node] = weight;
    below[node] = so;
    so += weight;
  }
  below[FINE_NODES] = so;
}

/** The mean of the strength, or its variance around one. */
function momentOf(shares: Float64Array, power: 1 | 2, around: number): number {
  let sum = 0;
  for (let node = 0; node < FINE_NODES; node++) {
    const off = LOWEST + node * FINE_STEP - around;
    sum += (shares[node] as number) * (power === 1 ? off : off * off);
  }
  return sum;
}

function chanceAt(mean: number, stretch: number, offset: number): number {
  let sum = 0;
  for (let node = 0; node < FINE_NODES; node++) {
    const weight = weights[node] as number;
    if (weight < 1e-9) continue;
    sum += weight * logistic(mean + (LOWEST + node * FINE_STEP - mean) * stretch + offset);
  }
  return sum;
}

/** What is added to the strength on the day, and how unsure that is: of the pair alone, its reader, its card. */
function doubtOf({ book, fit, marking, reader, card, context, day }: BeliefAsked, pair: number) {
  const { common } = book;
  const readers = book.readers.numbers;
  const cards = book.cards.numbers;
  const told = pair >= 0 && isTold(book.pairs.numbers, pair);
  const doubt = {
    offset: 0,
    alone: (told ? 0 : DOUBT.neverRead) + DOUBT.least * Math.min(1, fit.pairSpread / 0.25),
    ofReader: 0,
    ofCard: 0,
  };
  if (marking === 'mistakes-beside-class') doubt.alone += DOUBT.besideClass;
  if (marking === 'only-mistakes') doubt.alone += DOUBT.onlyMistakes;
  if (reader !== null) {
    const since = sinceDay(day, readers[reader.row + DAY] as number);
    doubt.offset += common.trend * since + offsetInto(book, room, 0, reader, card, pair, day);
    doubt.ofReader += (readers[reader.row + SHIFT_VARIANCE] as number) + DRIFT.child * since;
    doubt.ofReader += (LOSS.spread * common.loss * (room.away[0] as number)) ** 2;
  }
  if (card >= 0) {
    const row = cardRow(card);
    doubt.alone += DOUBT.away * awayDays(book, reader, card, pair, day);
    doubt.ofCard += cards[row + SHIFT_VARIANCE] as number;
    doubt.ofCard += DRIFT.card * sinceDay(day, cards[row + DAY] as number);
  }
  if (common.contextMet[context] === 1) {
    doubt.offset += common.contexts[2 * context] as number;
    doubt.ofReader += common.contexts[2 * context + 1] as number;
    if (reader !== null) {
      const own = reader.row + OWN_CONTEXTS + CONTEXT_WIDTH * context;
      doubt.offset += readers[own] as number;
      doubt.ofReader += readers[own + 1] as number;
    }
  }
  return doubt;
}

function sinceDay(day: number, then: number): number {
  return then < day ? day - then : 0;
}

/** Days without practice that make an answer less sure. */
function awayDays(
  book: Book,
  reader: Reader | null,
  card: number,
  pair: number,
  day: number,
): number {
  let last = pair < 0 ? Number.NEGATIVE_INFINITY : (book.pairs.numbers[pair + LAST] as number);
  const row = reader?.home.rows.at(card) ?? -1;
  if (row >= 0) last = Math.max(last, lastThere(book, pair, row));
  return Math.max(0, Math.min(DOUBT.awayMost, day - last) - DOUBT.awayAfter);
}

/** The second belief beside the grid: `weight` is the grid's. */
interface Mixture {
  readonly weight: number;
  /** The chance of a right reading by it. */
  readonly chance: number;
  /** How likely it is known, and where those who know and who do not stand. */
  readonly known: number;
  readonly high: number;
  readonly low: number;
}

const NONE: Mixture = { weight: 1, chance: 0, known: 0, high: 0, low: 0 };

function mixtureOf(
  { book, marking, reader, card, day }: BeliefAsked,
  pair: number,
  p: number,
): Mixture {
  if (marking !== 'all') return NONE;
  const all = book.common.knownOrNot;
  const row = reader === null ? -1 : reader.row;
  const readers = book.readers.numbers;
  const cards = book.cards.numbers;
  const ofCard = card < 0 ? -1 : cardRow(card);
  const slips =
    row < 0
      ? slipOf(all, 0, 0)
      : slipOf(all, readers[row + HAPPENED] as number, readers[row + COULD] as number);
  const guesses =
    ofCard < 0
      ? guessOf(all, 0, 0)
      : guessOf(all, cards[ofCard + HAPPENED] as number, cards[ofCard + COULD] as number);
  const otherwise = knownFrom(p, slips, guesses);
  const known = pair < 0 ? otherwise : knownOn(all, book.pairs.numbers, pair, day, otherwise);
  const stands = standsAt(slips, guesses);
  return {
    weight: gridWeight(all, book.pairs.numbers, pair),
    chance: known * (1 - slips) + (1 - known) * guesses,
    known,
    high: stands.known,
    low: stands.not,
  };
}

/** Steps of bisection from −9 to 12: to a ten thousandth. */
const STEPS = 18;
/** The normal distribution function is near the logistic one of 1.7 times as much (Camilli 1994). */
const AS_NORMAL = 1.7 / KNOWN_OR_NOT.sharpness;

/** The log-odds that the strength lies below with a chance of `share`. */
function quantile(
  share: number,
  mean: number,
  stretch: number,
  offset: number,
  { weight, known, high, low }: Mixture,
): number {
  let from = -9;
  let to = 12;
  for (let step = 0; step < STEPS; step++) {
    const x = (from + to) / 2;
    let under = weight * shareBelow(mean + (x - offset - mean) / stretch);
    if (weight < 1) {
      const bumps =
        known * logistic(AS_NORMAL * (x - high)) + (1 - known) * logistic(AS_NORMAL * (x - low));
      under += (1 - weight) * bumps;
    }
    if (under < share) from = x;
    else to = x;
  }
  return (from + to) / 2;
}

/** The share of the grid below a strength, each node standing for what is nearest to it. */
function shareBelow(strength: number): number {
  if (strength <= LOWEST - FINE_STEP / 2) return 0;
  if (strength >= HIGHEST + FINE_STEP / 2) return 1;
  const at = (strength - LOWEST) / FINE_STEP + 0.5;
  const node = Math.min(FINE_NODES - 1, Math.floor(at));
  return (below[node] as number) + (at - node) * (weights[node] as number);
}

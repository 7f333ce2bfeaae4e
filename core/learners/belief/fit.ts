/**
 * What is usual in a class: children and cards as crossed effects, fitted when figures are asked for.
 *
 * **Problem.** The strength of a child with a card is θ (the child) + β (the card) + u (its own). Each
 * pair's likelihood is known on the grid; how strong are children and cards, how much do they differ,
 * and how much do pairs differ beside that?
 *
 * **Method.** Expectation propagation (Minka 2001): each pair sends θ and β a normal message. Its
 * cavity, what all other pairs say, is the prior of its sum; the tilted mean and variance come from the
 * first and second derivative of the log of its evidence by that sum (Gelman et al. 2014, Expectation
 * propagation as a way of life, 3.4), not from the moments of the pair itself: readings that are all
 * right have none to give. Messages are damped. Spreads by empirical Bayes between the sweeps, with a
 * few imagined children and cards; those of pairs by marginal likelihood (spread.ts).
 *
 * **Cost.** Five sweeps over the pairs, each a loop over twenty numbers.
 */
import type { Book, Reader } from './book.ts';
import { GRID, NODES, STEP } from './grid.ts';
import type { Marking } from './marking.ts';
import { IMAGINED, SPREAD, START, TAIL } from './numbers.ts';
import { isTold, PAIR_WIDTH } from './pair.ts';
import { addBell, tailSpread } from './prior.ts';
import { countShares } from './shares.ts';
import { fitSpread } from './spread.ts';
import { type Cavity, cavityInto, type Fit, MESSAGE, type ToldPairs } from './usual.ts';

const ROUNDS = 3;
const SWEEPS = 2;
const DAMPING = 0.8;
/** A message may leave a variance so much of what it was, at least and at most. */
const KEPT = { least: 0.05, most: 0.999 };

/** Fits what is usual to all that was read by a day. */
export function fitClass(book: Book, marking: Marking, day: number): Fit {
  const told = toldPairs(book, marking, day);
  const readers = book.all.length;
  const cards = book.cardNumber.size;
  const fit: Fit = {
    readerPrecision: new Float64Array(readers),
    readerWeighted: new Float64Array(readers),
    cardPrecision: new Float64Array(cards),
    cardWeighted: new Float64Array(cards),
    messages: new Float64Array((book.pairs.end / PAIR_WIDTH) * MESSAGE),
    mean: START.mean,
    childSpread: SPREAD.child,
    cardSpread: SPREAD.card,
    pairSpread: SPREAD.pair,
    tailShare: TAIL.share,
  };
  if (told.pairs.length === 0) return fit;
  for (let round = 0; round < ROUNDS; round++) {
    for (let sweep = 0; sweep < SWEEPS; sweep++) {
      for (let at = 0; at < told.pairs.length; at++) {
        sendMessage(fit, book.pairs.numbers, told, at);
      }
      fitSpreads(fit);
    }
    fitSpread(fit, book.pairs.numbers, told);
  }
  return fit;
}

const cavity: Cavity = { reader: 0, readerVariance: 1, card: 0, cardVariance: 1 };
const bell = new Float64Array(NODES);
const tail = new Float64Array(NODES);

/** One pair says again what its readings tell of its reader and of its card. */
function sendMessage(fit: Fit, pairs: Float64Array, told: ToldPairs, at: number): void {
  const pair = told.pairs[at] as number;
  const reader = told.readers[at] as number;
  const card = told.cards[at] as number;
  cavityInto(cavity, fit, reader, card, pair);
  const { readerVariance, cardVariance } = cavity;
  const mean = cavity.reader + cavity.card;
  const near = readerVariance + cardVariance + fit.pairSpread;
  const far = readerVariance + cardVariance + tailSpread(fit.pairSpread);
  bell.fill(0);
  tail.fill(0);
  addBell(bell, STEP, mean, near, 1 - fit.tailShare);
  addBell(tail, STEP, mean - TAIL.lowered, far, fit.tailShare);
  let evidence = 1e-300;
  let first = 0;
  let second = 0;
  for (let node = 0; node < NODES; node++) {
    const likelihood = pairs[pair + node] as number;
    const byBell = (bell[node] as number) * likelihood;
    const byTail = (tail[node] as number) * likelihood;
    const off = (GRID[node] as number) - mean;
    const one = off / near;
    const other = (off + TAIL.lowered) / far;
    evidence += byBell + byTail;
    first += byBell * one + byTail * other;
    second += byBell * (one * one - 1 / near) + byTail * (other * other - 1 / far);
  }
  const slope = first / evidence;
  const bend = second / evidence - slope * slope;
  const message = (pair / PAIR_WIDTH) * MESSAGE;
  passOn(
    fit.messages,
    message,
    fit.readerPrecision,
    fit.readerWeighted,
    reader,
    cavity.reader,
    readerVariance,
    slope,
    bend,
  );
  passOn(
    fit.messages,
    message + 2,
    fit.cardPrecision,
    fit.cardWeighted,
    card,
    cavity.card,
    cardVariance,
    slope,
    bend,
  );
}

/** Changes one message, and the sums it is part of, to what a cavity becomes by the evidence. */
function passOn(
  messages: Float64Array,
  message: number,
  precisions: Float64Array,
  weighted: Float64Array,
  of: number,
  mean: number,
  variance: number,
  slope: number,
  bend: number,
): void {
  const wanted = variance + variance * variance * bend;
  const after = Math.max(KEPT.least * variance, Math.min(KEPT.most * variance, wanted));
  const precision = 1 / after - 1 / variance;
  const product = (mean + variance * slope) / after - mean / variance;
  const byPrecision = DAMPING * (precision - (messages[message] as number));
  const byProduct = DAMPING * (product - (messages[message + 1] as number));
  messages[message] = (messages[message] as number) + byPrecision;
  messages[message + 1] = (messages[message + 1] as number) + byProduct;
  precisions[of] = (precisions[of] as number) + byPrecision;
  weighted[of] = (weighted[of] as number) + byProduct;
}

/** How far children and cards differ, and where cards stand on average, by what is believed of each now. */
function fitSpreads(fit: Fit): void {
  const { readerPrecision, readerWeighted, cardPrecision, cardWeighted } = fit;
  let squares = IMAGINED.children * SPREAD.child;
  let count: number = IMAGINED.children;
  for (let reader = 0; reader < readerPrecision.length; reader++) {
    if (readerPrecision[reader] === 0) continue;
    const variance = 1 / ((readerPrecision[reader] as number) + 1 / fit.childSpread);
    squares += ((readerWeighted[reader] as number) * variance) ** 2 + variance;
    count += 1;
  }
  fit.childSpread = squares / count;

  let product = START.mean / START.variance;
  let precision = 1 / START.variance;
  for (let card = 0; card < cardPrecision.length; card++) {
    if (cardPrecision[card] === 0) continue;
    const variance = 1 / (cardPrecision[card] as number);
    const weight = 1 / (variance + fit.cardSpread);
    product += (cardWeighted[card] as number) * variance * weight;
    precision += weight;
  }
  fit.mean = product / precision;

  squares = IMAGINED.cards * SPREAD.card;
  count = IMAGINED.cards;
  for (let card = 0; card < cardPrecision.length; card++) {
    if (cardPrecision[card] === 0) continue;
    const variance = 1 / ((cardPrecision[card] as number) + 1 / fit.cardSpread);
    const mean = ((cardWeighted[card] as number) + fit.mean / fit.cardSpread) * variance;
    squares += (mean - fit.mean) ** 2 + variance;
    count += 1;
  }
  fit.cardSpread = squares / count;
}

function toldPairs(book: Book, marking: Marking, day: number): ToldPairs {
  const pairs: number[] = [];
  const readers: number[] = [];
  const cards: number[] = [];
  const ofChildren: number[] = [];
  const children = new Set(book.children.values());
  const count = book.cardNumber.size;
  for (const [at, reader] of book.all.entries()) {
    const isChild = children.has(reader);
    for (let card = 0; card < count; card++) {
      if (isChild && marking === 'mistakes-beside-class') shareOut(book, reader, card, day);
      const pair = reader.pairs.at(card);
      if (pair < 0 || !isTold(book.pairs.numbers, pair)) continue;
      if (isChild) ofChildren.push(pairs.length);
      pairs.push(pair);
      readers.push(at);
      cards.push(card);
    }
  }
  return { pairs, readers, cards, ofChildren };
}

/** Gives a child its share of what went right together, of cards too that it was never named for. */
function shareOut(book: Book, reader: Reader, card: number, day: number): void {
  if (reader.home.rows.at(card) < 0) return;
  countShares(book, reader, book.pairOf(reader, card, day), card, day);
}

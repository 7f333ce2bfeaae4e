import {
  type Book,
  CONTEXT_WIDTH,
  MEAN,
  MOVED,
  OWN_CONTEXTS,
  type Reader,
  SHIFT,
  SHIFT_VARIANCE,
  VARIANCE,
} from './book.ts';
import { AVERAGES, CHANCE, PRODUCT, SQUARE, STRENGTH } from './forecast.ts';
import type { LaidReading } from './lay.ts';
import { CHOIR, TREND } from './numbers.ts';
import { CERTAINTY, MEAN_CERTAINTY, MEAN_PULL, PULL } from './pulls.ts';
import { countSurprise } from './restless.ts';
import { contextsOf, lowestOf } from './spots.ts';

/**
 * How one card of a reading moves what is common to many: one Newton step of the log-likelihood of its
 * forecast p in each (Fahrmeir 1992). By the outcome p moves by f = 1/p, or −R/(1 − R p) where the word
 * went wrong and all other cards go well with chance R (`laid.others`; 1 of a card that went right);
 * its certainty is the expected square of that, R/(p (1 − R p)), and f follows from it without dividing
 * again. What adds to strength moves p by D = E[σ(1 − σ)], what the prior is centered on by the
 * covariance C of strength and chance. What a choir reads counts less, at log-odds stretched.
 */
export function moveCommon(
  book: Book,
  laid: LaidReading,
  at: number,
  reader: Reader,
  isChild: boolean,
  right: boolean,
  day: number,
): void {
  const { averages, pulls } = laid;
  const row = at * AVERAGES;
  const p = averages[row + CHANCE] as number;
  const others = laid.others[at] as number;
  const left = 1 - others * p;
  const certainty = ((isChild ? 1 : CHOIR.weight) * others) / (p * left);
  const f = right ? certainty * left : -certainty * p;
  const byChance = Math.max(0, p - (averages[row + SQUARE] as number));
  const byStrength = isChild ? byChance : byChance * CHOIR.slope;
  const byMean = (averages[row + PRODUCT] as number) - (averages[row + STRENGTH] as number) * p;
  pulls[PULL] = f * byStrength;
  pulls[CERTAINTY] = byStrength * byStrength * certainty;
  pulls[MEAN_PULL] = f * byMean;
  pulls[MEAN_CERTAINTY] = byMean * byMean * certainty;
  if (isChild) {
    countSurprise(book.common.surprises, book.pairs.numbers, laid.pairs[at] as number, day, pulls);
  }
  moveMeans(book, reader.row, laid.cards[at] as number, pulls);
  moveShifts(book, laid, at, reader);
}

/** The means that priors stand around: the reader's and the card's. */
function moveMeans(book: Book, reader: number, card: number, pulls: Float64Array): void {
  const readers = book.readers.numbers;
  const cards = book.cards.numbers;
  const own = readers[reader + VARIANCE] as number;
  const ofCard = cards[card + VARIANCE] as number;
  const sure = pulls[MEAN_CERTAINTY] as number;
  const part = 1 / (1 + (own + ofCard) * sure);
  const step = (pulls[MEAN_PULL] as number) * part;
  const shrink = sure * part;
  readers[reader + MEAN] = (readers[reader + MEAN] as number) + own * step;
  readers[reader + VARIANCE] = own - own * own * shrink;
  cards[card + MEAN] = (cards[card + MEAN] as number) + ofCard * step;
  cards[card + VARIANCE] = ofCard - ofCard * ofCard * shrink;
}

/** All that adds to strength: gain and loss, the reader's and the card's shift, place and habits. */
function moveShifts(book: Book, laid: LaidReading, at: number, reader: Reader): void {
  const { common } = book;
  const { contexts } = common;
  const readers = book.readers.numbers;
  const cards = book.cards.numbers;
  const card = laid.cards[at] as number;
  const practice = laid.practice[at] as number;
  const away = laid.away[at] as number;
  const own = readers[reader.row + SHIFT_VARIANCE] as number;
  const ofCard = cards[card + SHIFT_VARIANCE] as number;
  const here = contextsOf(laid.spots[at] as number);
  let variance =
    own + ofCard + practice * practice * common.gainVariance + away * away * common.lossVariance;
  for (let left = here; left !== 0; left &= left - 1) {
    const context = lowestOf(left);
    variance +=
      (contexts[2 * context + 1] as number) +
      (readers[reader.row + OWN_CONTEXTS + CONTEXT_WIDTH * context + 1] as number);
  }
  const sure = laid.pulls[CERTAINTY] as number;
  const part = 1 / (1 + variance * sure);
  const step = (laid.pulls[PULL] as number) * part;
  const shrink = sure * part;
  const gain = common.gainVariance * practice;
  common.gain = Math.max(0, common.gain + gain * step);
  common.gainVariance -= gain * gain * shrink;
  const loss = common.lossVariance * away;
  common.loss = Math.max(0, common.loss + loss * step);
  common.lossVariance -= loss * loss * shrink;
  if (own > 0) {
    const moved = readers[reader.row + MOVED] as number;
    readers[reader.row + SHIFT] = (readers[reader.row + SHIFT] as number) + own * step;
    readers[reader.row + SHIFT_VARIANCE] = own - own * own * shrink;
    readers[reader.row + MOVED] = (Number.isNaN(moved) ? 0 : moved) + own * step;
  }
  if (ofCard > 0) {
    cards[card + SHIFT] = (cards[card + SHIFT] as number) + ofCard * step;
    cards[card + SHIFT_VARIANCE] = ofCard - ofCard * ofCard * shrink;
  }
  for (let left = here; left !== 0; left &= left - 1) {
    const context = lowestOf(left);
    common.contextMet[context] = 1;
    moveOne(contexts, 2 * context, step, shrink);
    const mine = reader.row + OWN_CONTEXTS + CONTEXT_WIDTH * context;
    moveOne(readers, mine, step, shrink);
    readers[mine + 2] = (readers[mine + 2] as number) + 1;
  }
}

/** Moves a mean and the variance behind it. */
function moveOne(rows: Float64Array, at: number, step: number, shrink: number): void {
  const variance = rows[at + 1] as number;
  rows[at] = (rows[at] as number) + variance * step;
  rows[at + 1] = variance - variance * variance * shrink;
}

/** A day is over: what readers were moved beyond what was expected is how the class grows. */
export function endDay(book: Book): void {
  const { common, all } = book;
  const readers = book.readers.numbers;
  let sum = 0;
  let count = 0;
  for (const { row } of all) {
    const moved = readers[row + MOVED] as number;
    if (Number.isNaN(moved)) continue;
    sum += moved;
    count += 1;
    readers[row + MOVED] = Number.NaN;
  }
  if (count > 0) common.trend += TREND.rate * (sum / count) * Math.min(1, count / TREND.full);
  common.trend = Math.max(TREND.least, Math.min(TREND.most, common.trend));
}

import { ageLikelihood } from './age.ts';
import {
  type Book,
  CARD_DRIFT,
  cardRow,
  driftTo,
  MEAN,
  READER_DRIFT,
  type Reader,
} from './book.ts';
import { AVERAGES, forecastInto } from './forecast.ts';
import { tablePlace } from './grid.ts';
import type { Marking } from './marking.ts';
import { contextsAt, offsetInto, type Regressors } from './offset.ts';
import { keepInReach } from './outcome.ts';
import { isTold, TOUCHED } from './pair.ts';
import { PRIORS, priorPlace } from './prior.ts';
import { makePulls } from './pulls.ts';
import { countShares } from './shares.ts';
import { cardOf, MOST_CARDS } from './spots.ts';

/**
 * The cards of one reading, laid out for one reader: room that is used again for the next. Fractions go
 * from function to function in these arrays: as arguments each would be an object of its own.
 */
export interface LaidReading extends Regressors {
  /** By card of the word: the card where it stands, and where its rows start. */
  readonly spots: Int32Array;
  readonly cards: Int32Array;
  readonly pairs: Int32Array;
  /** Days that time has not been counted in for. */
  readonly days: Int32Array;
  /** Where its prior starts in PRIORS, and its lowest node in LOGISTIC. */
  readonly priors: Int32Array;
  readonly tables: Int32Array;
  /** The averages of its forecast, AVERAGES each. */
  readonly averages: Float64Array;
  /** Where the word went wrong: the chance that all other cards go well; 1 where it is known how the card went. */
  readonly others: Float64Array;
  /** What the outcome of the card at hand says of what is common (pulls.ts). */
  readonly pulls: Float64Array;
}

/** Room for one reading. */
export function makeLaid(): LaidReading {
  return {
    spots: new Int32Array(MOST_CARDS),
    cards: new Int32Array(MOST_CARDS),
    pairs: new Int32Array(MOST_CARDS),
    days: new Int32Array(MOST_CARDS),
    priors: new Int32Array(MOST_CARDS),
    tables: new Int32Array(MOST_CARDS),
    practice: new Float64Array(MOST_CARDS),
    away: new Float64Array(MOST_CARDS),
    averages: new Float64Array(MOST_CARDS * AVERAGES),
    others: new Float64Array(MOST_CARDS),
    pulls: makePulls(),
  };
}

/** Lays out the first `count` spots for a reader on a day: time is counted in, and each is forecast. */
export function layReading(
  book: Book,
  laid: LaidReading,
  count: number,
  reader: Reader,
  day: number,
  slope: number,
  marking: Marking,
): void {
  driftTo(book.readers.numbers, reader.row, day, READER_DRIFT, book.common.trend);
  // All pairs are looked up before the first is worked on: memory is slow, and finds several at once.
  for (let at = 0; at < count; at++) {
    const pair = book.pairOf(reader, cardOf(laid.spots[at] as number), day);
    const days = day - (book.pairs.numbers[pair + TOUCHED] as number);
    laid.pairs[at] = pair;
    laid.days[at] = days;
    if (days > 0) book.pairs.numbers[pair + TOUCHED] = day;
  }
  for (let at = 0; at < count; at++) layCard(book, laid, at, reader, day, slope, marking);
}

function layCard(
  book: Book,
  laid: LaidReading,
  at: number,
  reader: Reader,
  day: number,
  slope: number,
  marking: Marking,
): void {
  const spot = laid.spots[at] as number;
  const number = cardOf(spot);
  const card = cardRow(number);
  driftTo(book.cards.numbers, card, day, CARD_DRIFT, 0);
  const pair = laid.pairs[at] as number;
  const pairs = book.pairs.numbers;
  const center =
    (book.readers.numbers[reader.row + MEAN] as number) +
    (book.cards.numbers[card + MEAN] as number);
  const prior = priorPlace(center);
  const days = laid.days[at] as number;
  if (days > 0 && isTold(pairs, pair)) {
    ageLikelihood(pairs, pair, days, book.common.restless, PRIORS, prior);
  }
  if (marking === 'mistakes-beside-class') countShares(book, reader, pair, number, day);
  laid.cards[at] = card;
  laid.priors[at] = prior;
  const offset =
    offsetInto(book, laid, at, reader, number, pair, day) + contextsAt(book, reader, spot);
  const table = tablePlace(offset, slope);
  laid.tables[at] = table;
  const row = at * AVERAGES;
  const mean = forecastInto(laid.averages, row, PRIORS, prior, pairs, pair, table, slope);
  keepInReach(pairs, pair, mean);
}

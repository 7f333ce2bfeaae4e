import {
  type Book,
  CONTEXT_WIDTH,
  GROUP_TIMES,
  OWN_CONTEXTS,
  type Reader,
  SHIFT,
  SHIFT_VARIANCE,
} from './book.ts';
import { logistic } from './grid.ts';
import { TIMES } from './pair.ts';
import { practiced } from './practice.ts';
import type { Fit } from './usual.ts';

/** 5 of 100 lie beyond this many standard deviations of a normal distribution, on either side. */
const DEVIATIONS = 1.6449;

/**
 * A place or habit, told as a card of middling strength standing there: the mean of what these readers
 * come to in it, and a 90% interval; `n` readings told of it.
 */
export function middling(
  book: Book,
  fit: Fit,
  readers: readonly (Reader | null)[],
  context: number,
) {
  let mean = 0;
  let variance = 0;
  let n = 0;
  for (const reader of readers) {
    const one = strengthIn(book, fit, reader, context);
    mean += one.mean / readers.length;
    variance += one.variance / readers.length;
    n += reader === null ? 0 : (book.readers.numbers[ownAt(reader, context) + 2] as number);
  }
  const reach = DEVIATIONS * Math.sqrt(variance);
  const low = logistic(mean - reach);
  const high = logistic(mean + reach);
  // The logistic integral by MacKay 1992.
  const p = logistic(mean / Math.sqrt(1 + (Math.PI / 8) * variance));
  return { p: Math.min(high, Math.max(low, p)), low, high, n };
}

/** The strength of a usual card with a reader, in a place or under a habit. */
function strengthIn(book: Book, fit: Fit, reader: Reader | null, context: number) {
  const { common, readers } = book;
  let mean = fit.mean + (common.contexts[2 * context] as number);
  let variance = common.contexts[2 * context + 1] as number;
  if (reader === null) return { mean, variance: variance + fit.childSpread };
  const precision = (fit.readerPrecision[reader.number] ?? 0) + 1 / fit.childSpread;
  mean += (fit.readerWeighted[reader.number] ?? 0) / precision;
  mean +=
    (readers.numbers[reader.row + SHIFT] as number) + common.gain * usualPractice(book, reader);
  mean += readers.numbers[ownAt(reader, context)] as number;
  variance += 1 / precision + (readers.numbers[reader.row + SHIFT_VARIANCE] as number);
  variance += readers.numbers[ownAt(reader, context) + 1] as number;
  return { mean, variance };
}

/** The logarithm of practice with a card that was met, on average. */
function usualPractice({ cardNumber, pairs, together }: Book, reader: Reader): number {
  let sum = 0;
  let count = 0;
  for (let card = 0; card < cardNumber.size; card++) {
    const pair = reader.pairs.at(card);
    if (pair < 0) continue;
    const row = reader.home.rows.at(card);
    const times = row < 0 ? 0 : (together.numbers[row + GROUP_TIMES] as number);
    sum += practiced(pairs.numbers[pair + TIMES] as number, times);
    count += 1;
  }
  return count === 0 ? 0 : sum / count;
}

function ownAt(reader: Reader, context: number): number {
  return reader.row + OWN_CONTEXTS + CONTEXT_WIDTH * context;
}

import { type Book, CONTEXT_WIDTH, cardRow, OWN_CONTEXTS, type Reader, SHIFT } from './book.ts';
import { DAYS, LAST, TIMES } from './pair.ts';
import { away, practiced } from './practice.ts';
import { contextsOf, lowestOf } from './spots.ts';
import { daysThere, lastThere, timesThere } from './there.ts';

/** What gain and loss are multiplied by, for the cards of a reading. */
export interface Regressors {
  readonly practice: Float64Array;
  readonly away: Float64Array;
}

/** What practice, absence and drift add to a pair's strength on a day; −1 for a pair or card that is not there. */
export function offsetInto(
  book: Book,
  into: Regressors,
  at: number,
  reader: Reader,
  number: number,
  pair: number,
  day: number,
): number {
  const { common } = book;
  const pairs = book.pairs.numbers;
  const row = reader.home.rows.at(number);
  let times = 0;
  let days = 0;
  let last = Number.NEGATIVE_INFINITY;
  let timesTogether = 0;
  let daysTogether = 0;
  if (pair >= 0) {
    times = pairs[pair + TIMES] as number;
    days = pairs[pair + DAYS] as number;
    last = pairs[pair + LAST] as number;
  }
  if (row >= 0) {
    timesTogether = timesThere(book, pair, row);
    daysTogether = daysThere(book, pair, row);
    last = Math.max(last, lastThere(book, pair, row));
  }
  const grown = practiced(times, timesTogether);
  const lost = away(day - last, days, daysTogether);
  into.practice[at] = grown;
  into.away[at] = lost;
  const shift = number < 0 ? 0 : (book.cards.numbers[cardRow(number) + SHIFT] as number);
  return (
    common.gain * grown +
    common.loss * lost +
    (book.readers.numbers[reader.row + SHIFT] as number) +
    shift
  );
}

/** What the place and habits of a spot add, in the class and in the reader. */
export function contextsAt(book: Book, reader: Reader, spot: number): number {
  const { contexts } = book.common;
  const readers = book.readers.numbers;
  let sum = 0;
  for (let left = contextsOf(spot); left !== 0; left &= left - 1) {
    const context = lowestOf(left);
    sum +=
      (contexts[2 * context] as number) +
      (readers[reader.row + OWN_CONTEXTS + CONTEXT_WIDTH * context] as number);
  }
  return sum;
}

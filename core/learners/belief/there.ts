import { type Book, GROUP_DAYS, GROUP_LAST, GROUP_TIMES } from './book.ts';
import { AWAY_DAYS, AWAY_LAST, AWAY_TIMES, THERE_LAST } from './pair.ts';

/**
 * The last day on which a child's group had a card while the child was there. `pair` is −1 for a child
 * that nothing is known of with the card, `row` the group's row of it.
 */
export function lastThere(book: Book, pair: number, row: number): number {
  const last = book.together.numbers[row + GROUP_LAST] as number;
  if (pair < 0) return last;
  const pairs = book.pairs.numbers;
  return last === pairs[pair + AWAY_LAST] ? (pairs[pair + THERE_LAST] as number) : last;
}

/** Notes that a group is about to practice a card on a day while the child of this pair is away. */
export function noteAway(book: Book, pair: number, row: number, day: number): void {
  const pairs = book.pairs.numbers;
  const before = book.together.numbers[row + GROUP_LAST] as number;
  // A word may have a card twice.
  if (before < day && (pairs[pair + AWAY_LAST] as number) < day) {
    if (pairs[pair + AWAY_LAST] !== before) pairs[pair + THERE_LAST] = before;
    pairs[pair + AWAY_DAYS] = (pairs[pair + AWAY_DAYS] as number) + 1;
    pairs[pair + AWAY_LAST] = day;
  }
  pairs[pair + AWAY_TIMES] = (pairs[pair + AWAY_TIMES] as number) + 1;
}

/** How often a group practiced a card while the child of this pair was there, and on how many days. */
export function timesThere(book: Book, pair: number, row: number): number {
  const times = book.together.numbers[row + GROUP_TIMES] as number;
  // One that was away from another group before may have missed more than this one did.
  return pair < 0 ? times : Math.max(0, times - (book.pairs.numbers[pair + AWAY_TIMES] as number));
}

/** The days of `timesThere`. */
export function daysThere(book: Book, pair: number, row: number): number {
  const days = book.together.numbers[row + GROUP_DAYS] as number;
  return pair < 0 ? days : Math.max(0, days - (book.pairs.numbers[pair + AWAY_DAYS] as number));
}

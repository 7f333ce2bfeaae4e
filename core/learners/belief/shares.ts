import { type Book, GROUP_RIGHTS, type Reader } from './book.ts';
import { tablePlace } from './grid.ts';
import { BESIDE_CLASS } from './numbers.ts';
import { offsetInto } from './offset.ts';
import { readCorrectlyInPart } from './outcome.ts';
import { COUNTED, SHARES } from './pair.ts';

/**
 * Where only mistakes are marked, a word that went right together was read correctly by one or other of
 * the children: each is given its share of that, one over their number. Counts in what a pair has not
 * been given yet, as of a day.
 */
export function countShares(
  book: Book,
  reader: Reader,
  pair: number,
  number: number,
  day: number,
): void {
  const row = reader.home.rows.at(number);
  if (row < 0) return;
  const pairs = book.pairs.numbers;
  const rights = book.together.numbers[row + GROUP_RIGHTS] as number;
  const fresh = rights - (pairs[pair + COUNTED] as number);
  const share = (BESIDE_CLASS.alone * fresh) / Math.max(1, reader.home.size);
  pairs[pair + COUNTED] = rights;
  if (share <= 0) return;
  const table = tablePlace(offsetInto(book, ROOM, 0, reader, number, pair, day), 1);
  readCorrectlyInPart(pairs, pair, table, share);
  pairs[pair + SHARES] = (pairs[pair + SHARES] as number) + share;
}

const ROOM = { practice: new Float64Array(1), away: new Float64Array(1) };

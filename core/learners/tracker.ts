/**
 * What is known, followed through time.
 *
 * **Problem.** Each child reads each card only a few times in weeks. How likely
 * is it to read it correctly today, and how sure can one be?
 *
 * **Model.** How likely a card is read correctly is the logistic of a strength,
 *
 *     the child with the card  +  practice  −  what was forgotten  +  the place in the word, habits
 *     +  how the child and the card have moved since
 *
 * and of the first, which is a child's own, the *likelihood* is kept on a grid (belief/grid.ts): what
 * its readings say, before any of what is usual is counted in. Time blurs it and, with a small chance,
 * begins it again (age.ts). What is usual, children and cards as crossed effects with their spreads, is
 * fitted to the class when figures are asked for (fit.ts), so that in a class whose children differ by
 * card a child's own readings count for more. A second belief, known or not, is mixed in as far as it
 * forecasts better (known-or-not.ts). There is no ceiling and no floor.
 *
 * **Method.** A filter on a grid (Bucy & Senne 1971) for each child with each card. What is common to
 * many pairs, places, practice, drift, takes one Newton step of the log-likelihood a reading, shared by
 * variance, as an extended Kalman filter does (Fahrmeir 1992). Of a word that went wrong without it
 * being said where, each card takes the exact likelihood given the forecasts of the others. A reading
 * together counts half, and is that of a child apart, the choir.
 *
 * **Cost.** A few loops over twenty numbers a card a reading, no pass over the past.
 *
 * **Rejected.** Normal beliefs with one spread for all (they could not see a pair that is unlike its
 * child and card, and had to be widened by a fitted factor); Markov-chain Monte Carlo (exact, but
 * seconds where a page has milliseconds).
 */
import type { ChildId, GroupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import {
  COULD,
  GROUP_DAYS,
  GROUP_LAST,
  GROUP_RIGHTS,
  GROUP_TIMES,
  HAPPENED,
  openBook,
  type Reader,
} from './belief/book.ts';
import { expectReading } from './belief/expect.ts';
import { AVERAGES, CHANCE } from './belief/forecast.ts';
import { guessOf, type KnownReading, learnKnown, slipOf } from './belief/known-or-not.ts';
import { layReading, makeLaid } from './belief/lay.ts';
import type { Marking } from './belief/marking.ts';
import { CHOIR } from './belief/numbers.ts';
import {
  readAmongMistakes,
  readCorrectly,
  readCorrectlyByHalf,
  readWrongly,
  readWronglyByHalf,
} from './belief/outcome.ts';
import { DAYS, LAST, TIMES, TOLD } from './belief/pair.ts';
import { restlessOf } from './belief/restless.ts';
import { endDay, moveCommon } from './belief/shifts.ts';
import { cardOf, openWords, type WordParts } from './belief/spots.ts';
import { noteAway } from './belief/there.ts';
import type { Fit } from './belief/usual.ts';
import type { Day } from './day.ts';
import { type Known, openKnown } from './known.ts';
import type { Observation } from './observation.ts';
import { wordParts } from './word-parts.ts';

/** Follows readings, which must come in the order of their days. */
export interface Tracker {
  readonly observe: (reading: Observation) => void;
  /** The chance that each card of a reading is read correctly, from what was observed before its day and of these cards. */
  readonly expect: (reading: Observation) => readonly number[];
  /** What is known by now; it goes on changing with every reading. */
  readonly known: Known;
}

/** A tracker that has seen nothing yet; `partsOf` tells where the cards of a reading stand. */
export function startTracker(
  marking: Marking = 'all',
  partsOf: (cards: readonly CardId[]) => WordParts = wordParts,
): Tracker {
  const book = openBook();
  const { known, changed } = openKnown(book, marking);
  const readWord = openWords(partsOf, book.numberOf);
  const laid = makeLaid();
  const { averages } = laid;
  /** Mutable on purpose: one for all readings. */
  const told: KnownReading = { day: 0, right: true, weight: 1, chance: 0, slips: 0, guesses: 0 };
  let today = Number.NaN;
  /** What forecasts of a day go by: what was usual when it began. */
  let fitOfDay: Fit | null = null;

  return { observe, expect, known };

  function observe(reading: Observation): void {
    const { day, child, groups, cards, right, broke, away } = reading;
    if (day !== today) begin(day);
    changed(day);
    const count = readWord(cards, laid.spots);
    if (child === null) {
      if (marking !== 'mistakes-beside-class') readTogether(groups, count, day, right, broke);
      if (!right && marking === 'mistakes-beside-class') return;
      if (away !== undefined) passBy(away, groups, count, day);
      practiceTogether(groups, count, day, right);
      return;
    }
    const reader = book.childOf(child, groups);
    layReading(book, laid, count, reader, day, 1, marking);
    if (marking === 'only-mistakes' && !right) readMistake(count, broke);
    else readAlone(reader, count, day, right, broke);
    practice(count, day);
  }

  function expect(reading: Observation): readonly number[] {
    const { day, child, groups, cards } = reading;
    if (day !== today) begin(day);
    const count = readWord(cards, laid.spots);
    const reader =
      child === null ? book.choirOf(groups[0] as GroupId) : book.childOf(child, groups);
    const fit = fitOfDay ?? known.fit();
    fitOfDay = fit;
    layReading(book, laid, count, reader, day, 1, marking);
    return expectReading(book, fit, laid, count, reader, day, marking === 'all');
  }

  function begin(day: Day): void {
    if (!Number.isNaN(today)) endDay(book);
    book.common.restless = restlessOf(book.common.surprises);
    today = day;
    fitOfDay = null;
    changed(day);
  }

  function readAlone(
    reader: Reader,
    count: number,
    day: Day,
    right: boolean,
    broke: number | null,
  ): void {
    const isSaid = right || broke !== null;
    const last = right ? count : Math.min(count, broke ?? count);
    const all = allRight(count);
    for (let at = 0; at < last; at++) {
      const chance = averages[at * AVERAGES + CHANCE] as number;
      const isGood = right || (isSaid && at < last - 1);
      laid.others[at] = isSaid ? 1 : all / chance;
      if (marking === 'all') {
        told.weight = isSaid ? 1 : Math.min(1, (1 - chance) / (1 - all));
        learnOne(reader, at, day, isGood, chance);
      }
      const pair = laid.pairs[at] as number;
      const pairs = book.pairs.numbers;
      if (isGood) readCorrectly(pairs, pair, laid.tables[at] as number);
      else readWrongly(pairs, pair, laid.tables[at] as number, laid.others[at] as number);
      pairs[pair + TOLD] = (pairs[pair + TOLD] as number) + 1;
      if (marking !== 'mistakes-beside-class') {
        moveCommon(book, laid, at, reader, true, isGood, day);
      }
    }
  }

  /** The second belief, with the child's own slips and the card's own guesses. */
  function learnOne(reader: Reader, at: number, day: Day, right: boolean, chance: number): void {
    const all = book.common.knownOrNot;
    const readers = book.readers.numbers;
    const cards = book.cards.numbers;
    const child = reader.row;
    const card = laid.cards[at] as number;
    told.day = day;
    told.right = right;
    told.chance = chance;
    told.slips = slipOf(all, readers[child + HAPPENED] as number, readers[child + COULD] as number);
    told.guesses = guessOf(all, cards[card + HAPPENED] as number, cards[card + COULD] as number);
    const known = learnKnown(all, book.pairs.numbers, laid.pairs[at] as number, told);
    if (told.weight <= 0.99) return;
    readers[child + COULD] = (readers[child + COULD] as number) + known;
    cards[card + COULD] = (cards[card + COULD] as number) + 1 - known;
    if (right) cards[card + HAPPENED] = (cards[card + HAPPENED] as number) + 1 - known;
    else readers[child + HAPPENED] = (readers[child + HAPPENED] as number) + known;
  }

  function readMistake(count: number, broke: number | null): void {
    const all = allRight(count);
    for (let at = 0; at < count; at++) {
      const pair = laid.pairs[at] as number;
      const pairs = book.pairs.numbers;
      const others = all / (averages[at * AVERAGES + CHANCE] as number);
      const said =
        broke === null ? 'unsaid' : at < broke - 1 ? 'well' : at < broke ? 'wrong' : 'unknown';
      readAmongMistakes(pairs, pair, laid.tables[at] as number, others, said);
      if (said !== 'unknown') pairs[pair + TOLD] = (pairs[pair + TOLD] as number) + 1;
    }
  }

  function readTogether(
    groups: readonly GroupId[],
    count: number,
    day: Day,
    right: boolean,
    broke: number | null,
  ): void {
    const choir = book.choirOf(groups[0] as GroupId);
    layReading(book, laid, count, choir, day, CHOIR.slope, marking);
    const isSaid = right || broke !== null;
    const last = right ? count : Math.min(count, broke ?? count);
    const all = allRight(count);
    for (let at = 0; at < last; at++) {
      const isGood = right || (isSaid && at < last - 1);
      const others = isSaid ? 1 : all / (averages[at * AVERAGES + CHANCE] as number);
      laid.others[at] = others;
      const pair = laid.pairs[at] as number;
      const pairs = book.pairs.numbers;
      const table = laid.tables[at] as number;
      if (isGood) readCorrectlyByHalf(pairs, pair, table, CHOIR.slope);
      else readWronglyByHalf(pairs, pair, table, CHOIR.slope, others);
      pairs[pair + TOLD] = (pairs[pair + TOLD] as number) + 1;
      moveCommon(book, laid, at, choir, false, isGood, day);
    }
    practice(count, day);
  }

  /** The chance that the whole word goes well. */
  function allRight(count: number): number {
    let all = 1;
    for (let at = 0; at < count; at++) all *= averages[at * AVERAGES + CHANCE] as number;
    return all;
  }

  function practice(count: number, day: Day): void {
    const pairs = book.pairs.numbers;
    for (let at = 0; at < count; at++) {
      const pair = laid.pairs[at] as number;
      if ((pairs[pair + LAST] as number) < day) {
        pairs[pair + DAYS] = (pairs[pair + DAYS] as number) + 1;
        pairs[pair + LAST] = day;
      }
      pairs[pair + TIMES] = (pairs[pair + TIMES] as number) + 1;
    }
  }

  /** What a group does together is no practice of those of it who are away; of whom nothing was read yet, nothing is kept. */
  function passBy(
    away: readonly ChildId[],
    groups: readonly GroupId[],
    count: number,
    day: number,
  ): void {
    for (const name of away) {
      const child = book.children.get(name);
      if (child === undefined || !groups.includes(child.home.name)) continue;
      for (let at = 0; at < count; at++) {
        const card = cardOf(laid.spots[at] as number);
        const pair = book.pairOf(child, card, day);
        noteAway(book, pair, book.togetherOf(child.home, card), day);
      }
    }
  }

  function practiceTogether(
    groups: readonly GroupId[],
    count: number,
    day: Day,
    right: boolean,
  ): void {
    for (let one = 0; one < groups.length; one++) {
      const group = book.groupOf(groups[one] as GroupId);
      for (let at = 0; at < count; at++) {
        const row = book.togetherOf(group, cardOf(laid.spots[at] as number));
        const together = book.together.numbers;
        if ((together[row + GROUP_LAST] as number) < day) {
          together[row + GROUP_DAYS] = (together[row + GROUP_DAYS] as number) + 1;
          together[row + GROUP_LAST] = day;
        }
        together[row + GROUP_TIMES] = (together[row + GROUP_TIMES] as number) + 1;
        if (right) together[row + GROUP_RIGHTS] = (together[row + GROUP_RIGHTS] as number) + 1;
      }
    }
  }
}

import type { ChildId, GroupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Place } from '../language/correspondence.ts';
import type { Habit } from '../language/taught.ts';
import { answer, type BeliefAnswer } from './belief/answer.ts';
import type { Reader } from './belief/book.ts';
import { middling } from './belief/middling.ts';
import { LAST, TOLD } from './belief/pair.ts';
import { contextNumber } from './belief/spots.ts';
import type { Day } from './day.ts';
import type { Known } from './known.ts';
import { usualPlace } from './word-parts.ts';

/** How likely something is read correctly on a day, and how sure that is. */
export interface Estimate {
  /** The chance of a right reading, 0 to 1. */
  readonly p: number;
  /** The 90% interval: nine of ten true chances should lie from `low` to `high`. */
  readonly low: number;
  readonly high: number;
  /** How many readings of their own told something of it. */
  readonly n: number;
  /** The last day on which they had it themselves; null when never. */
  readonly last: Day | null;
}

/** Whose figures are asked for: a child's or a group's. */
export type Who = WhoChild | { readonly of: 'group'; readonly id: GroupId };
export interface WhoChild {
  readonly of: 'child';
  readonly id: ChildId;
}

/**
 * A card, where it usually stands in a word or in the place that is asked for,
 * on a day not before the last reading. For a child or group that never met it,
 * what is known of the others stands in, with an interval to match. Of a group it is
 * what its children come to on average, or, before one of them read alone, its choir.
 */
export function estimateCard(
  known: Known,
  who: Who,
  card: CardId,
  day: Day,
  place: Place = usualPlace(card),
): Estimate {
  if (who.of === 'group') return estimateGroup(known, who.id, card, day, place);
  const reader = known.book.children.get(who.id) ?? null;
  const { p, low, high } = answerOf(known, reader, card, day, place, true);
  return { p, low, high, ...toldOf(known, reader, card) };
}

/** The chance alone of `estimateCard`, in a third of its time. */
export function chanceOfCard(known: Known, who: Who, card: CardId, day: Day): number {
  const place = usualPlace(card);
  const readers = readersOf(known, who);
  let sum = 0;
  for (const reader of readers) sum += answerOf(known, reader, card, day, place, false).p;
  return sum / readers.length;
}

/** The readers whose mean stands for a child or group: never none, null for one who never read. */
function readersOf({ book }: Known, { of, id }: Who): readonly (Reader | null)[] {
  if (of === 'child') return [book.children.get(id) ?? null];
  const children = [...book.children.values()].filter(({ groups }) => groups.includes(id));
  return children.length > 0 ? children : [book.groups.get(id)?.choir ?? null];
}

/**
 * The mean of a group's children. What an interval owes to the card errs to one side in all of them,
 * the rest to either side: the first adds up as it is, the second by its squares.
 */
function estimateGroup(known: Known, id: GroupId, card: CardId, day: Day, place: Place): Estimate {
  const readers = readersOf(known, { of: 'group', id });
  const choir = known.book.groups.get(id)?.choir ?? null;
  const sides = makeSides();
  let sum = 0;
  let n = 0;
  let last: Day | null = null;
  for (const reader of new Set([...readers, choir])) {
    const told = toldOf(known, reader, card);
    n += told.n;
    if (told.last !== null && (last === null || told.last > last)) last = told.last;
  }
  for (const reader of readers) {
    const given = answerOf(known, reader, card, day, place, true);
    sum += given.p;
    addReach(sides, given, given.ofCard);
  }
  const p = sum / readers.length;
  const low = Math.max(0, p - reachOf(sides.below) / readers.length);
  const high = Math.min(1, p + reachOf(sides.above) / readers.length);
  return { p, low, high, n, last };
}

/** How many of some cards are read correctly on a day, and how sure that is. */
export interface CountEstimate {
  /** How many of the cards they had themselves. */
  readonly met: number;
  /** Of these: how many are expected to be read correctly. */
  readonly known: number;
  /** The 90% interval of that number. */
  readonly low: number;
  readonly high: number;
}

/**
 * How many of those cards that they have met are read correctly. What a card's interval owes to the
 * child itself, to forgetting and to places in a word errs to one side in all cards together; what it
 * owes to the card alone errs to either side. So the first adds up as it is, and the second as
 * independent errors do, by its squares.
 */
export function estimateCount(
  known: Known,
  who: Who,
  cards: readonly CardId[],
  day: Day,
): CountEstimate {
  let met = 0;
  let sum = 0;
  const sides = makeSides();
  for (const card of cards) {
    const { p, low, high, n } = estimateCard(known, who, card, day);
    if (n === 0) continue;
    met += 1;
    sum += p;
    addReach(sides, { p, low, high }, ofReaderIn(known, who, card, day));
  }
  return {
    met,
    known: sum,
    low: Math.max(0, sum - reachOf(sides.below)),
    high: Math.min(met, sum + reachOf(sides.above)),
  };
}

/** How much of a card's variance is the reader's, in all cards alike. */
function ofReaderIn(known: Known, who: Who, card: CardId, day: Day): number {
  const shares = readersOf(known, who).map(
    (reader) => answerOf(known, reader, card, day, usualPlace(card), false).ofReader,
  );
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

/** How far intervals reach to either side, in all of several alike and of each alone. */
interface Reach {
  together: number;
  alone: number;
}

function makeSides(): { readonly below: Reach; readonly above: Reach } {
  return { below: { together: 0, alone: 0 }, above: { together: 0, alone: 0 } };
}

function addReach(
  { below, above }: ReturnType<typeof makeSides>,
  { p, low, high }: Pick<Estimate, 'p' | 'low' | 'high'>,
  shared: number,
): void {
  for (const [reach, side] of [
    [p - low, below],
    [high - p, above],
  ] as const) {
    side.together += reach * Math.sqrt(shared);
    side.alone += reach ** 2 * (1 - shared);
  }
}

function reachOf({ together, alone }: Reach): number {
  return Math.sqrt(together ** 2 + alone);
}

/** A card of middling strength for this child or group, standing in a place of a word. */
export function estimatePlace(known: Known, who: Who, place: Place): Estimate {
  return {
    ...middling(known.book, known.fit(), readersOf(known, who), contextNumber(place)),
    last: null,
  };
}

/** A card of middling strength for this child or group, where a habit is asked for. */
export function estimateHabit(known: Known, who: Who, habit: Habit): Estimate {
  return {
    ...middling(known.book, known.fit(), readersOf(known, who), contextNumber(habit)),
    last: null,
  };
}

function answerOf(
  known: Known,
  reader: Reader | null,
  card: CardId,
  day: Day,
  place: Place,
  isWide: boolean,
): BeliefAnswer {
  const { book, marking } = known;
  const context = contextNumber(place);
  const number = book.cardNumber.get(card) ?? -1;
  return answer({ book, marking, fit: known.fit(), reader, card: number, context, day }, isWide);
}

function toldOf(
  { book }: Known,
  reader: Reader | null,
  card: CardId,
): Pick<Estimate, 'n' | 'last'> {
  const pair = reader === null ? -1 : reader.pairs.at(book.cardNumber.get(card) ?? -1);
  if (pair < 0) return { n: 0, last: null };
  const last = book.pairs.numbers[pair + LAST] as number;
  return {
    n: book.pairs.numbers[pair + TOLD] as number,
    last: Number.isFinite(last) ? last : null,
  };
}

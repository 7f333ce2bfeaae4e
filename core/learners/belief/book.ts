import type { ChildId, GroupId } from '../../ids.ts';
import { PLACES } from '../../language/correspondence.ts';
import { HABITS } from '../../language/taught.ts';
import { type KnownOrNot, openKnownOrNot } from './known-or-not.ts';
import { DRIFT, GAIN, HABIT, LOSS, PLACE, SPREAD, START } from './numbers.ts';
import { openPair, PAIR_WIDTH } from './pair.ts';
import type { Restlessness } from './restless.ts';
import { RowsByCard, Table } from './table.ts';

/** What a child, a choir or a card has of its own: the prior mean of its pairs, and how it has moved since. */
export const MEAN = 0;
export const VARIANCE = 1;
export const SHIFT = 2;
export const SHIFT_VARIANCE = 3;
/** The day up to which drift is counted in; NaN before any. */
export const DAY = 4;
/** Of a child its slips, of a card its guesses: how many, of how many (known-or-not.ts). */
export const HAPPENED = 5;
export const COULD = 6;
const CARD_WIDTH = 7;
/** Of a reader: how far it was moved today; NaN when it was not. */
export const MOVED = 7;
/** Of a reader, for each context: mean, variance, how many readings told of it. */
export const OWN_CONTEXTS = 8;
export const CONTEXT_WIDTH = 3;
const CONTEXT_COUNT = PLACES.length + HABITS.length;
const READER_WIDTH = OWN_CONTEXTS + CONTEXT_WIDTH * CONTEXT_COUNT;

/** Of a group with a card: readings together, the days of them, the last, and those that went right. */
export const GROUP_TIMES = 0;
export const GROUP_DAYS = 1;
export const GROUP_LAST = 2;
export const GROUP_RIGHTS = 3;
const GROUP_WIDTH = 4;

/** A child, or a group that reads together, its choir. */
export interface Reader {
  /** Its place among all readers, and where its row starts in `readers`. */
  readonly number: number;
  readonly row: number;
  /** Where its row with a card starts in `pairs`. */
  readonly pairs: RowsByCard;
  /** Of a child: the groups that its last reading tells of, the first of them its own. */
  groups: readonly GroupId[];
  home: GroupBook;
}

/** What a group has read together. */
export interface GroupBook {
  readonly name: GroupId;
  /** Where its row with a card starts in `together`. */
  readonly rows: RowsByCard;
  /** How many children are in it who have read alone. */
  size: number;
  choir: Reader | null;
}

/** What is common to the class: how practice and absence tell, places and habits, and its growth. */
export interface Common {
  gain: number;
  gainVariance: number;
  loss: number;
  lossVariance: number;
  trend: number;
  restless: number;
  readonly surprises: Restlessness;
  readonly knownOrNot: KnownOrNot;
  /** By context number, mean and variance; and whether it was met. */
  readonly contexts: Float64Array;
  readonly contextMet: Uint8Array;
}

/** The beliefs about a class, each begun when it is first asked for. */
export interface Book {
  readonly common: Common;
  readonly readers: Table;
  readonly cards: Table;
  readonly pairs: Table;
  readonly together: Table;
  /** The number of each card that came up, by id. */
  readonly cardNumber: ReadonlyMap<string, number>;
  readonly children: ReadonlyMap<ChildId, Reader>;
  readonly groups: ReadonlyMap<GroupId, GroupBook>;
  /** Children and choirs, in the order they came up. */
  readonly all: readonly Reader[];
  readonly numberOf: (card: string) => number;
  readonly groupOf: (name: GroupId) => GroupBook;
  /** A child, who is of these groups from now on. */
  readonly childOf: (name: ChildId, groups: readonly GroupId[]) => Reader;
  readonly choirOf: (name: GroupId) => Reader;
  readonly pairOf: (reader: Reader, card: number, day: number) => number;
  readonly togetherOf: (group: GroupBook, card: number) => number;
}

/** A book with nothing in it yet. */
export function openBook(): Book {
  const readers = new Table(READER_WIDTH, 32);
  const cards = new Table(CARD_WIDTH, 128);
  const pairs = new Table(PAIR_WIDTH, 512);
  const together = new Table(GROUP_WIDTH, 512);
  const cardNumber = new Map<string, number>();
  const children = new Map<ChildId, Reader>();
  const groups = new Map<GroupId, GroupBook>();
  const all: Reader[] = [];
  return {
    common: openCommon(),
    readers,
    cards,
    pairs,
    together,
    cardNumber,
    children,
    groups,
    all,
    numberOf,
    groupOf,
    childOf,
    choirOf,
    pairOf,
    togetherOf,
  };

  function numberOf(id: string): number {
    const known = cardNumber.get(id);
    if (known !== undefined) return known;
    const number = cardNumber.size;
    const row = cards.begin();
    cards.numbers[row + MEAN] = START.mean;
    cards.numbers[row + VARIANCE] = SPREAD.card;
    cards.numbers[row + DAY] = Number.NaN;
    cardNumber.set(id, number);
    return number;
  }

  function groupOf(name: GroupId): GroupBook {
    let group = groups.get(name);
    if (group === undefined) {
      group = { name, rows: new RowsByCard(), size: 0, choir: null };
      groups.set(name, group);
    }
    return group;
  }

  function childOf(name: ChildId, of: readonly GroupId[]): Reader {
    const home = groupOf(of[0] as GroupId);
    let child = children.get(name);
    if (child === undefined) {
      child = openReader(of, home);
      children.set(name, child);
      home.size += 1;
    } else if (child.home !== home) {
      child.home.size -= 1;
      home.size += 1;
      child.home = home;
    }
    child.groups = of;
    return child;
  }

  function choirOf(name: GroupId): Reader {
    const group = groupOf(name);
    group.choir ??= openReader([name], group);
    return group.choir;
  }

  function openReader(of: readonly GroupId[], home: GroupBook): Reader {
    const row = readers.begin();
    const { numbers } = readers;
    numbers[row + VARIANCE] = SPREAD.child;
    numbers[row + DAY] = Number.NaN;
    numbers[row + MOVED] = Number.NaN;
    for (let context = 0; context < CONTEXT_COUNT; context++) {
      const own = context < PLACES.length ? PLACE.own : HABIT.own;
      numbers[row + OWN_CONTEXTS + CONTEXT_WIDTH * context + 1] = own;
    }
    const reader: Reader = { number: all.length, row, pairs: new RowsByCard(), groups: of, home };
    all.push(reader);
    return reader;
  }

  function pairOf(reader: Reader, card: number, day: number): number {
    const found = reader.pairs.at(card);
    if (found >= 0) return found;
    const pair = pairs.begin();
    openPair(pairs.numbers, pair, day);
    reader.pairs.set(card, pair);
    return pair;
  }

  function togetherOf(group: GroupBook, card: number): number {
    const found = group.rows.at(card);
    if (found >= 0) return found;
    const row = together.begin();
    together.numbers[row + GROUP_LAST] = Number.NEGATIVE_INFINITY;
    group.rows.set(card, row);
    return row;
  }
}

/** Where the row of a card starts in `cards`, by its number. */
export function cardRow(number: number): number {
  return number * CARD_WIDTH;
}

/** Counts the days in that passed over a reader or card: it drifts, and a reader grows with the class. */
export function driftTo(
  rows: Float64Array,
  row: number,
  day: number,
  drift: number,
  trend: number,
): void {
  const since = day - (rows[row + DAY] as number);
  if (since <= 0) return;
  if (since > 0) {
    rows[row + SHIFT_VARIANCE] = (rows[row + SHIFT_VARIANCE] as number) + drift * since;
    rows[row + SHIFT] = (rows[row + SHIFT] as number) + trend * since;
  }
  rows[row + DAY] = day;
}

/** By the day, of the log-odds of a reader and of a card. */
export const READER_DRIFT = DRIFT.child;
export const CARD_DRIFT = DRIFT.card;

function openCommon(): Common {
  const contexts = new Float64Array(2 * CONTEXT_COUNT);
  for (let context = 0; context < CONTEXT_COUNT; context++) {
    const { mean, variance } = context < PLACES.length ? PLACE : HABIT;
    contexts[2 * context] = mean;
    contexts[2 * context + 1] = variance;
  }
  return {
    gain: GAIN.mean,
    gainVariance: GAIN.variance,
    loss: LOSS.mean,
    lossVariance: LOSS.variance,
    trend: 0,
    restless: 1,
    surprises: { products: 0, count: 0 },
    knownOrNot: openKnownOrNot(),
    contexts,
    contextMet: new Uint8Array(CONTEXT_COUNT),
  };
}

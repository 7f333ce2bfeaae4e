import type { CardId } from '../language/card-id.ts';
import type { Day } from '../learners/day.ts';
import { type Estimate, estimateCard, type Who } from '../learners/estimate.ts';
import type { Known } from '../learners/known.ts';
import type { Thresholds } from '../learners/thresholds.ts';
import { type CardFacts, cardFacts, LATELY_DAYS, missedLast } from './card-facts.ts';
import type { ClassReadings } from './class-readings.ts';
import { MASTERY_WORDS, type MasteryWord, masteryWord } from './mastery-word.ts';

/** One card of someone: what was seen of it, what is estimated from all that was seen, and the word for both. */
export interface MapCell {
  readonly card: CardId;
  readonly seen: CardFacts;
  readonly estimate: Estimate;
  readonly word: MasteryWord;
}

/** A child or a group, and each card. */
export interface MapRow<Of extends Who = Who> {
  readonly who: Of;
  /** In the order of the cards asked for. */
  readonly cells: readonly MapCell[];
}

/** What a map is made from. */
export interface MapSpec {
  /** What the readings have shown. */
  readonly known: Known;
  readonly readings: ClassReadings;
  /** Not before the last reading. */
  readonly day: Day;
  readonly thresholds: Thresholds;
}

/** What each of these knows of each card. */
export function classMap<Of extends Who>(
  spec: MapSpec,
  all: readonly Of[],
  cards: readonly CardId[],
): readonly MapRow<Of>[] {
  return all.map((who) => {
    const cellOf = cellsFor(spec, who);
    return { who, cells: cards.map(cellOf) };
  });
}

/** How many cells there are of each word. */
export function countWords(cells: readonly MapCell[]): Readonly<Record<MasteryWord, number>> {
  const counts = Object.fromEntries(MASTERY_WORDS.map((word) => [word, 0])) as Record<
    MasteryWord,
    number
  >;
  for (const { word } of cells) counts[word] += 1;
  return counts;
}

/**
 * The cards of which the most are shaky in these rows, the shakiest first; those that nobody is
 * shaky in are left out. Of as many, the one with the lower mean estimate goes first.
 */
export function shakiest(rows: readonly MapRow[]): readonly CardId[] {
  const cards = rows[0]?.cells.map(({ card }) => card) ?? [];
  const found = cards.map((card, at) => {
    const cells = rows.flatMap((row) => row.cells[at] ?? []);
    const shaky = cells.filter(({ word }) => word === 'shaky').length;
    const mean = cells.reduce((sum, { estimate }) => sum + estimate.p, 0) / cells.length;
    return { card, shaky, mean };
  });
  return found
    .filter(({ shaky }) => shaky > 0)
    .sort((one, other) => other.shaky - one.shaky || one.mean - other.mean)
    .map(({ card }) => card);
}

/**
 * Rows with those that need it most first: by how many cards are shaky, then by how much was missed in
 * the last three readings, then by what is expected; what is alike keeps its order.
 */
export function byNeed(rows: readonly MapRow[]): readonly MapRow[] {
  const needs = rows.map((row) => {
    const read = row.cells.filter(({ seen }) => seen.last.length > 0);
    return {
      row,
      shaky: countWords(read).shaky,
      missed: read.reduce((sum, { seen }) => sum + missedLast(seen), 0),
      // Of whom nothing was read, nothing is known to be needed.
      expected:
        read.length === 0
          ? 1
          : read.reduce((sum, { estimate }) => sum + estimate.p, 0) / read.length,
    };
  });
  return needs
    .sort(
      (one, other) =>
        other.shaky - one.shaky || other.missed - one.missed || one.expected - other.expected,
    )
    .map(({ row }) => row);
}

function cellsFor({ known, readings, day, thresholds }: MapSpec, who: Who) {
  const since = day - LATELY_DAYS;
  const own = readings.of(who);
  const members = who.of === 'group' ? readings.childrenOf(who.id) : [];
  return (card: CardId): MapCell => {
    const seen = cardFacts(card, own.get(card), since);
    const estimate = estimateCard(known, who, card, day);
    const word = masteryWord(seen, estimate, thresholds);
    return { card, seen, estimate, word: word === 'secure' && isOpen(card) ? 'growing' : word };
  };

  /** Whether a child of the group missed a card lately: then it is not secure for the group. */
  function isOpen(card: CardId): boolean {
    return members.some((id) => {
      const list = readings.of({ of: 'child', id }).get(card);
      return missedLast(cardFacts(card, list, since)) > 0;
    });
  }
}

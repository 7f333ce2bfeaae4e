import type { Day } from './day.ts';
import { type Estimate, estimateCard, type Who } from './estimate.ts';
import type { Known } from './known.ts';
import { MASTERY_WORDS, type MasteryWord, masteryWord, type Thresholds } from './mastery-word.ts';

/** What someone knows of one card. */
export interface MapCell {
  readonly card: string;
  readonly estimate: Estimate;
  readonly word: MasteryWord;
}

/** A child or a group, and each card. */
export interface MapRow {
  readonly who: Who;
  /** In the order of the cards asked for. */
  readonly cells: readonly MapCell[];
}

/** What each of these knows of each card on a day that is not before the last reading. */
export function classMap(
  known: Known,
  all: readonly Who[],
  cards: readonly string[],
  day: Day,
  thresholds: Thresholds,
): readonly MapRow[] {
  return all.map((who) => ({
    who,
    cells: cards.map((card) => {
      const estimate = estimateCard(known, who, card, day);
      return { card, estimate, word: masteryWord(estimate, thresholds) };
    }),
  }));
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
export function shakiest(rows: readonly MapRow[]): readonly string[] {
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

import type { CardId } from '../../language/card-id.ts';
import type { RowJudge } from './row-judge.ts';
import { type Outcome, outcomeAt, type WordTable } from './word-table.ts';

/** How many rows of cards say what, as a teacher counts them. */
export interface Tally {
  readonly real: number;
  readonly nonsense: number;
  /** Stopped by the word screen, or yours to decide. */
  readonly stopped: number;
  /** Nonsense that breaks a rule of position or spelling. */
  readonly rule: number;
  /** Names, sound-alikes, and real words that are said in another way. */
  readonly unfit: number;
  /** With a card or a habit that was not taught. */
  readonly untaught: number;
}

/** The rows of a table, counted. */
export function tallyOf(table: WordTable): Tally {
  const tally = { ...NONE };
  for (let row = 0; row < table.outcomes.length; row++) tally[COUNTED[outcomeAt(table, row)]]++;
  return tally;
}

/** The same from the counts of a judged board. */
export function tallyOfCounts(counts: Readonly<Record<Outcome, number>>): Tally {
  const tally = { ...NONE };
  for (const [outcome, count] of Object.entries(counts))
    tally[COUNTED[outcome as Outcome]] += count;
  return tally;
}

/**
 * What a card adds to a pile of a board: the rows that come when it is put
 * there, or, if it lies there, that go when it is taken out. Nothing while
 * another pile is empty.
 */
export function cardGain(
  judge: RowJudge,
  piles: readonly (readonly CardId[])[],
  pile: number,
  id: CardId,
): Tally {
  return tallyOf(judge.table(withOnly(piles, pile, id)));
}

/** These piles with one card alone in one of them: the rows that this card is in. */
export function withOnly(
  piles: readonly (readonly CardId[])[],
  pile: number,
  id: CardId,
): readonly (readonly CardId[])[] {
  return piles.map((cards, at) => (at === pile ? [id] : cards));
}

/** What each card of a board adds, by pile and id; one pass over the board's table. */
export function gainsOnBoard(table: WordTable): readonly ReadonlyMap<CardId, Tally>[] {
  const gains = table.piles.map((pile) => pile.map(() => ({ ...NONE })));
  for (let row = 0; row < table.outcomes.length; row++) {
    const counted = COUNTED[outcomeAt(table, row)];
    let rest = row;
    for (let pile = gains.length - 1; pile >= 0; pile--) {
      const own = gains[pile] as Counting[];
      (own[rest % own.length] as Counting)[counted]++;
      rest = Math.floor(rest / own.length);
    }
  }
  return table.piles.map(
    (pile, at) => new Map(pile.map((id, card) => [id, gains[at]?.[card] as Tally])),
  );
}

type Counting = { -readonly [Kind in keyof Tally]: number };

const NONE: Tally = { real: 0, nonsense: 0, stopped: 0, rule: 0, unfit: 0, untaught: 0 };

const COUNTED: Readonly<Record<Outcome, keyof Tally>> = {
  familiar: 'real',
  rare: 'real',
  nonsense: 'nonsense',
  rule: 'rule',
  name: 'unfit',
  'sound-alike': 'unfit',
  'said-differently': 'unfit',
  screened: 'stopped',
  untaught: 'untaught',
};

/** From a judged table to the best board whose cards are in it: weights, search, counts. */

import type { CardId } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import { twinRows } from '../judge/twin-rows.ts';
import {
  cardsAt,
  mayShow,
  OUTCOMES,
  type Outcome,
  outcomeAt,
  type WordTable,
} from '../judge/word-table.ts';
import type { Board } from '../shapes/board.ts';
import type { BoardModel } from './board-model.ts';
import { solveBoard } from './search.ts';

/** What a board should be. Ids named here that fit no pile of the shape are left aside. */
export interface BoardWishes {
  /** The most cards in each pile, left to right. */
  readonly limits: readonly number[];
  /** Cards that must lie in at least one of the piles they fit. */
  readonly pinned?: readonly CardId[];
  /** Cards that must lie in every pile they fit. */
  readonly pinnedEverywhere?: readonly CardId[];
  /** Cards that must not. */
  readonly banned?: readonly string[];
  /** Cards whose words count threefold. */
  readonly focus?: readonly CardId[];
  /** Look-alikes to be turned one into the other: a word whose twin is a word too counts threefold. */
  readonly contrasts?: readonly (readonly [CardId, CardId])[];
  /** No combination may be stopped by the word screen: a board for cards on paper. */
  readonly clean?: boolean;
  /** Beyond clean: no combination may break a rule, sound like a word or be said otherwise. */
  readonly strict?: boolean;
  /**
   * What words are worth; by default familiar real words count four times as much
   * as others, and nonsense counts nothing on boards of more than three piles.
   */
  readonly weights?: WordWeights;
  /** Stops the search early; without it the board is proven best. */
  readonly nodeLimit?: number;
}

/** What a word adds to a board's value, by what it is; whole numbers, none negative. */
export interface WordWeights {
  readonly familiar: number;
  readonly rare: number;
  readonly nonsense: number;
}

const WEIGHTS: WordWeights = { familiar: 4, rare: 1, nonsense: 1 };
/** Of many piles: nonsense is plentiful there whatever is chosen, and real words are few. */
const WEIGHTS_OF_MANY: WordWeights = { familiar: 4, rare: 1, nonsense: 0 };
const FOCUS_FACTOR = 3;
const TWIN_FACTOR = 3;

/** How many combinations of a board count as what. */
export type OutcomeCounts = Readonly<Record<Outcome, number>>;

/** A board with what is known of it. `table` holds exactly the board's combinations. */
export interface FoundBoard {
  readonly kind: 'found';
  readonly board: Board;
  readonly table: WordTable;
  readonly value: number;
  readonly bound: number;
  readonly optimal: boolean;
  readonly counts: OutcomeCounts;
}

/** Why there is no such board, with the cards it is about. */
export interface NoBoardFound {
  readonly kind: 'no-cards' | 'too-many-pins' | 'pins-clash' | 'no-place';
  readonly cards: readonly string[];
  readonly message: string;
}

/** The best board whose cards are among a judged table's. */
export function searchTable(whole: WordTable, wishes: BoardWishes): FoundBoard | NoBoardFound {
  const kept = usefulCards(whole, wishes);
  const model = makeModel(kept, wishes);
  const choice = solveBoard(
    model,
    wishes.nodeLimit === undefined ? {} : { nodeLimit: wishes.nodeLimit },
  );
  if (choice.kind !== 'found') {
    const cardsOf = (places: readonly (readonly [number, number])[]): CardId[] => [
      ...new Set(places.flatMap(([pile, card]) => kept.piles[pile]?.[card] ?? [])),
    ];
    if (choice.kind === 'too-many-pins') {
      const { pile } = choice;
      const cards = cardsOf((model.pinned[pile] ?? []).map((card) => [pile, card] as const));
      return {
        kind: choice.kind,
        cards,
        message: `${namesOf(cards)} are more cards than this pile holds. Let one go.`,
      };
    }
    const places =
      choice.kind === 'no-place'
        ? choice.places.flat()
        : choice.combination.map((card, pile) => [pile, card] as const);
    const cards = cardsOf(places);
    return {
      kind: choice.kind,
      cards,
      message:
        choice.kind === 'no-place'
          ? `There is no board on which ${namesOf(cards)} can lie. Let one go, or allow more cards.`
          : `${namesOf(cards)} together make a word that is stopped. Let one go.`,
    };
  }
  const piles = kept.piles.map((pile, at) =>
    (choice.chosen[at] as readonly number[]).map((card) => pile[card] as CardId),
  );
  const table = narrow(kept, piles);
  return {
    kind: 'found',
    board: { shape: whole.shape.id, piles },
    table,
    value: choice.value,
    bound: choice.bound,
    optimal: choice.optimal,
    counts: countOutcomes(table),
  };
}

/** The table of a board whose cards all lie in `whole`. */
export function narrow(whole: WordTable, piles: readonly (readonly CardId[])[]): WordTable {
  const places = piles.map((pile, at) =>
    pile.map((id) => (whole.piles[at] as readonly string[]).indexOf(id)),
  );
  let indices = [0];
  places.forEach((cards, at) => {
    const size = (whole.piles[at] as readonly string[]).length;
    indices = indices.flatMap((index) => cards.map((card) => index * size + card));
  });
  return {
    shape: whole.shape,
    piles,
    words: indices.map((index) => whole.words[index] as string),
    outcomes: Uint8Array.from(indices, (index) => whole.outcomes[index] as number),
  };
}

/** The optimization model of a judged table. */
export function makeModel(table: WordTable, wishes: BoardWishes): BoardModel {
  const sizes = table.piles.map((pile) => pile.length);
  const limits = sizes.map((size, pile) =>
    Math.min(size, Math.max(0, wishes.limits[pile] ?? size)),
  );
  const fits = (id: CardId): [number, number][] =>
    table.piles.flatMap((pile, at): [number, number][] => {
      const card = pile.indexOf(id);
      return card < 0 ? [] : [[at, card]];
    });
  const inEveryPile = new Set([
    ...(wishes.pinnedEverywhere ?? []),
    ...(wishes.pinned ?? []).filter((id) => fits(id).length === 1),
  ]);
  const pinned = table.piles.map((pile) =>
    pile.flatMap((id, card) => (inEveryPile.has(id) ? [card] : [])),
  );
  const pinGroups = (wishes.pinned ?? []).map(fits).filter((places) => places.length > 1);
  const focus = new Set(wishes.focus ?? []);
  const twins = wishes.contrasts?.length ? twinRows(table, wishes.contrasts) : null;
  const forbiddenOutcomes = FORBIDDEN[wishes.strict ? 'strict' : wishes.clean ? 'clean' : 'any'];
  const worth = wishes.weights ?? (table.piles.length > 3 ? WEIGHTS_OF_MANY : WEIGHTS);
  const weights = new Int32Array(table.outcomes.length);
  const forbidden = new Uint8Array(table.outcomes.length);
  for (let index = 0; index < weights.length; index++) {
    const outcome = outcomeAt(table, index);
    if (forbiddenOutcomes.has(outcome)) forbidden[index] = 1;
    if (!mayShow(table, index)) continue;
    const weight = worth[outcome as keyof WordWeights];
    const focused = focus.size > 0 && cardsAt(table, index).some((id) => focus.has(id));
    weights[index] = weight * (focused ? FOCUS_FACTOR : 1) * (twins?.[index] ? TWIN_FACTOR : 1);
  }
  const model = { sizes, limits, pinned, weights, forbidden };
  return pinGroups.length > 0 ? { ...model, pinGroups } : model;
}

const FORBIDDEN: Readonly<Record<'any' | 'clean' | 'strict', ReadonlySet<Outcome>>> = {
  any: new Set(),
  clean: new Set<Outcome>(['screened', 'untaught']),
  strict: new Set<Outcome>([
    'screened',
    'untaught',
    'rule',
    'name',
    'sound-alike',
    'said-differently',
  ]),
};

/** How many combinations of a table count as what. */
export function countOutcomes(table: WordTable): OutcomeCounts {
  const counts = Object.fromEntries(OUTCOMES.map((outcome) => [outcome, 0])) as Record<
    Outcome,
    number
  >;
  for (let index = 0; index < table.outcomes.length; index++) counts[outcomeAt(table, index)]++;
  return counts;
}

/** Leaves aside cards that make no word at all, unless they are to lie there. */
export function usefulCards(
  table: WordTable,
  { pinned = [], pinnedEverywhere = [] }: BoardWishes,
): WordTable {
  const useful = table.piles.map(() => new Set<string>([...pinned, ...pinnedEverywhere]));
  for (let index = 0; index < table.outcomes.length; index++) {
    if (!mayShow(table, index)) continue;
    cardsAt(table, index).forEach((id, pile) => {
      useful[pile]?.add(id);
    });
  }
  return narrow(
    table,
    table.piles.map((pile, at) => pile.filter((id) => useful[at]?.has(id))),
  );
}

function namesOf(ids: readonly CardId[]): string {
  return ids.map((id) => correspondenceById.get(id)?.grapheme ?? id).join(', ');
}

/** From what is taught to the best board of a shape: candidates, weights, search, counts. */

import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import type { Board } from './board.ts';
import type { BoardModel } from './board-model.ts';
import type { JudgeContext } from './judge.ts';
import { solveBoard } from './search.ts';
import { candidates, type Shape } from './shapes.ts';
import {
  cardsAt,
  makeWordTable,
  mayShow,
  OUTCOMES,
  type Outcome,
  outcomeAt,
  type WordTable,
} from './word-table.ts';

/** What a board should be. Ids named here that fit no pile of the shape are left aside. */
export interface BoardWishes {
  /** The most cards in each pile, left to right. */
  readonly limits: readonly number[];
  /** Cards that must lie on the board. */
  readonly pinned?: readonly string[];
  /** Cards that must not. */
  readonly banned?: readonly string[];
  /** Cards whose words count threefold. */
  readonly focus?: readonly string[];
  /** No combination may be stopped by the word screen: a board for cards on paper. */
  readonly clean?: boolean;
  /** Beyond clean: no combination may break a rule, sound like a word or be said otherwise. */
  readonly strict?: boolean;
  /** What words are worth; familiar real words four times as much as others by default. */
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
const FOCUS_FACTOR = 3;

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
  readonly kind: 'no-cards' | 'too-many-pins' | 'pins-clash';
  readonly cards: readonly string[];
  readonly message: string;
}

/** The best board of a three-pile or two-pile shape among cards, under the wishes. */
export function findBoard(
  shape: Shape,
  cards: readonly Correspondence[],
  wishes: BoardWishes,
  context: JudgeContext,
): FoundBoard | NoBoardFound {
  const banned = new Set(wishes.banned ?? []);
  const allowed = cards.filter(({ id }) => !banned.has(id));
  const piles = candidates(shape, allowed).map((pile) => pile.map(({ id }) => id));
  const empty = piles.findIndex((pile) => pile.length === 0);
  if (empty >= 0) {
    return {
      kind: 'no-cards',
      cards: [],
      message: `No card that was taught can lie in pile ${empty + 1} of this board.`,
    };
  }
  return searchTable(makeWordTable(shape, piles, context), wishes);
}

/** The best board whose cards are among a judged table's. */
export function searchTable(whole: WordTable, wishes: BoardWishes): FoundBoard | NoBoardFound {
  const kept = usefulCards(whole, wishes);
  const model = makeModel(kept, wishes);
  const choice = solveBoard(
    model,
    wishes.nodeLimit === undefined ? {} : { nodeLimit: wishes.nodeLimit },
  );
  if (choice.kind === 'too-many-pins') {
    const cards = model.pinned[choice.pile].map(
      (card) => kept.piles[choice.pile]?.[card] as string,
    );
    return {
      kind: choice.kind,
      cards,
      message: `${namesOf(cards)} are more cards than this pile holds. Let one go.`,
    };
  }
  if (choice.kind === 'pins-clash') {
    const cards = choice.combination
      .map((card, pile) => kept.piles[pile]?.[card])
      .filter((id) => id !== undefined);
    return {
      kind: choice.kind,
      cards,
      message: `${namesOf(cards)} together make a word that is stopped. Let one go.`,
    };
  }
  const piles = kept.piles.map((pile, at) =>
    choice.chosen[at as 0 | 1 | 2].map((card) => pile[card] as string),
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
export function narrow(whole: WordTable, piles: readonly (readonly string[])[]): WordTable {
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

/** The optimisation model of a table of two or three piles; two piles get a third of one blank. */
export function makeModel(table: WordTable, wishes: BoardWishes): BoardModel {
  if (table.piles.length > 3)
    throw new Error('boards of more than three piles have their own search');
  const sizes = [0, 1, 2].map((pile) => table.piles[pile]?.length ?? 1);
  const limits = sizes.map((size, pile) =>
    Math.min(size, Math.max(0, wishes.limits[pile] ?? size)),
  );
  const pinned = sizes.map((_, pile) =>
    (table.piles[pile] ?? []).flatMap((id, card) => (wishes.pinned?.includes(id) ? [card] : [])),
  );
  const focus = new Set(wishes.focus ?? []);
  const forbiddenOutcomes = FORBIDDEN[wishes.strict ? 'strict' : wishes.clean ? 'clean' : 'any'];
  const worth = wishes.weights ?? WEIGHTS;
  const weights = new Int32Array(table.outcomes.length);
  const forbidden = new Uint8Array(table.outcomes.length);
  for (let index = 0; index < weights.length; index++) {
    const outcome = outcomeAt(table, index);
    if (forbiddenOutcomes.has(outcome)) forbidden[index] = 1;
    if (!mayShow(table, index)) continue;
    const weight = worth[outcome as keyof WordWeights];
    const focused = focus.size > 0 && cardsAt(table, index).some((id) => focus.has(id));
    weights[index] = focused ? weight * FOCUS_FACTOR : weight;
  }
  return { sizes, limits, pinned, weights, forbidden } as unknown as BoardModel;
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

/** Leaves aside cards that make no word at all, unless they are pinned. */
function usefulCards(table: WordTable, { pinned = [] }: BoardWishes): WordTable {
  const useful = table.piles.map(() => new Set<string>(pinned));
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

function namesOf(ids: readonly string[]): string {
  return ids.map((id) => correspondenceById.get(id)?.grapheme ?? id).join(', ');
}

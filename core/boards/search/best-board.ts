/** From a judged table to the best board whose cards are in it: weights, search, counts. */

import type { CardId } from '../../language/card-id.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import {
  cardsAt,
  mayShow,
  OUTCOMES,
  type Outcome,
  outcomeAt,
  type WordTable,
} from '../judge/word-table.ts';
import type { Board } from '../shapes/board.ts';
import type { BoardWishes } from './board-wishes.ts';
import { makeModel } from './make-model.ts';
import { solveBoard } from './search.ts';
import { contrastsThatFit, wantedThatFit } from './wanted-cards.ts';

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
export function searchTable(whole: WordTable, asked: BoardWishes): FoundBoard | NoBoardFound {
  const wishes = withWanted(whole, asked);
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

/**
 * The wishes with the look-alikes that can lie in one pile and the wanted cards that can lie there besides,
 * among the pinned ones.
 */
export function withWanted(table: WordTable, asked: BoardWishes): BoardWishes {
  const pinnedAt = contrastsThatFit(table, asked);
  const wishes = pinnedAt.length === 0 ? asked : { ...asked, pinnedAt };
  const laid = wantedThatFit(table, wishes);
  return laid.length === 0 ? wishes : { ...wishes, pinned: [...(wishes.pinned ?? []), ...laid] };
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
  { pinned = [], pinnedEverywhere = [], contrasts = [] }: BoardWishes,
): WordTable {
  const kept = [...pinned, ...pinnedEverywhere, ...contrasts.flat()];
  const useful = table.piles.map(() => new Set<string>(kept));
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

/** From what is taught to the best board of a shape: which cards may lie in each pile, all rows judged, the search. */
import type { CardId } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import type { JudgeContext } from '../judge/judge-context.ts';
import { makeWordTable, type WordTable } from '../judge/word-table.ts';
import { candidates, type Shape } from '../shapes/shapes.ts';
import { trimPiles } from '../shapes/trim-piles.ts';
import { type FoundBoard, type NoBoardFound, searchTable, usefulCards } from './best-board.ts';
import type { BoardWishes } from './board-wishes.ts';
import { syllablePiles, wishesInSyllables } from './syllable-piles.ts';

/** The cards to search among, by pile. */
export interface PilesToSearch {
  readonly kind: 'piles';
  readonly piles: readonly (readonly CardId[])[];
  /** How many cards were left aside because there are too many rows to judge. */
  readonly leftAside: number;
}

/**
 * The cards that may lie in each pile of a shape, without banned ones and few enough that all rows can be
 * judged: at most `mostRows`, by default some seconds' work. Cards that must lie on the board stay.
 */
export function pilesToSearch(
  shape: Shape,
  cards: readonly Correspondence[],
  wishes: Partial<BoardWishes>,
  context: JudgeContext,
  mostRows?: number,
): PilesToSearch | NoBoardFound {
  if (shape.form === 'beats') return syllablesToSearch(shape, wishes, context, mostRows);
  const { banned = [], pinned = [], pinnedEverywhere = [], wanted = [], contrasts = [] } = wishes;
  const out = new Set(banned);
  const allowed = cards.filter(({ id }) => !out.has(id));
  const fitting = candidates(shape, allowed).map((pile) => pile.map(({ id }) => id));
  const empty = fitting.findIndex((pile) => pile.length === 0);
  if (empty >= 0) {
    return {
      kind: 'no-cards',
      cards: [],
      message: `No card that was taught can lie in pile ${empty + 1} of this board yet.`,
    };
  }
  const kept = [...pinned, ...pinnedEverywhere, ...contrasts.flat(), ...wanted];
  const piles = trimPiles(shape, fitting, kept, context.lexicon, mostRows);
  return { kind: 'piles', piles, leftAside: fitting.flat().length - piles.flat().length };
}

function syllablesToSearch(
  shape: Shape,
  wishes: Partial<BoardWishes>,
  context: JudgeContext,
  mostRows?: number,
): PilesToSearch | NoBoardFound {
  const piles = syllablePiles(shape, wishes, context, mostRows);
  if (piles.every((pile) => pile.length > 0)) return { kind: 'piles', piles, leftAside: 0 };
  return {
    kind: 'no-cards',
    cards: [],
    message: 'No longer word of this kind can be read yet.',
  };
}

/** A found board, and the judged table that it was chosen from: the useful cards of all piles. */
export interface FoundAmong extends FoundBoard {
  readonly among: WordTable;
}

/** The best board of a shape among cards, under the wishes. */
export function findBoard(
  shape: Shape,
  cards: readonly Correspondence[],
  asked: BoardWishes,
  context: JudgeContext,
): FoundAmong | NoBoardFound {
  const search = pilesToSearch(shape, cards, asked, context);
  if (search.kind !== 'piles') return search;
  const wishes = shape.form === 'beats' ? wishesInSyllables(search.piles, asked) : asked;
  const among = usefulCards(makeWordTable(shape, search.piles, context), wishes);
  const found = searchTable(among, wishes);
  return found.kind === 'found' ? { ...found, among } : found;
}

import { cardsAt, mayShow, type WordTable } from '../boards/judge/word-table.ts';
import { type FoundBoard, narrow } from '../boards/search/best-board.ts';
import type { Board } from '../boards/shapes/board.ts';
import type { CardId } from '../language/card-id.ts';

/** For each pile the cards that lie in some word that may be shown. */
function usedCards(table: WordTable): readonly ReadonlySet<string>[] {
  const used = table.piles.map(() => new Set<string>());
  table.words.forEach((_, index) => {
    if (!mayShow(table, index)) return;
    cardsAt(table, index).forEach((id, pile) => {
      used[pile]?.add(id);
    });
  });
  return used;
}

/** The wanted cards that make some word here, as many as their piles hold, the first wanted first. */
export function wantedThatWork(
  table: WordTable,
  wanted: readonly CardId[],
  limits: readonly number[],
): readonly CardId[] {
  const used = usedCards(table);
  const works = (id: string): boolean => used.some((pile) => pile.has(id));
  return table.piles.flatMap((pile, at) =>
    wanted.filter((id) => pile.includes(id) && works(id)).slice(0, limits[at]),
  );
}

/** The board without cards that make no word with the others that lie there. */
export function withoutIdleCards({ board, table }: FoundBoard): {
  readonly board: Board;
  readonly table: WordTable;
} {
  const used = usedCards(table);
  const piles = table.piles.map((pile, at) => pile.filter((id) => used[at]?.has(id)));
  return { board: { ...board, piles }, table: narrow(table, piles) };
}

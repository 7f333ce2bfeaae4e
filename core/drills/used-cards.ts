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

/**
 * The wanted cards that make some word here, as many as their piles hold, the first wanted first. A card
 * that fits several piles is pinned in all of them, so it needs room in each.
 */
export function wantedThatWork(
  table: WordTable,
  wanted: readonly CardId[],
  limits: readonly number[],
): readonly CardId[] {
  const used = usedCards(table);
  const room = [...limits];
  return wanted.filter((id) => {
    const fits = table.piles.flatMap((pile, at) => (pile.includes(id) ? [at] : []));
    const works = used.some((pile) => pile.has(id));
    if (!works || fits.some((at) => (room[at] as number) < 1)) return false;
    for (const at of fits) (room[at] as number) -= 1;
    return true;
  });
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

import type { CardId } from '../../language/card-id.ts';
import { twinRows } from '../judge/twin-rows.ts';
import { cardsAt, mayShow, type WordTable } from '../judge/word-table.ts';
import type { BoardWishes } from './board-wishes.ts';
import { makeModel, makePins } from './make-model.ts';
import { canLayPins } from './search.ts';

/**
 * Of the cards that a board should have, those that it can have: they make a word that may be shown, no
 * forbidden combination keeps them from the others, and in no pile do they take more than half of the
 * room, so that something is left to make words with. The most wanted come first.
 */
export function wantedThatFit(table: WordTable, wishes: BoardWishes): readonly CardId[] {
  const { wanted = [], pinned = [], pinnedEverywhere = [] } = wishes;
  const open = wanted.filter((id) => !pinned.includes(id) && !pinnedEverywhere.includes(id));
  if (open.length === 0) return [];
  const works = workingCards(table, new Set(open));
  const model = makeModel(table, wishes);
  const taken = table.piles.map(() => 0);
  const laid: CardId[] = [];
  for (const id of open) {
    if (!works.has(id)) continue;
    const places = table.piles.flatMap((pile, at) => (pile.includes(id) ? [at] : []));
    const isRoomy = (at: number): boolean =>
      (taken[at] as number) < Math.ceil((model.limits[at] as number) / 2);
    if (!places.every(isRoomy)) continue;
    const pins = makePins(table, { ...wishes, pinned: [...pinned, ...laid, id] });
    if (!canLayPins({ ...model, ...pins })) continue;
    laid.push(id);
    for (const at of places) taken[at]! += 1;
  }
  return laid;
}

/**
 * Where the look-alikes of a board can lie in one pile: for each pair the pile in which most words of the
 * one become words of the other, if both can lie there with what must lie on the board; else the next.
 */
export function contrastsThatFit(
  table: WordTable,
  wishes: BoardWishes,
): NonNullable<BoardWishes['pinnedAt']> {
  const { contrasts = [] } = wishes;
  if (contrasts.length === 0) return [];
  const model = makeModel(table, wishes);
  let laid: NonNullable<BoardWishes['pinnedAt']> = wishes.pinnedAt ?? [];
  for (const pair of contrasts) {
    const places = table.piles
      .map((pile, at) => [at, pile.filter((id) => pair.includes(id)).length] as const)
      .filter(([, both]) => both === 2)
      .map(([at]) => [at, twinsIn(table, at, pair)] as const)
      .filter(([, twins]) => twins > 0)
      .sort((one, other) => other[1] - one[1]);
    for (const [at] of places) {
      const pinnedAt = [...laid, ...pair.map((id) => [at, id] as const)];
      if (!canLayPins({ ...model, ...makePins(table, { ...wishes, pinnedAt }) })) continue;
      laid = pinnedAt;
      break;
    }
  }
  return laid;
}

/** In how many words that may be shown a card of one pile can be turned into its look-alike. */
function twinsIn(table: WordTable, pile: number, pair: readonly [CardId, CardId]): number {
  return twinRows(table, [pair], pile).reduce((sum, one) => sum + one, 0);
}

/** Those of some cards that lie in a word that may be shown. */
function workingCards(table: WordTable, some: ReadonlySet<CardId>): ReadonlySet<CardId> {
  const found = new Set<CardId>();
  for (let index = 0; index < table.outcomes.length && found.size < some.size; index++) {
    if (!mayShow(table, index)) continue;
    for (const id of cardsAt(table, index)) if (some.has(id)) found.add(id);
  }
  return found;
}

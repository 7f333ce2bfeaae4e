import type { Board } from '../../../core/boards/shapes/board.ts';
import { type CardId, isCardId } from '../../../core/language/card-id.ts';

/** A card and where it lies: in a pile, or `null` in the tray. */
export interface Lying {
  readonly id: CardId;
  readonly pile: number | null;
}

/** What the tray says of itself as a place to let a card go; a pile says its number. */
export const TRAY = 'tray';

/** A card and where it lies as one text, by which its element says what is dragged. */
export function makeLying({ id, pile }: Lying): string {
  return `${pile ?? ''} ${id}`;
}

/** Reads what `makeLying` wrote; throws on any other text. */
export function parseLying(text: string): Lying {
  const space = text.indexOf(' ');
  const pile = text.slice(0, space);
  const id = text.slice(space + 1);
  if (!isCardId(id)) throw new Error(`No card lies as “${text}”.`);
  return { id, pile: pile === '' ? null : Number(pile) };
}

/** A board without a card of one pile. */
export function takeOut({ shape, piles }: Board, pile: number, id: CardId): Board {
  return {
    shape,
    piles: piles.map((cards, at) => (at === pile ? cards.filter((other) => other !== id) : cards)),
  };
}

/** A board with a card put at the end of a pile; it leaves the pile where it lay. */
export function putIn(board: Board, { id, pile: from }: Lying, pile: number): Board {
  const { shape, piles } = from === null ? board : takeOut(board, from, id);
  return { shape, piles: piles.map((cards, at) => (at === pile ? [...cards, id] : cards)) };
}

/** The cards that fit a pile and do not lie there, in the order given. */
export function trayOf(
  piles: Board['piles'],
  fitting: readonly (readonly CardId[])[],
): readonly (readonly CardId[])[] {
  return fitting.map((ids, pile) => ids.filter((id) => !piles[pile]?.includes(id)));
}

/** As much of a board as can lie in another shape: each card in the piles that take it. */
export function carryOver(
  piles: Board['piles'],
  fitting: readonly (readonly CardId[])[],
  room: readonly number[],
): Board['piles'] {
  const lying = new Set(piles.flat());
  return fitting.map((ids, pile) => ids.filter((id) => lying.has(id)).slice(0, room[pile]));
}

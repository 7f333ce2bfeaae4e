import { signal } from '@preact/signals';
import { type Tally, tallyOf } from '../../../core/boards/judge/card-gain.ts';
import type { RowJudge } from '../../../core/boards/judge/row-judge.ts';
import { type Swap, swapsFor } from '../../../core/boards/judge/swap.ts';
import { type WhyNot, whyNotHere } from '../../../core/boards/judge/why-not-here.ts';
import type { Board } from '../../../core/boards/shapes/board.ts';
import { pileInWords } from '../../../core/boards/shapes/pile-names.ts';
import type { Shape } from '../../../core/boards/shapes/shapes.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Taught } from '../../../core/language/taught.ts';
import { boardOnTable, boardUse, layBoard, pinnedCards } from '../../state/boards.ts';
import type { Engine } from '../../state/engine.ts';
import { itemShort } from '../../wording/card-name.ts';
import { type Lying, putIn, takeOut } from './moves.ts';
import { tallyInWords, tell } from './said.ts';
import type { Rows } from './use-rows.ts';
import { say } from './wording.ts';

/** The table with everything on it: what the parts of the screen are drawn from. */
export interface BoardDesk {
  readonly ready: Engine;
  readonly taught: Taught;
  readonly shape: Shape;
  readonly judge: RowJudge;
  readonly piles: readonly (readonly CardId[])[];
  /** Taught cards that fit a pile and do not lie in it. */
  readonly tray: readonly (readonly CardId[])[];
  readonly room: readonly number[];
  readonly rows: Rows;
}

/** What speaks against a card in a pile of this desk. */
export function whyNot(desk: BoardDesk, id: CardId, pile: number): WhyNot | null {
  const { piles, room, taught, judge } = desk;
  return whyNotHere(id, pile, {
    piles,
    room,
    taught,
    judge,
    onPaper: boardUse.peek() !== 'screen',
  });
}

/** Puts a card into a pile and says what the board makes now, or why it cannot stand there. */
export function put(desk: BoardDesk, card: Lying, pile: number): boolean {
  if (card.pile === pile) return false;
  const piles = pilesNow(desk);
  const against = whyNot({ ...desk, piles }, card.id, pile);
  if (against?.code === 'full') offer(desk, card, pile, piles);
  else offered.value = null;
  if (against?.forbids) {
    tell(against.message);
    return false;
  }
  const next = putIn({ shape: desk.shape.id, piles }, card, pile);
  layBoard(next, say.desk.putWith(lettersOf(card.id), pileInWords(desk.shape, pile)));
  tell([against?.message, totals(desk, next.piles)].filter(Boolean).join(' '));
  return true;
}

/** A swap that waits for her yes: the card that would come, and the one that would go. */
export interface Offer {
  readonly card: Lying;
  readonly pile: number;
  readonly swap: Swap;
  /** The board that it was worked out for; of another one it says nothing. */
  readonly board: Board | null;
}

/** The swap offered last. */
export const offered = signal<Offer | null>(null);

/** Offers the cheapest swap by which a card comes into a full pile. */
function offer({ judge }: BoardDesk, card: Lying, pile: number, piles: BoardDesk['piles']): void {
  const [swap] = swapsFor(judge, piles, pile, card.id, pinnedCards.peek());
  offered.value = swap ? { card, pile, swap, board: boardOnTable.peek() } : null;
}

/** Does what was offered, and says what the board makes now. */
export function takeOffer(desk: BoardDesk, { card, pile, swap }: Offer): void {
  offered.value = null;
  const piles = pilesNow(desk);
  const board = takeOut({ shape: desk.shape.id, piles }, pile, swap.out);
  const next = putIn(board, card, pile);
  layBoard(next, say.desk.putInThePlace(lettersOf(card.id), lettersOf(swap.out)));
  tell(totals(desk, next.piles));
}

/** Takes a card out of its pile and says what the board makes now. */
export function out(desk: BoardDesk, id: CardId, pile: number): void {
  const piles = pilesNow(desk);
  if (!piles[pile]?.includes(id)) return;
  const next = takeOut({ shape: desk.shape.id, piles }, pile, id);
  layBoard(next, say.desk.takenOutOf(lettersOf(id), pileInWords(desk.shape, pile)));
  tell(totals(desk, next.piles));
}

/** The piles at this moment: two quick keys may come before the desk is drawn again. */
function pilesNow({ shape, piles }: BoardDesk): BoardDesk['piles'] {
  const board = boardOnTable.peek();
  return board?.shape === shape.id ? board.piles : piles;
}

/** What these piles make, in a sentence. */
function totals({ judge }: BoardDesk, piles: BoardDesk['piles']): string {
  if (piles.some((pile) => pile.length === 0)) return say.desk.onePileIsEmpty;
  return say.desk.now(tallyInWords(tallyOf(judge.table(piles))));
}

/** What a card adds by these gains; nothing is known while another pile is empty. */
export function gainOf(
  { piles }: BoardDesk,
  gains: Rows['lying'],
  pile: number,
  id: CardId,
): Tally | undefined {
  const isAlone = piles.some((cards, at) => at !== pile && cards.length === 0);
  return isAlone ? undefined : gains[pile]?.get(id);
}

/** Whether two cards with the same letters could lie in a pile, so that a keyword must tell them apart. */
export function isTwin({ piles, tray }: BoardDesk, pile: number, id: CardId): boolean {
  const all = [...(piles[pile] ?? []), ...(tray[pile] ?? [])];
  return all.some((other) => other !== id && lettersOf(other) === lettersOf(id));
}

/** The letters of a card. */
export function lettersOf(id: CardId): string {
  return itemShort({ kind: 'card', id });
}

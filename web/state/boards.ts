import { computed } from '@preact/signals';
import {
  array,
  custom,
  type InferOutput,
  integer,
  maxValue,
  minValue,
  nullable,
  number,
  object,
  optional,
  picklist,
  pipe,
  record,
  string,
} from 'valibot';
import { AIMS, type Aim } from '../../core/boards/search/aims.ts';
import type { Board } from '../../core/boards/shapes/board.ts';
import type { CardId } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { cardsOnCard } from '../../core/language/syllable-card.ts';
import { isCard } from '../../core/log/is-card.ts';
import { isBoard } from '../../core/log/is-drill.ts';
import { remembered } from '../device/remembered.ts';
import { change } from './undo.ts';

/** What a board is for: a screen that skips words, cards on paper, or paper with no rule broken. */
export const BOARD_USES = ['screen', 'paper', 'strict'] as const;
export type BoardUse = (typeof BOARD_USES)[number];

const boardSchema = custom<Board>(isBoard);

const tableSchema = object({
  /** The board that lies on the table; null before the first. */
  board: nullable(boardSchema),
  /** The most cards of each pile, by shape, where she has set it. */
  room: optional(record(string(), array(pipe(number(), integer(), minValue(1), maxValue(40)))), {}),
});

const table = remembered<InferOutput<typeof tableSchema>>('board', tableSchema, {
  board: null,
  room: {},
});

/** The pinned cards lie under `held`, as they always did on this device. */
const wishesSchema = object({
  held: array(custom<CardId>(isCard)),
  use: picklist(BOARD_USES),
  aim: optional(picklist(AIMS), 'today'),
});

const wishes = remembered('board-wishes', wishesSchema, {
  held: [],
  use: 'screen',
  aim: 'today',
});

const keptSchema = array(object({ name: string(), board: boardSchema }));

const kept = remembered('boards', keptSchema, []);

/** The most boards put aside by themselves; the oldest go first. */
const mostEarlier = 12;

const earlier = remembered('earlier-boards', array(boardSchema), []);

/** The board on the table, without the cards that are not known here; null before the first. */
export const boardOnTable = computed<Board | null>(() => {
  const { board } = table.value;
  if (board === null || board.piles.every((pile) => pile.every(isKnown))) return board;
  return { ...board, piles: board.piles.map((pile) => pile.filter(isKnown)) };
});
/** Cards of the board on the table that are not known here, as a newer version may have laid. */
export const notKnownHere = computed<readonly string[]>(() =>
  (table.value.board?.piles.flat() ?? []).filter((id) => !isKnown(id)),
);

function isKnown(id: CardId): boolean {
  return cardsOnCard(id).every((own) => correspondenceById.has(own));
}

/** Room in the piles of a shape, where she has set it. */
export const roomByShape = computed(() => table.value.room);
/** Cards that every best board must have. */
export const pinnedCards = computed<readonly CardId[]>(() => wishes.value.held);
/** What the board is for. */
export const boardUse = computed<BoardUse>(() => wishes.value.use);
/** What the best board is best for. */
export const boardAim = computed<Aim>(() => wishes.value.aim);
/** The boards that she keeps, in the order of their names. */
export const keptBoards = computed<readonly { readonly name: string; readonly board: Board }[]>(
  () => kept.value,
);
/** Boards that others took the place of, the newest first. */
export const earlierBoards = computed<readonly Board[]>(() => earlier.value);

/** Lays a changed board; can be undone. */
export function layBoard(board: Board, said: string): void {
  change(table, { ...table.peek(), board }, said);
}

/** Lays another board; one that made words is put aside, unless it is kept under a name. */
export function replaceBoard(board: Board, said: string): void {
  const before = table.peek().board;
  if (before && !isSame(before, board)) putAside(before);
  layBoard(board, said);
}

/** Sets the room in the piles of a shape; can be undone. */
export function setRoom(shape: string, room: readonly number[], said: string): void {
  const now = table.peek();
  change(table, { ...now, room: { ...now.room, [shape]: [...room] } }, said);
}

/** Sets what the board is for; shows at once and is set back as easily. */
export function setBoardUse(use: BoardUse): void {
  wishes.value = { ...wishes.peek(), use };
}

/** Sets what the best board is best for. */
export function setBoardAim(aim: Aim): void {
  wishes.value = { ...wishes.peek(), aim };
}

/** Pins a card, so that every best board has it, or lets it go. */
export function setPinned(id: CardId, isPinned: boolean): void {
  const others = wishes.peek().held.filter((other) => other !== id);
  wishes.value = { ...wishes.peek(), held: isPinned ? [...others, id] : others };
}

/** Keeps a board under a name; a name that is taken gets a number. Can be undone. */
export function keepBoard(name: string, board: Board): void {
  const free = freeName(name, kept.peek());
  putKept([...kept.peek(), { name: free, board }], `Kept as “${free}”.`);
}

/** Gives a kept board another name; can be undone. */
export function renameBoard(from: string, to: string): void {
  const others = kept.peek().filter(({ name }) => name !== from);
  const free = freeName(to, others);
  const renamed = kept.peek().map((each) => (each.name === from ? { ...each, name: free } : each));
  putKept(renamed, `“${from}” is now “${free}”.`);
}

/** Keeps a board no longer; can be undone. */
export function removeBoard(name: string): void {
  putKept(
    kept.peek().filter((each) => each.name !== name),
    `Removed “${name}”.`,
  );
}

function putKept(next: InferOutput<typeof keptSchema>, said: string): void {
  change(
    kept,
    next.toSorted((one, other) => one.name.localeCompare(other.name)),
    said,
  );
}

function putAside(board: Board): void {
  if (board.piles.some((pile) => pile.length === 0)) return;
  if (kept.peek().some((each) => isSame(each.board, board))) return;
  const others = earlier.peek().filter((each) => !isSame(each, board));
  earlier.value = [board, ...others].slice(0, mostEarlier);
}

/** Whether two boards have the same cards in the same piles, in whatever order. */
export function isSame(one: Board, other: Board): boolean {
  return keyOf(one) === keyOf(other);
}

function keyOf({ shape, piles }: Board): string {
  return [shape, ...piles.map((pile) => pile.toSorted().join(' '))].join('|');
}

function freeName(wanted: string, taken: readonly { readonly name: string }[]): string {
  const name = wanted.trim();
  const isTaken = (text: string) => taken.some((each) => each.name === text);
  if (!isTaken(name)) return name;
  let number = 2;
  while (isTaken(`${name} ${number}`)) number += 1;
  return `${name} ${number}`;
}

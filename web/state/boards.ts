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
import type { ClassId } from '../../core/ids.ts';
import type { CardId } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { cardsOnCard } from '../../core/language/syllable-card.ts';
import { isCard, isCards } from '../../core/log/is-card.ts';
import { isBoard } from '../../core/log/is-drill.ts';
import { remembered } from '../device/remembered.ts';
import { groupKey } from './open-class.ts';
import { change } from './undo.ts';

/** What a board is for: a screen that skips words, cards on paper, or paper with no rule broken. */
export const BOARD_USES = ['screen', 'paper', 'strict'] as const;
export type BoardUse = (typeof BOARD_USES)[number];

const boardSchema = custom<Board>(isBoard);

const tableSchema = object({
  /** The board that lay on the table before each group had its own: it lies there for a group that has none yet. */
  board: nullable(boardSchema),
  /** The board that lies on the table, by group. */
  boards: optional(record(string(), nullable(boardSchema)), {}),
  /** The most cards of each pile, by shape, where she has set it. */
  room: optional(record(string(), array(pipe(number(), integer(), minValue(1), maxValue(40)))), {}),
});

const table = remembered<InferOutput<typeof tableSchema>>('board', tableSchema, {
  board: null,
  boards: {},
  room: {},
});

const groupWishesSchema = object({
  held: array(custom<CardId>(isCard)),
  /** Look-alikes that are to lie in one pile and be turned one into the other. */
  contrast: nullable(custom<readonly CardId[]>(isCards)),
});

/** The pinned cards lie under `held`, as they always did on this device; those of a group that has its own under `of`. */
const wishesSchema = object({
  held: array(custom<CardId>(isCard)),
  use: picklist(BOARD_USES),
  aim: optional(picklist(AIMS), 'today'),
  of: optional(record(string(), groupWishesSchema), {}),
});

const wishes = remembered('board-wishes', wishesSchema, {
  held: [],
  use: 'screen',
  aim: 'today',
  of: {},
});

/** `group` is empty for a board that was kept before boards belonged to groups: it is there for all of them. */
const keptSchema = array(
  object({ name: string(), board: boardSchema, group: optional(string(), '') }),
);

const kept = remembered('boards', keptSchema, []);

/** The most boards put aside by themselves; the oldest go first. */
const mostEarlier = 12;

/** Those that were put aside before each group had its own. */
const earlier = remembered('earlier-boards', array(boardSchema), []);

const earlierByGroup = remembered(
  'earlier-boards-by-group',
  record(string(), array(boardSchema)),
  {},
);

/** What lies there for the group, cards that are not known here among it. */
const laid = computed<Board | null>(() => {
  const { board, boards } = table.value;
  const own = boards[groupKey.value];
  return own === undefined ? board : own;
});

/** The board on the table, without the cards that are not known here; null before the first. */
export const boardOnTable = computed<Board | null>(() => {
  const board = laid.value;
  if (board === null || board.piles.every((pile) => pile.every(isKnown))) return board;
  return { ...board, piles: board.piles.map((pile) => pile.filter(isKnown)) };
});
/** Cards of the board on the table that are not known here, as a newer version may have laid. */
export const notKnownHere = computed<readonly string[]>(() =>
  (laid.value?.piles.flat() ?? []).filter((id) => !isKnown(id)),
);

function isKnown(id: CardId): boolean {
  return cardsOnCard(id).every((own) => correspondenceById.has(own));
}

/** Room in the piles of a shape, where she has set it. */
export const roomByShape = computed(() => table.value.room);
/** Cards that every best board of the group must have. */
export const pinnedCards = computed<readonly CardId[]>(() => wishesOfGroup().held);
/** Two or three look-alikes that the group's best board is to have in one pile; null: as it comes. */
export const boardContrast = computed<readonly CardId[] | null>(() => wishesOfGroup().contrast);
/** What the board is for. */
export const boardUse = computed<BoardUse>(() => wishes.value.use);
/** What the best board is best for. */
export const boardAim = computed<Aim>(() => wishes.value.aim);
/** The boards that she keeps for the group, in the order of their names; `isForAll` where they are every group's. */
export const keptBoards = computed<
  readonly { readonly name: string; readonly board: Board; readonly isForAll: boolean }[]
>(() => keptHere().map(({ name, board, group }) => ({ name, board, isForAll: group === '' })));
/** Boards of the group that others took the place of, the newest first. */
export const earlierBoards = computed<readonly Board[]>(() => {
  const own = earlierByGroup.value[groupKey.value] ?? [];
  const others = earlier.value.filter((board) => !own.some((each) => isSame(each, board)));
  return [...own, ...others].slice(0, mostEarlier);
});

/** What she wishes of the boards of the group at work. */
function wishesOfGroup(): InferOutput<typeof groupWishesSchema> {
  const { of, held } = wishes.value;
  return of[groupKey.value] ?? { held, contrast: null };
}

function keptHere(): InferOutput<typeof keptSchema> {
  return kept.value.filter(({ group }) => group === '' || group === groupKey.value);
}

/** Lays a changed board; can be undone. */
export function layBoard(board: Board, said: string): void {
  const now = table.peek();
  change(table, { ...now, boards: { ...now.boards, [groupKey.peek()]: board } }, said);
}

/** Lays another board; one that made words is put aside, unless it is kept under a name. */
export function replaceBoard(board: Board, said: string): void {
  const before = laid.peek();
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
  const now = wishesOfGroup();
  const others = now.held.filter((other) => other !== id);
  setGroupWishes({ ...now, held: isPinned ? [...others, id] : others });
}

/** Sets which look-alikes the best board is to have in one pile. */
export function setBoardContrast(contrast: readonly CardId[] | null): void {
  setGroupWishes({ ...wishesOfGroup(), contrast });
}

function setGroupWishes(own: InferOutput<typeof groupWishesSchema>): void {
  const now = wishes.peek();
  wishes.value = { ...now, of: { ...now.of, [groupKey.peek()]: own } };
}

/** Keeps a board of the group under a name; a name that is taken gets a number. Can be undone. */
export function keepBoard(name: string, board: Board): void {
  const free = freeName(name, keptHere());
  putKept([...kept.peek(), { name: free, board, group: groupKey.peek() }], `Kept as “${free}”.`);
}

/** Gives a kept board another name; can be undone. */
export function renameBoard(from: string, to: string): void {
  const own = keptHere().find(({ name }) => name === from);
  const free = freeName(
    to,
    keptHere().filter((each) => each !== own),
  );
  const renamed = kept.peek().map((each) => (each === own ? { ...each, name: free } : each));
  putKept(renamed, `“${from}” is now “${free}”.`);
}

/** Keeps a board no longer; can be undone. */
export function removeBoard(name: string): void {
  const own = keptHere().find((each) => each.name === name);
  putKept(
    kept.peek().filter((each) => each !== own),
    `Removed “${name}”.`,
  );
}

/** Leaves no board of a class that was deleted. */
export function forgetBoards(deleted: ClassId): void {
  const isOthers = (key: string): boolean => !key.startsWith(`${deleted} `);
  const others = <Value>(byGroup: Readonly<Record<string, Value>>): Record<string, Value> =>
    Object.fromEntries(Object.entries(byGroup).filter(([key]) => isOthers(key)));
  kept.value = kept.peek().filter(({ group }) => isOthers(group));
  table.value = { ...table.peek(), boards: others(table.peek().boards) };
  wishes.value = { ...wishes.peek(), of: others(wishes.peek().of) };
  earlierByGroup.value = others(earlierByGroup.peek());
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
  if (keptHere().some((each) => isSame(each.board, board))) return;
  const key = groupKey.peek();
  const all = earlierByGroup.peek();
  const others = (all[key] ?? []).filter((each) => !isSame(each, board));
  earlierByGroup.value = { ...all, [key]: [board, ...others].slice(0, mostEarlier) };
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

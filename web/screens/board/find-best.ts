import { makeWordTable } from '../../../core/boards/judge/word-table.ts';
import { type Aim, aimWishes, type DayCards } from '../../../core/boards/search/aims.ts';
import type { BoardWishes } from '../../../core/boards/search/board-wishes.ts';
import { pilesToSearch } from '../../../core/boards/search/find-board.ts';
import { wishesInSyllables } from '../../../core/boards/search/syllable-piles.ts';
import type { Shape } from '../../../core/boards/shapes/shapes.ts';
import { splitPiles } from '../../../core/boards/shapes/split-piles.ts';
import { cardsTaught } from '../../../core/boards/shapes/taught-cards.ts';
import { pairsAmong } from '../../../core/drills/contrasts.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Taught } from '../../../core/language/taught.ts';
import type { BoardUse } from '../../state/boards.ts';
import type { Engine } from '../../state/engine.ts';
import { inTurns } from './in-turns.ts';
import type { SearchAnswer, SearchNews, SearchTask } from './search-worker.ts';

/** What the best board is asked for. */
export interface BestWish {
  readonly shape: Shape;
  readonly taught: Taught;
  readonly ready: Engine;
  readonly room: readonly number[];
  /** Cards that the board must have. */
  readonly pinned: readonly CardId[];
  readonly use: BoardUse;
  /** Look-alikes to lie in one pile and be turned one into the other; null: as it comes. */
  readonly contrast: readonly CardId[] | null;
  /** What it is to be best for, and what the day is about. */
  readonly aim: Aim;
  readonly day: DayCards;
}

/** The best board, or why there is none; null when it was called off. */
export type Best =
  | (Extract<SearchAnswer, { kind: 'found' }> & {
      /** How many cards were left aside because there are too many rows to judge. */
      readonly leftAside: number;
      /** Whether the search goes on beside it, for a proof or a better board. */
      readonly goesOn: boolean;
    })
  | Extract<SearchAnswer, { kind: 'none' }>
  | null;

/** What a question for the best board is called off by, and whom its progress is told. */
interface Asking {
  readonly isOver: () => boolean;
  readonly tell: (share: number) => void;
  readonly hear: (best: Best) => void;
}

/** How many rows are judged at most: what a school computer does in a few seconds. */
const MOST_ROWS = { quick: 120_000, slow: 40_000 };
/** How many rows are judged in one go: less than half a frame. */
const ROWS_AT_ONCE = { quick: 2500, slow: 150 };

/** How many rows of a shape can be judged without anyone noticing. */
export function rowsAtOnce(shape: Shape): number {
  return ROWS_AT_ONCE[pace(shape)];
}

/** Rows of longer words are judged one by one, others share their work. */
function pace({ form, piles }: Shape): 'quick' | 'slow' {
  return form === 'one' && piles.length <= 3 ? 'quick' : 'slow';
}

/**
 * The best board for a wish: all rows are judged in turns on this page, so that
 * her own decisions about words count, and the search runs beside it. `tell`
 * hears the share of rows judged, 0 to 1. A search that has not proven its board
 * soon goes on, and `hear` is told how it ended, unless it is over before that.
 * Rejects when the search cannot start.
 */
export async function findBest(
  { shape, taught, ready, room, pinned, use, contrast, aim, day }: BestWish,
  { isOver, tell, hear }: Asking,
): Promise<Best> {
  const asked: BoardWishes = {
    ...aimWishes(aim, day),
    limits: room,
    pinned,
    clean: use !== 'screen',
    strict: use === 'strict',
    ...(contrast === null ? {} : { contrasts: pairsAmong(contrast) }),
  };
  const context = { taught, lexicon: ready.lexicon, screen: ready.screen };
  const mostRows = MOST_ROWS[pace(shape)];
  const search = pilesToSearch(
    shape,
    cardsTaught(taught),
    asked,
    context,
    shape.form === 'beats' ? undefined : mostRows,
  );
  if (search.kind !== 'piles') return { kind: 'none', message: search.message };
  const { piles, leftAside } = search;
  const wishes = shape.form === 'beats' ? wishesInSyllables(piles, asked) : asked;
  const parts = splitPiles(piles, rowsAtOnce(shape));
  const outcomes = new Uint8Array(piles.reduce((size, pile) => size * pile.length, 1));
  let judged = 0;
  const work = parts.map((part) => () => {
    const table = makeWordTable(shape, part, context);
    outcomes.set(table.outcomes, judged);
    judged += table.outcomes.length;
    tell(judged / outcomes.length);
  });
  if (!(await inTurns(work, isOver))) return null;
  const asBest = ({ answer, goesOn }: SearchNews): Best =>
    answer.kind === 'none' ? answer : { ...answer, leftAside, goesOn };
  return searchBeside({ shape: shape.id, piles, outcomes, wishes }, isOver, (news) =>
    hear(asBest(news)),
  ).then((news) => news && asBest(news));
}

/** How often it is asked whether the search was called off, in milliseconds. */
const LOOK_EVERY = 100;

/** The first news of a search that runs beside the page; `hear` is told what comes after that. */
function searchBeside(
  task: SearchTask,
  isOver: () => boolean,
  hear: (news: SearchNews) => void,
): Promise<SearchNews | null> {
  return new Promise((done, fail) => {
    const worker = new Worker(new URL('./search-worker.ts', import.meta.url), { type: 'module' });
    let isFirst = true;
    const end = () => {
      clearInterval(looking);
      worker.terminate();
    };
    const looking = setInterval(() => {
      if (!isOver()) return;
      end();
      done(null);
    }, LOOK_EVERY);
    worker.onmessage = ({ data }: MessageEvent<SearchNews>) => {
      if (!data.goesOn || isOver()) end();
      if (isFirst) done(isOver() ? null : data);
      else if (!isOver()) hear(data);
      isFirst = false;
    };
    worker.onerror = () => {
      end();
      fail(new Error('the board search could not start'));
    };
    worker.postMessage(task);
  });
}

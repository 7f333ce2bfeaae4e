import type { WordTable } from '../../../core/boards/judge/word-table.ts';
import { searchTable } from '../../../core/boards/search/best-board.ts';
import type { BoardWishes } from '../../../core/boards/search/board-wishes.ts';
import { shapeById } from '../../../core/boards/shapes/shape-list.ts';
import type { CardId } from '../../../core/language/card-id.ts';

/** What the search is asked: a judged table without its words, which it does not need. */
export interface SearchTask {
  readonly shape: string;
  readonly piles: WordTable['piles'];
  readonly outcomes: Uint8Array;
  readonly wishes: BoardWishes;
}

/** What it answers: a board with what is proven of it, or why there is none. */
export type SearchAnswer =
  | {
      readonly kind: 'found';
      readonly piles: readonly (readonly CardId[])[];
      readonly value: number;
      readonly bound: number;
      readonly optimal: boolean;
    }
  | { readonly kind: 'none'; readonly message: string };

/** An answer, and whether the search goes on for a proof or a better board. */
export interface SearchNews {
  readonly answer: SearchAnswer;
  readonly goesOn: boolean;
}

/** How many subproblems are looked at first; four times as many in each further go. */
const FIRST_NODES = 400;
const MOST_NODES = 25_600;
/** After so many milliseconds no further go is begun; the last one may take four times as long. */
const PATIENCE = 900;
/** How far a search of more than three piles goes at last; one of three goes on to the proof. */
const LAST_NODES = 240_000;

addEventListener('message', ({ data }: MessageEvent<SearchTask>) => {
  const first = soon(data);
  const goesOn = first.kind === 'found' && !first.optimal;
  postMessage({ answer: first, goesOn } satisfies SearchNews);
  if (!goesOn) return;
  const nodeLimit = data.piles.length > 3 ? LAST_NODES : Number.POSITIVE_INFINITY;
  postMessage({ answer: search(data, nodeLimit), goesOn: false } satisfies SearchNews);
});

/** Ever longer searches, until the board is proven best or she would have to wait too long. */
function soon(task: SearchTask): SearchAnswer {
  let found = search(task, FIRST_NODES);
  for (let nodes = FIRST_NODES * 4; nodes <= MOST_NODES; nodes *= 4) {
    if (found.kind !== 'found' || found.optimal || performance.now() > PATIENCE) break;
    found = search(task, nodes);
  }
  return found;
}

function search(
  { shape: id, piles, outcomes, wishes }: SearchTask,
  nodeLimit: number,
): SearchAnswer {
  const shape = shapeById.get(id);
  if (!shape) throw new Error(`there is no shape ${id}`);
  const found = searchTable({ shape, piles, outcomes, words: [] }, { ...wishes, nodeLimit });
  if (found.kind !== 'found') return { kind: 'none', message: found.message };
  const { board, value, bound, optimal } = found;
  return { kind: 'found', piles: board.piles, value, bound, optimal };
}

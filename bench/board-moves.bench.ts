import { readFileSync } from 'node:fs';
import { gainsOnBoard, tallyOf, withOnly } from '../core/boards/judge/card-gain.ts';
import { makeRowJudge, type RowJudge } from '../core/boards/judge/row-judge.ts';
import { makeWordTable } from '../core/boards/judge/word-table.ts';
import { shapeById } from '../core/boards/shapes/shape-list.ts';
import { candidates, type Shape } from '../core/boards/shapes/shapes.ts';
import { cardsTaught } from '../core/boards/shapes/taught-cards.ts';
import type { CardId } from '../core/language/card-id.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { type Measurement, measure } from './measure.ts';

const taught = taughtUpTo(SEQUENCE, 999);
const context = {
  taught,
  lexicon: decodeLexicon(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url))),
  screen: createWordScreen(SCREEN_DATA),
};

/**
 * What a teacher waits for when one card moves: the board's counts and what each
 * card adds, with the rows judged before remembered; beside it the same with all
 * rows judged again. One frame is 16 ms.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const rows: Measurement[] = [];
  for (const [id, sizes] of BOARDS) {
    const shape = shapeById.get(id) as Shape;
    const cards = candidates(shape, cardsTaught(taught));
    const piles = cards.map((pile, at) => pile.slice(0, sizes[at]).map((card) => card.id));
    const others = (cards[0] ?? []).slice(sizes[0]).map((card) => card.id);
    const first = (turn: number): CardId => others[turn % others.length] as CardId;
    const moved = (turn: number) => [
      [...(piles[0] ?? []).slice(1), first(turn)],
      ...piles.slice(1),
    ];
    const board = sizes.join(' × ');
    let judge: RowJudge = makeRowJudge(shape, context);
    let turn = 0;
    rows.push(
      await measure({
        name: `a new card on ${board}, counted`,
        aim: 16,
        run: () => {
          if (turn % others.length === 0) judge = warm(shape, piles);
          const table = judge.table(moved(turn));
          tallyOf(judge.table(withOnly(piles, 0, first(turn))));
          turn += 1;
          return gainsOnBoard(table);
        },
      }),
      await measure({
        name: 'the same, all judged again',
        run: () => gainsOnBoard(makeWordTable(shape, moved(turn++), context)),
      }),
    );
  }
  return rows;
}

const BOARDS = [
  ['closed', [12, 6, 12]],
  ['base-ending', [6, 4, 6, 4]],
  ['doubled', [4, 3, 4, 3, 4]],
] as const;

function warm(shape: Shape, piles: readonly (readonly CardId[])[]): RowJudge {
  const judge = makeRowJudge(shape, context);
  judge.table(piles);
  return judge;
}

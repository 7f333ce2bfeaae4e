import './board.css';
import { FirstTime } from '../../controls/first-time.tsx';
import './board-words.css';
import { useEffect, useMemo } from 'preact/hooks';
import { makeRowJudge } from '../../../core/boards/judge/row-judge.ts';
import { parseBoardLink } from '../../../core/boards/shapes/board-link.ts';
import { shapeById } from '../../../core/boards/shapes/shape-list.ts';
import type { Shape } from '../../../core/boards/shapes/shapes.ts';
import { shapesFor } from '../../../core/boards/shapes/shapes-for.ts';
import { boardOnTable, notKnownHere, replaceBoard, roomByShape } from '../../state/boards.ts';
import type { Engine } from '../../state/engine.ts';
import { engine, readyEngine, startEngine } from '../../state/engine-ready.ts';
import { newestCards } from '../../state/newest-cards.ts';
import { progress, taught } from '../../state/progress.ts';
import { asked, linkTo, takeAsked } from '../../state/route.ts';
import type { BoardDesk } from './desk.ts';
import { fittingCards } from './fitting-cards.ts';
import { trayOf } from './moves.ts';
import { usualRoom } from './room.ts';
import { tell } from './said.ts';
import { Table } from './table.tsx';
import { useRows } from './use-rows.ts';
import { say } from './wording.ts';

/** The board screen: piles as they lie on a table, and all that they say. */
export function BoardPage() {
  const ready = readyEngine();
  const known = taught.value;
  const newest = newestCards(progress.value);
  const [first] = useMemo(() => shapesFor(known, newest), [known]);
  const shape = shapeById.get(boardOnTable.value?.shape ?? '') ?? first;
  useEffect(takeLink, [asked.value]);
  return (
    <div class="board-screen">
      {notKnownHere.value.length > 0 && (
        <p class="quiet" role="status">
          {say.board.notKnownHerePerhaps(notKnownHere.value.join(', '))}
        </p>
      )}
      {ready && shape ? (
        <Laid ready={ready} shape={shape} />
      ) : (
        <Waiting canLay={shape !== undefined} />
      )}
    </div>
  );
}

/** A board that the address names lies on the table from now on; what lay there is put aside. */
function takeLink(): void {
  const link = asked.peek();
  if (link === '') return;
  const read = parseBoardLink(link);
  if (read.kind === 'board') replaceBoard(read.board, say.board.openedTheBoard);
  else tell(say.board.yourOwnBoardLies(read.message));
  takeAsked();
}

function Laid({ ready, shape }: { readonly ready: Engine; readonly shape: Shape }) {
  const known = taught.value;
  const board = boardOnTable.value;
  const judge = useMemo(
    () => makeRowJudge(shape, { taught: known, lexicon: ready.lexicon, screen: ready.screen }),
    [shape, known, ready],
  );
  const fitting = useMemo(() => fittingCards(shape, known, ready), [shape, known, ready]);
  const piles = useMemo(
    () => (board?.shape === shape.id ? board.piles : shape.piles.map(() => [])),
    [shape, board],
  );
  const tray = useMemo(() => trayOf(piles, fitting), [piles, fitting]);
  const rows = useRows(judge, piles, tray);
  const room = roomFor(shape, piles);
  const desk: BoardDesk = { ready, taught: known, shape, judge, piles, tray, room, rows };
  return (
    <>
      <FirstTime of="clean board" />
      <Table desk={desk} />
    </>
  );
}

/** Room as she set it or as usual, and never less than lies there. */
function roomFor(shape: Shape, piles: BoardDesk['piles']): readonly number[] {
  const own = roomByShape.value[shape.id];
  return usualRoom(shape).map((usual, at) => Math.max(own?.[at] ?? usual, piles[at]?.length ?? 0));
}

function Waiting({ canLay }: { readonly canLay: boolean }) {
  if (!canLay) {
    return (
      <>
        <h1>{say.board.board}</h1>
        <p class="empty-board">{say.board.aBoardNeeds}</p>
        <a class="button next" href={linkTo('learned')}>
          {say.board.whatHaveTheyLearned}
        </a>
      </>
    );
  }
  const failed = engine.value === 'failed';
  return (
    <>
      <h1>{say.board.board}</h1>
      <p class="quiet">{failed ? say.board.theWordListDid : say.board.fetchingTheWordList}</p>
      {failed && (
        <button type="button" class="button" onClick={startEngine}>
          {say.board.tryAgain}
        </button>
      )}
    </>
  );
}

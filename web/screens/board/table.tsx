import { useEffect, useState } from 'preact/hooks';
import { makeBoardLink } from '../../../core/boards/shapes/board-link.ts';
import { CopyButton } from '../../controls/copy-button.tsx';
import { useDrag } from '../../controls/drag.ts';
import { FileButton } from '../../controls/file-button.tsx';
import { Popover } from '../../controls/popover.tsx';
import { earlierBoards, keptBoards, setPinned } from '../../state/boards.ts';
import { linkTo } from '../../state/route.ts';
import { BeatWords } from './beat-words.tsx';
import { callOff, isFound, layBest, searching, Told } from './best.tsx';
import { CardSheet } from './card-sheet.tsx';
import { ShapeChoice, UseChoice } from './choices.tsx';
import { Counts, LeftOut } from './counts.tsx';
import { DayShare } from './day-share.tsx';
import { type BoardDesk, gainOf, lettersOf, out, put } from './desk.ts';
import { useForToday } from './for-today.ts';
import { Keep, KeptBoards } from './kept.tsx';
import { type Lying, parseLying, TRAY } from './moves.ts';
import { Pile } from './pile.tsx';
import { tell } from './said.ts';
import { Tray } from './tray.tsx';
import { useKeys } from './use-keys.ts';
import { WordGrid } from './word-grid.tsx';
import { say } from './wording.ts';

type Open =
  | {
      readonly what: 'card';
      readonly anchor: HTMLElement;
      readonly card: Lying;
      readonly from: number;
    }
  | { readonly what: 'keep' | 'boards'; readonly anchor: HTMLElement };

/** The table: piles, what they make, what could lie there too, and every word. */
export function Table({ desk }: { readonly desk: BoardDesk }) {
  const { shape, piles, rows } = desk;
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  const root = useDrag((what, at) => {
    const card = parseLying(what);
    if (at !== TRAY) put(desk, card, Number(at));
    else if (card.pile !== null) out(desk, card.id, card.pile);
  });
  useKeys(root, desk);
  useEffect(() => callOff, []);
  const board = { shape: shape.id, piles };
  const isEmpty = piles.every((pile) => pile.length === 0);
  const best = isFound(desk);
  const kept = keptBoards.value.length;
  const earlier = earlierBoards.value.length;
  return (
    <>
      <div class="board-head">
        <h1>{say.table.board}</h1>
        <p class="board-tools">
          <ShapeChoice desk={desk} />
          <UseChoice desk={desk} />
          <BestButton desk={desk} isNext={!best} />
          {!isEmpty && <TodayButton desk={desk} isNext={best} />}
        </p>
      </div>
      <div class="board-body">
        <div class="board-left" ref={root}>
          <div class={`board-piles of-${piles.length}`}>
            {piles.map((_, pile) => (
              <Pile
                key={`${shape.id} ${pile}`}
                desk={desk}
                pile={pile}
                onOpen={(id, from, anchor) =>
                  setOpen({ what: 'card', anchor, card: { id, pile: from }, from })
                }
              />
            ))}
          </div>
          <Counts desk={desk} />
          <Told desk={desk} />
          <Tray
            desk={desk}
            onOpen={(id, from, anchor) =>
              setOpen({ what: 'card', anchor, card: { id, pile: null }, from })
            }
          />
        </div>
        <section class="board-right" aria-labelledby="board-says">
          <h2 id="board-says">{say.table.whatThisBoardSays}</h2>
          <p class="board-tools board-keep">
            {!isEmpty && (
              <>
                <button
                  type="button"
                  class="button plain"
                  aria-haspopup="dialog"
                  onClick={(event) => setOpen({ what: 'keep', anchor: event.currentTarget })}
                >
                  {say.table.keepThisBoard}
                </button>
                <CopyButton
                  name={say.table.copyALink}
                  text={() =>
                    location.href.replace(/#.*$/, '') + linkTo('board', makeBoardLink(board))
                  }
                  said={say.table.copiedTheCards}
                />
              </>
            )}
            {rows.table && (
              <FileButton
                name={say.table.printSheet}
                class="button plain"
                make={async () => {
                  const { sheetFile } = await import('../../state/paper/paper-file.ts');
                  const { taught, ready } = desk;
                  const sources = { lexicon: ready.lexicon, screen: ready.screen, sentences: [] };
                  const stock = { today: null, table: board, taught, sources };
                  return sheetFile('board', stock, { source: 'table' });
                }}
              />
            )}
            {kept + earlier > 0 && (
              <button
                type="button"
                class="button plain"
                aria-haspopup="dialog"
                onClick={(event) => setOpen({ what: 'boards', anchor: event.currentTarget })}
              >
                {kept > 0 ? say.table.yourBoards(kept) : say.table.earlierBoards(earlier)}
              </button>
            )}
          </p>
          <DayShare desk={desk} />
          <LeftOut desk={desk} />
          {rows.table ? (
            shape.form === 'beats' ? (
              <BeatWords table={rows.table} />
            ) : (
              <WordGrid desk={desk} table={rows.table} />
            )
          ) : (
            <p class="quiet">{waiting(desk)}</p>
          )}
        </section>
      </div>
      <p class="quiet small keys">
        {say.table.dragACard(<kbd>1</kbd>, <kbd>{piles.length}</kbd>, <kbd>{say.table.del}</kbd>)}
      </p>
      {open?.what === 'card' && (
        <Popover anchor={open.anchor} title={lettersOf(open.card.id)} onClose={close}>
          <CardSheet
            desk={desk}
            card={open.card}
            gain={gainOf(
              desk,
              open.card.pile === null ? rows.tray : rows.lying,
              open.from,
              open.card.id,
            )}
            onDone={close}
            onBest={(id) => {
              setPinned(id, true);
              void layBest(desk);
            }}
          />
        </Popover>
      )}
      {open?.what === 'boards' && (
        <Popover
          anchor={open.anchor}
          title={kept > 0 ? say.table.yourBoardsAlone : say.table.earlierBoardsAlone}
          onClose={close}
        >
          <KeptBoards onDone={close} />
        </Popover>
      )}
      {open?.what === 'keep' && (
        <Popover anchor={open.anchor} title={say.table.keepThisBoard} onClose={close}>
          <Keep board={board} onDone={close} />
        </Popover>
      )}
    </>
  );
}

function waiting({ piles }: BoardDesk): string {
  if (piles.every((pile) => pile.length === 0)) {
    return say.table.putACardInto;
  }
  const isFull = piles.every((pile) => pile.length > 0);
  return isFull ? say.table.listeningToEveryCombination : say.table.onePileIsEmpty;
}

function BestButton({ desk, isNext }: { readonly desk: BoardDesk; readonly isNext: boolean }) {
  const share = searching.value;
  if (share !== null) {
    return (
      <button
        type="button"
        class="button"
        onClick={() => {
          callOff();
          tell(say.table.theSearchWasStopped);
        }}
      >
        {say.table.stop(
          share < 1 ? say.table.listening(Math.floor(share * 100)) : say.table.searching,
        )}
      </button>
    );
  }
  return (
    <button type="button" class={isNext ? 'button next' : 'button'} onClick={() => layBest(desk)}>
      {say.table.makeTheBestBoard}
    </button>
  );
}

function TodayButton({ desk, isNext }: { readonly desk: BoardDesk; readonly isNext: boolean }) {
  return (
    <button
      type="button"
      class={isNext ? 'button next' : 'button'}
      onClick={() => {
        const refused = useForToday(desk.shape.id, desk.piles);
        tell(refused ?? say.table.todaysBlendingUses);
      }}
    >
      {say.table.useItToday}
    </button>
  );
}

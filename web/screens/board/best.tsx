import { signal } from '@preact/signals';
import type { Board } from '../../../core/boards/shapes/board.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import {
  boardAim,
  boardContrast,
  boardOnTable,
  boardUse,
  isSame,
  pinnedCards,
  replaceBoard,
} from '../../state/boards.ts';
import { dayCards } from '../../state/day-cards.ts';
import { type BoardDesk, lettersOf, type Offer, offered, takeOffer } from './desk.ts';
import { type Best, findBest } from './find-best.ts';
import { said, tell } from './said.ts';
import { say } from './wording.ts';

/** How far the search is: the share of rows judged, 1 while it searches; null when none runs. */
export const searching = signal<number | null>(null);

/** What is known of the best board found last, as long as it lies there. */
const known = signal<{ readonly board: Board; readonly text: string; readonly isBest: boolean }>();

/** Why there was no board, until the next is asked for. */
const refusal = signal('');

let latest = 0;

/** Asks for the best board with the pinned cards and lays it; an earlier question is called off. */
export async function layBest(desk: BoardDesk): Promise<void> {
  latest += 1;
  const own = latest;
  let laid: Board | null = null;
  const before = boardOnTable.peek();
  const hasMoved = () => (laid ? !liesHere(laid) : boardOnTable.peek() !== before);
  const isOver = () => {
    if (own !== latest) return true;
    if (!hasMoved()) return false;
    callOff();
    tell(say.best.theSearchHasEnded);
    return true;
  };
  const lay = (best: Extract<Best, { kind: 'found' }>) => {
    const board = { shape: shape.id, piles: best.piles };
    if (laid === null || best.value > laidValue) {
      replaceBoard(board, laid === null ? say.best.theBestBoard : say.best.aBetterBoard);
      laid = board;
      laidValue = best.value;
    }
    known.value = { board: laid, text: proofInWords(best), isBest: best.optimal };
  };
  let laidValue = 0;
  refusal.value = '';
  tell('');
  searching.value = 0;
  const { shape, taught, ready, room } = desk;
  const wish = {
    ...{ shape, taught, ready, room, pinned: pinnedHere(desk) },
    ...{ use: boardUse.peek(), aim: boardAim.peek(), day: dayCards.peek() },
    contrast: shape.form === 'beats' ? null : boardContrast.peek(),
  };
  const best = await findBest(wish, {
    isOver,
    tell: (share) => {
      searching.value = share;
    },
    hear: (later) => {
      if (later?.kind === 'found') lay(later);
    },
  }).catch(
    (): Best => ({
      kind: 'none',
      message: say.best.theSearchCouldNot,
    }),
  );
  if (isOver()) return;
  searching.value = null;
  if (best === null) return;
  if (best.kind === 'none') refusal.value = best.message;
  else lay(best);
}

/** Calls off a search that runs. */
export function callOff(): void {
  latest += 1;
  searching.value = null;
}

/** Whether this is the board that was found last. */
export function isFound(desk: BoardDesk): boolean {
  const board = { shape: desk.shape.id, piles: desk.piles };
  return known.value !== undefined && isSame(known.value.board, board);
}

/** Whether a board lies on the table, untouched. */
function liesHere(board: Board): boolean {
  const here = boardOnTable.peek();
  return here !== null && isSame(here, board);
}

/** The pinned cards that can lie in this shape. */
function pinnedHere({ piles, tray }: BoardDesk): readonly CardId[] {
  return pinnedCards.peek().filter((id) => piles.flat().includes(id) || tray.flat().includes(id));
}

/** What was said last of the board, else what is proven of it, or why there is none. */
export function Told({ desk }: { readonly desk: BoardDesk }) {
  const offer = offered.value;
  const isBest = said.value === '' && searching.value === null && isFound(desk);
  return (
    <p
      class={`board-told ${isBest && known.value?.isBest ? 'best' : ''}`}
      role="status"
      aria-label={say.best.aboutThisBoard}
    >
      {refusal.value || said.value}
      {offer?.board === boardOnTable.value && offer && (
        <>
          {' '}
          <button type="button" class="button" onClick={() => takeOffer(desk, offer)}>
            {swapInWords(offer)}
          </button>
        </>
      )}
      {isBest && (
        <>
          {known.value?.text} <span class="quiet">{say.best.aFamiliarWordCounts}</span>
        </>
      )}
    </p>
  );
}

/** A swap and what it costs: `Swap it for k: −6 words`. */
function swapInWords({ card, swap: { out, words } }: Offer): string {
  const cost =
    words === 0
      ? say.best.asManyWords
      : `${words > 0 ? '+' : '−'}${say.best.words(Math.abs(words))}`;
  return say.best.inPlaceOf(lettersOf(card.id), lettersOf(out), cost);
}

/** A bound so many percent off says nothing to her. */
const VAGUE = 25;

function proofInWords(best: Extract<Best, { kind: 'found' }>): string {
  const { optimal, value, bound, leftAside, goesOn } = best;
  const among = leftAside > 0 ? say.best.amongTheCards : '';
  if (optimal) return say.best.provenBest(among);
  const more = Math.ceil((bound / Math.max(1, value) - 1) * 100);
  const could = more > VAGUE ? '' : say.best.anotherCouldBeWorth(more);
  return goesOn
    ? say.best.aGoodBoardStill(among, could)
    : say.best.theSearchHasEndedAGood(among, could);
}

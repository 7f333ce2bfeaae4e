import { useMemo } from 'preact/hooks';
import { AIMS, type Aim } from '../../../core/boards/search/aims.ts';
import { shapeById } from '../../../core/boards/shapes/shape-list.ts';
import type { Shape } from '../../../core/boards/shapes/shapes.ts';
import { type LaterShape, laterShapes, shapesFor } from '../../../core/boards/shapes/shapes-for.ts';
import { contrastChoices, contrastThrees } from '../../../core/drills/contrasts.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { taughtUpTo } from '../../../core/sequence/teach.ts';
import { accent } from '../../state/accent.ts';
import {
  BOARD_USES,
  type BoardUse,
  boardAim,
  boardContrast,
  boardUse,
  pinnedCards,
  replaceBoard,
  roomByShape,
  setBoardAim,
  setBoardContrast,
  setBoardUse,
  setPinned,
} from '../../state/boards.ts';
import { newestCards } from '../../state/newest-cards.ts';
import { progress } from '../../state/progress.ts';
import { aimNames } from '../../wording/aim-names.ts';
import { contrastKey, contrastName } from '../../wording/contrast-name.ts';
import { type BoardDesk, lettersOf } from './desk.ts';
import { fittingCards } from './fitting-cards.ts';
import { carryOver } from './moves.ts';
import { usualRoom } from './room.ts';
import { say } from './wording.ts';

/** The kind of board: those for the newest cards first, then all others that can be laid. */
export function ShapeChoice({ desk }: { readonly desk: BoardDesk }) {
  const { shape, taught, piles } = desk;
  const newest = newestCards(progress.value);
  const [fresh, others] = useMemo(() => {
    const fitting = shapesFor(taught, newest);
    const all = shapesFor(taught);
    return [fitting, all.filter((each) => !fitting.includes(each))] as const;
  }, [taught]);
  const later = useMemo(() => {
    const { sequence } = progress.value;
    return laterShapes(taught, sequence.steps.length, (step) => taughtUpTo(sequence, step));
  }, [taught]);
  const isListed = [...fresh, ...others].includes(shape);
  return (
    <label class="board-choice">
      <span class="for-ears">{say.choices.kindOfBoard}</span>
      <select
        value={shape.id}
        onChange={(event) => {
          const next = shapeById.get(event.currentTarget.value);
          if (!next) return;
          const cards = fittingCards(next, taught, desk.ready);
          const room = roomByShape.peek()[next.id] ?? usualRoom(next);
          replaceBoard({ shape: next.id, piles: carryOver(piles, cards, room) }, `${next.title}.`);
        }}
      >
        {!isListed && <Choice shape={shape} />}
        <optgroup label={say.choices.forTheNewestCards}>
          {fresh.map((each) => (
            <Choice key={each.id} shape={each} />
          ))}
        </optgroup>
        {others.length > 0 && (
          <optgroup label={say.choices.others}>
            {others.map((each) => (
              <Choice key={each.id} shape={each} />
            ))}
          </optgroup>
        )}
        {later.length > 0 && (
          <optgroup label={say.choices.notYet}>
            {later.map((each) => (
              <option key={each.shape.id} disabled>
                {each.shape.title}: {laterInWords(each)}
              </option>
            ))}
          </optgroup>
        )}
      </select>
    </label>
  );
}

const lacking: Readonly<Record<LaterShape['lacks'], string>> = {
  'long-words': say.choices.wordsOfTwoBeats,
  clusters: say.choices.twoConsonantsSide,
  cards: say.choices.itsCards,
};

/** Why a kind of board is not there yet, and when it will be. */
function laterInWords({ step, lacks }: LaterShape): string {
  return step === null
    ? say.choices.yourOrderHasNo(lacking[lacks])
    : say.choices.fromStepWith(step, lacking[lacks]);
}

function Choice({ shape }: { readonly shape: Shape }) {
  return (
    <option value={shape.id}>
      {shape.title} ({shape.example})
    </option>
  );
}

/** Which look-alikes are to lie in one pile: those that fit one of this board. */
function ContrastChoice({ desk: { shape, taught, piles, tray } }: { readonly desk: BoardDesk }) {
  const chosen = boardContrast.value;
  const fits = (cards: readonly CardId[]): boolean =>
    piles.some((pile, at) => cards.every((id) => pile.includes(id) || tray[at]?.includes(id)));
  const all = useMemo(
    () => [...contrastChoices(taught, accent.value), ...contrastThrees(taught)].filter(fits),
    [taught, shape, accent.value],
  );
  if (all.length === 0) return null;
  const key = chosen === null ? '' : contrastKey(chosen);
  return (
    <label class="board-choice">
      <span class="for-ears">{say.choices.sideBySide}</span>
      <select
        value={all.some((each) => contrastKey(each) === key) ? key : ''}
        onChange={(event) => {
          const next = all.find((each) => contrastKey(each) === event.currentTarget.value);
          setBoardContrast(next ?? null);
        }}
      >
        <option value="">{say.choices.noPair}</option>
        {all.map((each) => (
          <option key={contrastKey(each)} value={contrastKey(each)}>
            {say.choices.sideBySidePair(contrastName(each))}
          </option>
        ))}
      </select>
    </label>
  );
}

const useNames: Readonly<Record<BoardUse, string>> = {
  screen: say.choices.forTheScreen,
  paper: say.choices.forCardsOnPaper,
  strict: say.choices.forPaperStrictly,
};

/** What the best board is to be fit for, and the cards it must have. */
export function UseChoice({ desk }: { readonly desk: BoardDesk }) {
  const pinned = pinnedCards.value;
  return (
    <>
      {desk.shape.form !== 'beats' && <ContrastChoice desk={desk} />}
      <label class="board-choice">
        <span class="for-ears">{say.choices.whatTheBestBoard}</span>
        <select
          value={boardAim.value}
          onChange={(event) => setBoardAim(event.currentTarget.value as Aim)}
        >
          {AIMS.map((aim) => (
            <option key={aim} value={aim}>
              {aimNames[aim]}
            </option>
          ))}
        </select>
      </label>
      <label class="board-choice">
        <span class="for-ears">{say.choices.whatTheBestBoardIsFor}</span>
        <select
          value={boardUse.value}
          onChange={(event) => setBoardUse(event.currentTarget.value as BoardUse)}
        >
          {BOARD_USES.map((use) => (
            <option key={use} value={use}>
              {useNames[use]}
            </option>
          ))}
        </select>
      </label>
      {pinned.length > 0 && (
        <span class="held-cards">
          <span class="quiet">{say.choices.with}</span>
          {pinned.map((id) => (
            <button
              key={id}
              type="button"
              class="held-card"
              aria-label={say.choices.holdNoLonger(lettersOf(id))}
              title={say.choices.holdNoLonger(lettersOf(id))}
              onClick={() => setPinned(id, false)}
            >
              {lettersOf(id)} <span aria-hidden="true">×</span>
            </button>
          ))}
        </span>
      )}
    </>
  );
}

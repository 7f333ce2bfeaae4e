import './bar.css';
import { isSightId } from '../../../core/language/card-id.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { PieceCard } from '../../controls/piece-card.tsx';
import { vibrate } from '../../device/vibrate.ts';
import type { KeyWish } from '../../warm-up/keys.ts';
import { lastMark } from '../../warm-up/marking.ts';
import { isOver, moments } from '../../warm-up/running.ts';
import { askedSaid } from '../../wording/asked-said.ts';
import { say } from './wording.ts';

interface BarProps {
  readonly now: Running;
  readonly onWish: (wish: KeyWish) => void;
}

/** What comes next, small, on the button that leads there; the box beside the row says it where there is one. */
function NextRow({ now: { standing } }: Pick<BarProps, 'now'>) {
  const next = momentAt({ ...standing, at: standing.at + 1 }, moments.value);
  if (!next) return null;
  return (
    <span class="next-row" aria-hidden="true">
      {next.part === 'auditory'
        ? askedSaid(next.sound)
        : next.pieces.map((piece, place) => <PieceCard key={place} piece={piece} />)}
    </span>
  );
}

/** What she does most, as large buttons with their keys; next lies at her hand. */
export function Bar({ now, onWish }: BarProps) {
  const { standing } = now;
  const moment = momentAt(standing, moments.value);
  const { turn, dictating } = standing;
  const button = (wish: KeyWish, name: string, key: string, extra = '') => (
    <button type="button" class={`button ${extra}`} onClick={() => onWish(wish)}>
      {name} <kbd class="key">{key}</kbd>
    </button>
  );
  if (isOver(now)) return <div class="desk-bar">{button('back', say.bar.back, '←')}</div>;
  const plain = turn === null && dictating === null;
  const isRow = moment?.part === 'blending';
  const isWord = moment?.part === 'visual' && isSightId(moment.id);
  return (
    <div class="desk-bar" role="toolbar" aria-label={say.bar.theWarmUp}>
      {button('back', say.bar.back, '←', 'desk-back')}
      {plain && (
        <button
          type="button"
          class="button desk-undo"
          disabled={lastMark.value === null}
          onClick={() => onWish('unmark')}
        >
          {say.bar.undo}
        </button>
      )}
      {plain && button('skip', say.bar.skip, 'X', 'desk-less')}
      {plain &&
        isWord &&
        button(
          'answer',
          standing.answer ? say.bar.hideThePart : say.bar.partToLearn,
          'T',
          'desk-less',
        )}
      {plain &&
        isRow &&
        button('answer', standing.answer ? say.bar.hideTheThumb : say.bar.real, 'T', 'desk-less')}
      {plain && button('pause', standing.paused ? say.bar.lift : say.bar.blank, 'B', 'desk-less')}
      <span class="desk-bar-gap" />
      {plain && (
        <button type="button" class="button desk-correct" onClick={() => onWish('correct')}>
          <span class="when-wide">{say.bar.myTurnOurTurn}</span>
          <span class="when-narrow">{say.bar.correctIt}</span> <kbd class="key">C</kbd>
        </button>
      )}
      {!plain &&
        button('leave', turn === null ? say.bar.endTheDictation : say.bar.leaveIt, say.bar.esc)}
      {plain && isRow && button('sweep', say.bar.sweep, '↓', 'desk-less')}
      <button
        type="button"
        class="button next desk-next"
        onClick={() => {
          vibrate();
          onWish('next');
        }}
      >
        {turn === null ? say.bar.next : say.bar.nextStep} <kbd class="key">{say.bar.space}</kbd>
        {plain && <NextRow now={now} />}
      </button>
    </div>
  );
}

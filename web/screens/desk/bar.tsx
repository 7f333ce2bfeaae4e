import './bar.css';
import { isSightId } from '../../../core/language/card-id.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { PieceCard } from '../../controls/piece-card.tsx';
import { vibrate } from '../../device/vibrate.ts';
import type { Wish } from '../../warm-up/keys.ts';
import { lastMark } from '../../warm-up/marking.ts';
import { isOver, moments } from '../../warm-up/running.ts';
import { askedSaid } from '../../wording/asked-said.ts';

interface BarProps {
  readonly now: Running;
  readonly onWish: (wish: Wish) => void;
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
  const button = (wish: Wish, name: string, key: string, extra = '') => (
    <button type="button" class={`button ${extra}`} onClick={() => onWish(wish)}>
      {name} <kbd class="key">{key}</kbd>
    </button>
  );
  if (isOver(now)) return <div class="desk-bar">{button('back', 'Back', '←')}</div>;
  const plain = turn === null && dictating === null;
  const isRow = moment?.part === 'blending';
  const isWord = moment?.part === 'visual' && isSightId(moment.id);
  return (
    <div class="desk-bar" role="toolbar" aria-label="The warm-up">
      {button('back', 'Back', '←', 'desk-back')}
      {plain && (
        <button
          type="button"
          class="button desk-undo"
          disabled={lastMark.value === null}
          onClick={() => onWish('unmark')}
        >
          Undo
        </button>
      )}
      {plain && button('skip', 'Skip', 'X', 'desk-less')}
      {plain &&
        isWord &&
        button('answer', standing.answer ? 'Hide the part' : 'Part to learn', 'T', 'desk-less')}
      {plain &&
        isRow &&
        button('answer', standing.answer ? 'Hide the thumb' : 'Real?', 'T', 'desk-less')}
      {plain && button('pause', standing.paused ? 'Lift' : 'Blank', 'B', 'desk-less')}
      <span class="desk-bar-gap" />
      {plain && (
        <button type="button" class="button desk-correct" onClick={() => onWish('correct')}>
          <span class="when-wide">My turn · our turn · your turn</span>
          <span class="when-narrow">Correct it</span> <kbd class="key">C</kbd>
        </button>
      )}
      {!plain && button('leave', turn === null ? 'End the dictation' : 'Leave it', 'Esc')}
      {plain && isRow && button('sweep', 'Sweep', '↓', 'desk-less')}
      <button
        type="button"
        class="button next desk-next"
        onClick={() => {
          vibrate();
          onWish('next');
        }}
      >
        {turn === null ? 'Next' : 'Next step'} <kbd class="key">space</kbd>
        {plain && <NextRow now={now} />}
      </button>
    </div>
  );
}

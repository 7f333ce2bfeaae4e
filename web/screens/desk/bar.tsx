import './bar.css';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import type { Wish } from '../../warm-up/keys.ts';
import { isOver, moments } from '../../warm-up/running.ts';

interface BarProps {
  readonly now: Running;
  readonly onWish: (wish: Wish) => void;
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
  return (
    <div class="desk-bar" role="toolbar" aria-label="The warm-up">
      {button('back', 'Back', '←')}
      {plain && button('skip', 'Skip', 'X')}
      {plain && isRow && button('answer', standing.answer ? 'Hide the thumb' : 'Real?', 'T')}
      {plain && button('pause', standing.paused ? 'Lift' : 'Blank', 'B')}
      <span class="desk-bar-gap" />
      {plain && (
        <button type="button" class="button" onClick={() => onWish('correct')}>
          <span class="when-wide">My turn · our turn · your turn</span>
          <span class="when-narrow">Correct it</span> <kbd class="key">C</kbd>
        </button>
      )}
      {!plain && button('leave', turn === null ? 'End the dictation' : 'Leave it', 'Esc')}
      {plain && isRow && button('sweep', 'Sweep', '↓')}
      {button('next', turn === null ? 'Next' : 'Next step', 'space', 'next desk-next')}
    </div>
  );
}

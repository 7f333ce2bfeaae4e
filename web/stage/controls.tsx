import './controls.css';
import { settings } from '../memory/settings.ts';
import type { Wish } from './keys.ts';
import type { Moment } from './moments.ts';

interface ControlsProps {
  readonly moment: Moment | undefined;
  readonly paused: boolean;
  readonly awake: boolean;
  readonly onWake: () => void;
  readonly onWish: (wish: Wish) => void;
}

/** What she can do, as buttons: shown when she reaches for them, gone when she faces the class. */
export function Controls({ moment, paused, awake, onWake, onWish }: ControlsProps) {
  const { successive, glimpse } = settings.value;
  const button = (wish: Wish, name: string, key: string, pressed?: boolean) => (
    <button
      type="button"
      class={wish === 'next' ? 'strong' : ''}
      aria-pressed={pressed}
      onClick={() => onWish(wish)}
    >
      {name} <kbd class="key">{key}</kbd>
    </button>
  );
  return (
    <>
      <button
        type="button"
        class="reach"
        aria-label="Show the buttons"
        aria-expanded={awake}
        onClick={onWake}
      >
        <span aria-hidden="true">···</span>
      </button>
      <div class={`controls${awake ? ' awake' : ''}`} role="toolbar" aria-label="The stage">
        {moment?.part === 'blending' && button('sweep', 'Sweep', '↓')}
        {button('next', 'Next', 'space')}
        {button('back', 'Back', '←')}
        {moment && button('skip', 'Skip', 'X')}
        {moment?.part === 'blending' && button('answer', 'Real?', 'T')}
        {moment?.part === 'auditory' && button('answer', 'Spellings', 'T')}
        {moment && button('pause', 'Blank', 'B', paused)}
        {moment?.part === 'blending' &&
          button('successive', 'One sound at a time', 'O', successive)}
        {button('glimpse', 'Glimpse', 'G', glimpse)}
        {button('keys', 'Keys', '?')}
        {button('leave', 'Leave', 'Esc')}
      </div>
    </>
  );
}

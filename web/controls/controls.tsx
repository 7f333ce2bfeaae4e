import './controls.css';
import type { Moment } from '../../core/warm-up/moments.ts';
import type { Blending } from '../../core/warm-up/standing.ts';
import { settings } from '../state/settings.ts';
import { wall } from '../state/wall.ts';
import type { Wish } from '../warm-up/keys.ts';
import { leadIsSilent, takeLead } from '../warm-up/lead-here.ts';

interface ControlsProps {
  readonly moment: Moment | undefined;
  readonly blending: Blending;
  readonly paused: boolean;
  /** Whether a desk leads: then only what concerns this window is offered. */
  readonly led: boolean;
  readonly awake: boolean;
  readonly onWake: () => void;
  readonly onWish: (wish: Wish) => void;
}

/** What she can do, as buttons: shown when she reaches for them, gone when she faces the class. */
export function Controls(props: ControlsProps) {
  const { moment, blending, paused, led, awake, onWake, onWish } = props;
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
        {!led && moment?.part === 'blending' && button('sweep', 'Sweep', '↓')}
        {!led && button('next', 'Next', 'space')}
        {!led && button('back', 'Back', '←')}
        {!led && moment && button('skip', 'Skip', 'X')}
        {!led && moment?.part === 'blending' && button('answer', 'Real?', 'T')}
        {!led && moment?.part === 'auditory' && button('answer', 'Spellings', 'T')}
        {!led && moment && button('pause', 'Blank', 'B', paused)}
        {!led && moment?.part === 'blending' && button('blending', shortNames[blending], 'O')}
        {!led && button('glimpse', 'Glimpse', 'G', settings.value.glimpse)}
        {leadIsSilent.value && wall.value === null && (
          <button type="button" onClick={takeLead}>
            Take over here
          </button>
        )}
        {led && button('full-screen', 'Full screen', 'F')}
        {button('keys', 'Keys', '?')}
        {button('leave', led ? 'Close' : 'Leave', 'Esc')}
      </div>
    </>
  );
}

/** How rows are blended, in her words. */
export const blendingNames: Readonly<Record<Blending, string>> = {
  whole: 'Whole row',
  sounds: 'One sound at a time',
  joined: 'Joined sounds',
};

const shortNames: Readonly<Record<Blending, string>> = {
  whole: 'Whole row',
  sounds: 'By sounds',
  joined: 'Joined',
};

import './controls.css';
import type { Moment } from '../../core/warm-up/moments.ts';
import type { Blending } from '../../core/warm-up/standing.ts';
import { settings } from '../state/settings.ts';
import { wall } from '../state/wall.ts';
import type { KeyWish } from '../warm-up/keys.ts';
import { leadIsSilent, takeLead } from '../warm-up/lead-here.ts';
import { say } from './wording.ts';

interface ControlsProps {
  readonly moment: Moment | undefined;
  readonly blending: Blending;
  readonly paused: boolean;
  /** Whether a desk leads: then only what concerns this window is offered. */
  readonly led: boolean;
  readonly awake: boolean;
  readonly onWake: () => void;
  readonly onWish: (wish: KeyWish) => void;
}

/** What she can do, as buttons: shown when she reaches for them, gone when she faces the class. */
export function Controls(props: ControlsProps) {
  const { moment, blending, paused, led, awake, onWake, onWish } = props;
  const button = (wish: KeyWish, name: string, key: string, pressed?: boolean) => (
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
        aria-label={say.controls.showTheButtons}
        aria-expanded={awake}
        onClick={onWake}
      >
        <span aria-hidden="true">···</span>
      </button>
      <div
        class={`controls${awake ? ' awake' : ''}`}
        role="toolbar"
        aria-label={say.controls.theStage}
      >
        {!led && moment?.part === 'blending' && button('sweep', say.controls.sweep, '↓')}
        {!led && button('next', say.controls.next, say.controls.space)}
        {!led && button('back', say.controls.back, '←')}
        {!led && moment && button('skip', say.controls.skip, 'X')}
        {!led && moment?.part === 'blending' && button('answer', say.controls.real, 'T')}
        {!led && moment?.part === 'auditory' && button('answer', say.controls.spellings, 'T')}
        {!led && moment && button('pause', say.controls.blank, 'B', paused)}
        {!led && moment?.part === 'blending' && button('blending', shortNames[blending], 'O')}
        {!led && button('glimpse', say.controls.glimpse, 'G', settings.value.glimpse)}
        {leadIsSilent.value && wall.value === null && (
          <button type="button" onClick={takeLead}>
            {say.controls.takeOverHere}
          </button>
        )}
        {led && button('full-screen', say.controls.fullScreen, 'F')}
        {button('keys', say.controls.keys, '?')}
        {button('leave', led ? say.controls.close : say.controls.leave, say.controls.esc)}
      </div>
    </>
  );
}

/** How rows are blended, in her words. */
export const blendingNames: Readonly<Record<Blending, string>> = {
  whole: say.controls.wholeRow,
  sounds: say.controls.oneSound,
  joined: say.controls.joinedSounds,
};

const shortNames: Readonly<Record<Blending, string>> = {
  whole: say.controls.wholeRow,
  sounds: say.controls.bySounds,
  joined: say.controls.joined,
};

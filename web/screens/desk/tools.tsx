import './tools.css';
import { isSightId } from '../../../core/language/card-id.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { setSettings, settings } from '../../state/settings.ts';
import type { KeyWish } from '../../warm-up/keys.ts';
import { moments } from '../../warm-up/running.ts';
import { say } from './wording.ts';

interface ToolsProps {
  readonly now: Running;
  readonly onWish: (wish: KeyWish) => void;
}

/** What she needs less often, which on a phone lies below, so that the thumb has room; and the light of its screen. */
export function Tools({ now: { standing }, onWish }: ToolsProps) {
  const moment = momentAt(standing, moments.value);
  const isRow = moment?.part === 'blending';
  const isWord = moment?.part === 'visual' && isSightId(moment.id);
  const isDim = settings.value.look === 'dark';
  const button = (wish: KeyWish, name: string) => (
    <button type="button" class="button" onClick={() => onWish(wish)}>
      {name}
    </button>
  );
  return (
    <section class="desk-box desk-tools" aria-label={say.tools.more}>
      {button('skip', say.tools.skip)}
      {isRow && button('sweep', say.tools.sweep)}
      {isRow && button('answer', standing.answer ? say.tools.hideTheThumb : say.tools.real)}
      {isWord && button('answer', standing.answer ? say.tools.hideThePart : say.tools.partToLearn)}
      {button('pause', standing.paused ? say.tools.lift : say.tools.blank)}
      <button
        type="button"
        class="button"
        aria-pressed={isDim}
        onClick={() => setSettings({ look: isDim ? 'paper' : 'dark' })}
      >
        {say.tools.dimThisScreen}
      </button>
    </section>
  );
}

import './tools.css';
import { isSightId } from '../../../core/language/card-id.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { setSettings, settings } from '../../state/settings.ts';
import type { Wish } from '../../warm-up/keys.ts';
import { moments } from '../../warm-up/running.ts';

interface ToolsProps {
  readonly now: Running;
  readonly onWish: (wish: Wish) => void;
}

/** What she needs less often, which on a phone lies below, so that the thumb has room; and the light of its screen. */
export function Tools({ now: { standing }, onWish }: ToolsProps) {
  const moment = momentAt(standing, moments.value);
  const isRow = moment?.part === 'blending';
  const isWord = moment?.part === 'visual' && isSightId(moment.id);
  const isDim = settings.value.look === 'dark';
  const button = (wish: Wish, name: string) => (
    <button type="button" class="button" onClick={() => onWish(wish)}>
      {name}
    </button>
  );
  return (
    <section class="desk-box desk-tools" aria-label="More">
      {button('skip', 'Skip')}
      {isRow && button('sweep', 'Sweep')}
      {isRow && button('answer', standing.answer ? 'Hide the thumb' : 'Real?')}
      {isWord && button('answer', standing.answer ? 'Hide the part' : 'Part to learn')}
      {button('pause', standing.paused ? 'Lift' : 'Blank')}
      <button
        type="button"
        class="button"
        aria-pressed={isDim}
        onClick={() => setSettings({ look: isDim ? 'paper' : 'dark' })}
      >
        Dim this screen
      </button>
    </section>
  );
}

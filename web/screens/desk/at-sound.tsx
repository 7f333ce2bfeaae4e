import { sightIn } from '../../../core/drills/sight.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import type { Moment } from '../../../core/warm-up/moments.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { perform } from '../../warm-up/acts.ts';
import { moments } from '../../warm-up/running.ts';
import { askedSaid } from '../../wording/asked-said.ts';
import { say } from './wording.ts';

/** The sound to say, and what the children look for; the stage shows it when she wishes. */
export function AtSound({
  now: { standing, dictated },
  moment,
}: {
  readonly now: Running;
  readonly moment: Moment & { readonly part: 'auditory' };
}) {
  const { spellings } = moment.sound;
  const word = sightIn(moment.sound);
  const keyword = spellings.map((id) => correspondenceById.get(id)?.keyword).find(Boolean);
  const isLast = momentAt({ ...standing, at: standing.at + 1 }, moments.value)?.part !== 'auditory';
  return (
    <div class="desk-said">
      <p>
        {say.atSound.say(<b class="desk-sound">{askedSaid(moment.sound)}</b>)}
        {keyword && <span class="quiet"> {say.atSound.asIn(keyword)}</span>}
      </p>
      <p class="quiet">
        {word !== null
          ? say.atSound.theySayItSpell
          : spellings.length === 1
            ? say.atSound.theyWriteOneSpelling
            : say.atSound.theyWriteSpellings(spellings.length)}
      </p>
      <p class="desk-ways">
        <button
          type="button"
          class="button"
          aria-pressed={standing.spellings}
          onClick={() => perform('spellings')}
        >
          {standing.spellings ? say.atSound.hideOnTheStage : say.atSound.revealOnTheStage}{' '}
          <kbd class="key">T</kbd>
        </button>
        {dictated.length > 0 && (
          <button
            type="button"
            class={isLast ? 'button strong' : 'button plain'}
            onClick={() => perform('dictate')}
          >
            {say.atSound.dictationWords(dictated.length, <kbd class="key">D</kbd>)}
          </button>
        )}
      </p>
    </div>
  );
}

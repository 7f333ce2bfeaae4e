import { sightIn } from '../../../core/drills/sight.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import type { Moment } from '../../../core/warm-up/moments.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { perform } from '../../warm-up/acts.ts';
import { moments } from '../../warm-up/running.ts';
import { askedSaid } from '../../wording/asked-said.ts';

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
        Say <b class="desk-sound">{askedSaid(moment.sound)}</b>
        {keyword && <span class="quiet"> as in {keyword}</span>}
      </p>
      <p class="quiet">
        {word !== null
          ? 'They say it, spell it aloud and write it.'
          : spellings.length === 1
            ? 'They write one spelling.'
            : `They write ${spellings.length} spellings.`}
      </p>
      <p class="desk-ways">
        <button
          type="button"
          class="button"
          aria-pressed={standing.spellings}
          onClick={() => perform('spellings')}
        >
          {standing.spellings ? 'Hide on the stage' : 'Reveal on the stage'}{' '}
          <kbd class="key">T</kbd>
        </button>
        {dictated.length > 0 && (
          <button
            type="button"
            class={isLast ? 'button strong' : 'button plain'}
            onClick={() => perform('dictate')}
          >
            Dictation: {dictated.length} words <kbd class="key">D</kbd>
          </button>
        )}
      </p>
    </div>
  );
}

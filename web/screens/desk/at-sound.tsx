import { correspondenceById } from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import type { Moment } from '../../../core/warm-up/moments.ts';
import type { Running } from '../../../core/warm-up/run-state.ts';
import { momentAt } from '../../../core/warm-up/standing.ts';
import { settings } from '../../state/settings.ts';
import { moments, perform } from '../../warm-up/running.ts';

/** The sound to say, and what the children look for; the stage shows it when she wishes. */
export function AtSound({
  now: { standing, dictated },
  moment,
}: {
  readonly now: Running;
  readonly moment: Moment & { readonly part: 'auditory' };
}) {
  const { phonemes, spellings } = moment.sound;
  const keyword = spellings.map((id) => correspondenceById.get(id)?.keyword).find(Boolean);
  const isLast = momentAt({ ...standing, at: standing.at + 1 }, moments.value)?.part !== 'auditory';
  return (
    <div class="desk-said">
      <p>
        Say <b class="desk-sound">{soundLabel(phonemes, settings.value.notation)}</b>
        {keyword && <span class="quiet"> as in {keyword}</span>}
      </p>
      <p class="quiet">
        {spellings.length === 1
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

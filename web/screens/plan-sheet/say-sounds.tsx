import type { AuditorySound } from '../../../core/drills/drill.ts';
import { type CardId, graphemeOf } from '../../../core/language/card-id.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import { Card } from '../../controls/card.tsx';
import { settings } from '../../state/settings.ts';

/** Part 2: the sounds to say, each with every spelling that children write. */
export function SaySounds({ sounds }: { readonly sounds: readonly AuditorySound[] }) {
  return (
    <section aria-labelledby="plan-auditory">
      <h3 id="plan-auditory">
        <span class="ordinal">2</span> Auditory drill
      </h3>
      <p class="how">
        Say the sound and show nothing. The children repeat it and write every spelling they have
        learned. Then show these:
      </p>
      <ol class="say-sounds">
        {sounds.map(({ phonemes, spellings }) => (
          <li key={phonemes.join(' ')}>
            <span class="box" />
            <span class="sound-said">
              <b>{soundLabel(phonemes, settings.value.notation)}</b> {keywordOf(spellings)}
            </span>
            <span class="sound-spellings">
              {spellings.map((id) => (
                <span key={id} role="img" aria-label={graphemeOf(id)}>
                  <Card id={id} />
                </span>
              ))}
            </span>
            <span class="room-to-note" />
          </li>
        ))}
      </ol>
    </section>
  );
}

function keywordOf(spellings: readonly CardId[]): string {
  return spellings.map((id) => correspondenceById.get(id)?.keyword).find(Boolean) ?? '';
}

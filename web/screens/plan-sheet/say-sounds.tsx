import type { AuditorySound } from '../../../core/drills/drill.ts';
import { sightIn, soundKey } from '../../../core/drills/sight.ts';
import { type CardId, lettersShown } from '../../../core/language/card-id.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { Card } from '../../controls/card.tsx';
import { askedSaid } from '../../wording/asked-said.ts';
import { say } from './wording.ts';

/** Part 2: the sounds to say, each with every spelling that children write. */
export function SaySounds({ sounds }: { readonly sounds: readonly AuditorySound[] }) {
  return (
    <section aria-labelledby="plan-auditory">
      <h3 id="plan-auditory">
        <span class="ordinal">2</span> {say.saySounds.auditoryDrill}
      </h3>
      <p class="how">
        {say.saySounds.sayTheSound(
          sounds.some((sound) => sightIn(sound) !== null) && say.saySounds.sayAWord,
        )}
      </p>
      <ol class="say-sounds" aria-label={say.saySounds.soundsToSay}>
        {sounds.map((sound) => (
          <li key={soundKey(sound)}>
            <span class="box" />
            <span class="sound-said">
              <b>{askedSaid(sound)}</b> {keywordOf(sound.spellings)}
            </span>
            <span class="sound-spellings">
              {sound.spellings.map((id) => (
                <span key={id} role="img" aria-label={lettersShown(id)}>
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

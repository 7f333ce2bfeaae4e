import type { AuditorySound, Drill } from '../../../core/drills/drill.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { Card } from '../../controls/card.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { progress, taught } from '../../state/progress.ts';
import { settings } from '../../state/settings.ts';
import { cardName } from '../../wording/card-name.ts';
import { soundReason } from '../../wording/reason.ts';
import { dayView } from './day-view.ts';
import { EditedPart, type Other } from './edited-part.tsx';
import { hereSaid, Missed } from './missed.tsx';

/** Part 2: the sounds that are said, each with every taught spelling to look for. */
export function Auditory({ drill }: { readonly drill: Drill }) {
  const { came } = dayView.value;
  return (
    <EditedPart
      part="auditory"
      noun="sound"
      drill={drill}
      things={drill.auditory}
      nameOf={nameOf}
      withThings={(auditory) => ({ ...drill, auditory })}
      others={() => othersThan(drill.auditory)}
    >
      {(open) => (
        <ol class="sounds">
          {drill.auditory.map((sound, place) => {
            const here = came.get(placeKey('auditory', place));
            return (
              <li key={keyOf(sound)} class={here?.state}>
                <button
                  class="swap sound"
                  aria-label={`${nameOf(sound)}${hereSaid(here)}. Swap`}
                  {...open(place)}
                >
                  {labelOf(sound)}
                </button>
                <span class="spellings">
                  {sound.spellings.map((id) => (
                    <span key={id} role="img" aria-label={cardName(id)} title={cardName(id)}>
                      <Card id={id} />
                    </span>
                  ))}
                </span>
                <span class="reason">
                  {here ? <Missed here={here} /> : soundReason(sound.spellings, progress.value)}
                </span>
              </li>
            );
          })}
        </ol>
      )}
    </EditedPart>
  );
}

/** The sounds that can be asked for and are not. */
function othersThan(asked: readonly AuditorySound[]): readonly Other<AuditorySound>[] {
  const keys = new Set(asked.map(keyOf));
  return (readyEngine()?.soundsFor(taught.value) ?? [])
    .filter((sound) => !keys.has(keyOf(sound)))
    .map((sound) => ({
      thing: sound,
      key: keyOf(sound),
      title: `as in ${keywordOf(sound)}`,
      face: labelOf(sound),
    }));
}

function keyOf({ phonemes }: AuditorySound): string {
  return phonemes.join(' ');
}

function labelOf({ phonemes }: AuditorySound): string {
  return soundLabel(phonemes, settings.value.notation);
}

function nameOf(sound: AuditorySound): string {
  return `${labelOf(sound)}, as in ${keywordOf(sound)}`;
}

function keywordOf({ spellings }: AuditorySound): string {
  const keywords = spellings.map((id) => correspondenceById.get(id)?.keyword);
  return keywords.find(Boolean) ?? spellings[0] ?? '';
}

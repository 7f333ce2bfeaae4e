import type { AuditorySound, Drill } from '../../../core/drills/drill.ts';
import { sightIn, sightSaid, soundKey } from '../../../core/drills/sight.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { Card } from '../../controls/card.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { isPinned } from '../../state/pins.ts';
import { progress } from '../../state/progress.ts';
import { sightWords } from '../../state/sight.ts';
import { soundsToAsk } from '../../state/sounds-to-ask.ts';
import { askedSaid } from '../../wording/asked-said.ts';
import { cardName } from '../../wording/card-name.ts';
import { soundReason } from '../../wording/reason.ts';
import { dayView } from './day-view.ts';
import { EditedPart, type Other } from './edited-part.tsx';
import { hereSaid, Missed } from './missed.tsx';
import { say } from './wording.ts';

/** Part 2: the sounds that are said, each with every taught spelling to look for; then words known by sight, to be spelled. */
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
      others={() => othersThan(drill.auditory, soundsToAsk.value)}
      isWord={(sound) => sightIn(sound) !== null}
      otherWords={() => othersThan(drill.auditory, wordsToSay())}
      pinOf={({ spellings }) => spellings[0]}
    >
      {(open) => (
        <ol class="sounds">
          {drill.auditory.map((sound, place) => {
            const here = came.get(placeKey('auditory', place));
            return (
              <li key={soundKey(sound)} class={here?.state}>
                <button
                  class="swap sound"
                  aria-label={say.auditory.swap(nameOf(sound), hereSaid(here))}
                  {...open(place)}
                >
                  {askedSaid(sound)}
                </button>
                <span class="spellings">
                  {sound.spellings.map((id) => (
                    <span key={id} role="img" aria-label={cardName(id)} title={cardName(id)}>
                      <Card id={id} />
                    </span>
                  ))}
                </span>
                <span class="reason">{here ? <Missed here={here} /> : reasonFor(sound)}</span>
              </li>
            );
          })}
        </ol>
      )}
    </EditedPart>
  );
}

/** Of these, what can be asked for and is not. */
function othersThan(
  asked: readonly AuditorySound[],
  all: readonly AuditorySound[],
): readonly Other<AuditorySound>[] {
  const keys = new Set(asked.map(soundKey));
  return all
    .filter((sound) => !keys.has(soundKey(sound)))
    .map((sound) => ({
      thing: sound,
      key: soundKey(sound),
      title: nameOf(sound),
      face: askedSaid(sound),
    }));
}

/** The words known by sight as something to say and have written, the newest first. */
function wordsToSay(): readonly AuditorySound[] {
  const ready = readyEngine();
  return sightWords.value.toReversed().flatMap((id) => (ready ? sightSaid(id, ready.lexicon) : []));
}

/** Why it is asked today: because it is every day, or by how it went. */
function reasonFor({ spellings }: AuditorySound): string {
  if (spellings.some((id) => isPinned('auditory', id))) return say.auditory.everyDay;
  return soundReason(spellings, progress.value);
}

/** A sound with its keyword, or the word to spell, for ears and tips. */
function nameOf(sound: AuditorySound): string {
  const word = sightIn(sound);
  return word === null ? say.auditory.asIn(askedSaid(sound), keywordOf(sound)) : cardName(word);
}

function keywordOf({ spellings }: AuditorySound): string {
  const keywords = spellings.map((id) => correspondenceById.get(id)?.keyword);
  return keywords.find(Boolean) ?? spellings[0] ?? '';
}

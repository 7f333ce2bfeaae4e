import { useState } from 'preact/hooks';
import type { AuditorySound, Drill } from '../../../core/drills/drill.ts';
import { correspondenceById } from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { Card } from '../../controls/card.tsx';
import { Popover } from '../../controls/popover.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { setDrill } from '../../state/plan.ts';
import { progress, taught } from '../../state/progress.ts';
import { settings } from '../../state/settings.ts';
import { cardName } from '../../wording/card-name.ts';
import { soundReason } from '../../wording/reason.ts';
import { dayView } from './day-view.ts';
import { hereSaid, Missed } from './missed.tsx';
import { PartHead } from './part-head.tsx';
import { SizeChoice } from './wish-choices.tsx';

/** Part 2: the sounds that are said, each with every taught spelling to look for. */
export function Auditory({ drill }: { readonly drill: Drill }) {
  const [open, setOpen] = useState<{ readonly anchor: HTMLElement; readonly place: number }>();
  const { came, kind } = dayView.value;
  const hereAt = (place: number) => came.get(placeKey('auditory', place));
  const label = (sound: AuditorySound) => soundLabel(sound.phonemes, settings.value.notation);
  return (
    <section class="part" aria-labelledby="part-auditory">
      <PartHead part="auditory" drill={drill} />
      <ol class="sounds">
        {drill.auditory.map((sound, place) => (
          <li key={sound.phonemes.join(' ')} class={hereAt(place)?.state}>
            <button
              type="button"
              class="swap sound"
              aria-haspopup="dialog"
              aria-label={`${label(sound)}, as in ${keywordOf(sound)}${hereSaid(hereAt(place))}. Swap`}
              disabled={kind === 'done'}
              onClick={(event) => setOpen({ anchor: event.currentTarget, place })}
            >
              {label(sound)}
            </button>
            <span class="spellings">
              {sound.spellings.map((id) => (
                <span key={id} role="img" aria-label={cardName(id)} title={cardName(id)}>
                  <Card id={id} />
                </span>
              ))}
            </span>
            <span class="reason">
              {hereAt(place) ? (
                <Missed here={hereAt(place)} />
              ) : (
                soundReason(sound.spellings, progress.value)
              )}
            </span>
          </li>
        ))}
      </ol>
      {(kind === 'fresh' || kind === 'tomorrow') && (
        <div class="wishes part-wishes">
          <SizeChoice part="auditory" />
          <button
            type="button"
            class="button plain"
            aria-haspopup="dialog"
            onClick={(event) =>
              setOpen({ anchor: event.currentTarget, place: drill.auditory.length })
            }
          >
            Add a sound
          </button>
        </div>
      )}
      {open && (
        <Popover
          anchor={open.anchor}
          title={open.place < drill.auditory.length ? 'Swap this sound' : 'Add a sound'}
          onClose={() => setOpen(undefined)}
        >
          <SwapSound drill={drill} place={open.place} onDone={() => setOpen(undefined)} />
        </Popover>
      )}
    </section>
  );
}

function SwapSound({
  drill,
  place,
  onDone,
}: {
  readonly drill: Drill;
  readonly place: number;
  readonly onDone: () => void;
}) {
  const adds = place >= drill.auditory.length;
  const asked = new Set(drill.auditory.map((sound) => sound.phonemes.join(' ')));
  const all = readyEngine()?.soundsFor(taught.value) ?? [];
  const others = all.filter((sound) => !asked.has(sound.phonemes.join(' ')));
  const put = (auditory: readonly AuditorySound[], said: string) => {
    setDrill({ ...drill, auditory }, said);
    onDone();
  };
  return (
    <>
      <p class="popover-head">
        {adds ? 'Add a sound' : 'Put another sound in its place:'}
        {!adds && (
          <button
            type="button"
            class="button"
            onClick={() => put(drill.auditory.toSpliced(place, 1), 'Took out a sound.')}
          >
            Leave it out today
          </button>
        )}
      </p>
      <div class="choices">
        {others.map((sound) => (
          <button
            key={sound.phonemes.join(' ')}
            type="button"
            class="choice text"
            title={`as in ${keywordOf(sound)}`}
            onClick={() =>
              put(
                drill.auditory.toSpliced(place, 1, sound),
                adds ? 'Added a sound.' : 'Swapped a sound.',
              )
            }
          >
            {soundLabel(sound.phonemes, settings.value.notation)}
          </button>
        ))}
      </div>
    </>
  );
}

function keywordOf(sound: AuditorySound): string {
  const ids = sound.spellings;
  return ids.map((id) => correspondenceById.get(id)?.keyword).find(Boolean) ?? ids[0] ?? '';
}

import { useState } from 'preact/hooks';
import '../../controls/word.css';
import type { Flip } from '../../../core/boards/shapes/board.ts';
import { dividedWord } from '../../../core/boards/shapes/divided.ts';
import type { Drill } from '../../../core/drills/drill.ts';
import { dropFlip, flipChoices } from '../../../core/drills/edit-drill.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { Popover } from '../../controls/popover.tsx';
import { settleWord } from '../../state/class-words.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { meanings } from '../../state/meanings.ts';
import { setDrill } from '../../state/plan.ts';
import { taught } from '../../state/progress.ts';
import { dayView } from './day-view.ts';
import { hereSaid, Missed } from './missed.tsx';
import { PinButton } from './pin-button.tsx';
import { say } from './wording.ts';

/** The run, flip by flip; each word can be swapped, and a real one tells its meaning. */
export function Flips({ drill }: { readonly drill: Drill }) {
  const [open, setOpen] = useState<{ readonly anchor: HTMLElement; readonly place: number }>();
  const meaning = (flip: Flip) =>
    flip.kind === 'real' ? (meanings.value?.meaningOf(flip.word) ?? null) : null;
  const [told, setTold] = useState<Flip>();
  const flip = open && drill.run[open.place];
  const { came, kind } = dayView.value;
  const hereAt = (place: number) => came.get(placeKey('blending', place));
  return (
    <>
      <ol class="flips" aria-label={say.flips.wordsToBlend}>
        {drill.run.map((each, place) => (
          <li key={place} class={hereAt(place)?.state}>
            <span class="quiet flip-number" aria-hidden="true">
              {place + 1}
            </span>
            <button
              type="button"
              class="flip"
              aria-haspopup="dialog"
              aria-label={`${each.word}, ${kindSaid(each)}${hereSaid(hereAt(place))}`}
              disabled={kind === 'done'}
              onPointerEnter={() => setTold(each)}
              onFocus={() => setTold(each)}
              onClick={(event) => setOpen({ anchor: event.currentTarget, place })}
            >
              <span class={`word ${each.kind}`}>{dividedWord(each)}</span>
            </button>
            {hereAt(place)?.isMarked && <Missed here={hereAt(place)} />}
          </li>
        ))}
      </ol>
      <p class="meaning" role="status">
        {told && (
          <>
            <b>{told.word}</b> <span class="quiet">{meaning(told) ?? kindSaid(told)}</span>
          </>
        )}
      </p>
      {open && flip && (
        <Popover
          anchor={open.anchor}
          title={say.flips.swap(flip.word)}
          onClose={() => setOpen(undefined)}
        >
          <SwapFlip
            key={open.place}
            drill={drill}
            place={open.place}
            meaning={meaning(flip)}
            onDone={() => setOpen(undefined)}
          />
        </Popover>
      )}
    </>
  );
}

function SwapFlip({
  drill,
  place,
  meaning,
  onDone,
}: {
  readonly drill: Drill;
  readonly place: number;
  readonly meaning: string | null;
  readonly onDone: () => void;
}) {
  const flip = drill.run[place];
  if (!flip) return null;
  const ready = readyEngine();
  const choices = ready ? flipChoices(drill, place, taught.value, ready) : [];
  const without = dropFlip(drill, place);
  const put = (run: readonly Flip[], said: string) => {
    setDrill({ ...drill, run }, said);
    onDone();
  };
  return (
    <>
      <p>
        <b>{flip.word}</b> <span class="quiet">{meaning ?? kindSaid(flip)}</span>
      </p>
      <p class="quiet small">
        {choices.length > 0 ? say.flips.putAnother : say.flips.noOtherWordFits}
      </p>
      <div class="choices">
        {choices.map((choice) => (
          <button
            key={choice.word}
            type="button"
            class="choice text"
            aria-label={`${choice.word}, ${kindSaid(choice)}`}
            onClick={() =>
              put(drill.run.with(place, choice), say.flips.became(flip.word, choice.word))
            }
          >
            <span class={`word ${choice.kind}`}>{choice.word}</span>
          </button>
        ))}
      </div>
      <p class="popover-buttons">
        <PinButton part="words" what={flip.word} />
        {without.kind === 'changed' && (
          <button
            type="button"
            class="button"
            onClick={() => put(without.drill.run, say.flips.tookOut(flip.word))}
          >
            {say.flips.leaveItOutToday}
          </button>
        )}
        <button
          type="button"
          class="button"
          onClick={() => {
            settleWord('block', flip.word);
            onDone();
          }}
        >
          {say.flips.neverInMyClass}
        </button>
      </p>
    </>
  );
}

function kindSaid({ kind }: Flip): string {
  return kind === 'real' ? say.flips.aRealWord : say.flips.nonsense;
}

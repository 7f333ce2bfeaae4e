import { useState } from 'preact/hooks';
import type { Drill } from '../../../core/drills/drill.ts';
import { type CardId, lettersShown } from '../../../core/language/card-id.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { Card } from '../../controls/card.tsx';
import { Popover } from '../../controls/popover.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { setDrill } from '../../state/plan.ts';
import { progress, taught } from '../../state/progress.ts';
import { cardName } from '../../wording/card-name.ts';
import { reasonOf, reasonSaid } from '../../wording/reason.ts';
import { dayView } from './day-view.ts';
import { hereSaid, Missed } from './missed.tsx';
import { PartHead } from './part-head.tsx';
import { SizeChoice } from './wish-choices.tsx';

/** Part 1: the cards that are shown in silence. */
export function Visual({ drill }: { readonly drill: Drill }) {
  const [open, setOpen] = useState<{ readonly anchor: HTMLElement; readonly place: number }>();
  const { came, kind } = dayView.value;
  return (
    <section class="part" aria-labelledby="part-visual">
      <PartHead part="visual" drill={drill} />
      <ol class="visual-cards">
        {drill.visual.map((id, place) => {
          const reason = reasonSaid(id, progress.value);
          const age = reasonOf(id, progress.value);
          const here = came.get(placeKey('visual', place));
          return (
            <li key={id} class={here?.state}>
              <button
                type="button"
                class={`swap ${age}`}
                aria-label={`${cardName(id)}; ${reason}${hereSaid(here)}. Swap`}
                aria-haspopup="dialog"
                title={cardName(id)}
                disabled={kind === 'done'}
                onClick={(event) => setOpen({ anchor: event.currentTarget, place })}
              >
                <Card id={id} />
              </button>
              {here ? <Missed here={here} /> : <span class="reason">{reason}</span>}
            </li>
          );
        })}
      </ol>
      {(kind === 'fresh' || kind === 'tomorrow') && (
        <div class="wishes part-wishes">
          <SizeChoice part="visual" />
          <button
            type="button"
            class="button plain"
            aria-haspopup="dialog"
            onClick={(event) =>
              setOpen({ anchor: event.currentTarget, place: drill.visual.length })
            }
          >
            Add a card
          </button>
        </div>
      )}
      {open && (
        <Popover
          anchor={open.anchor}
          title={open.place < drill.visual.length ? 'Swap this card' : 'Add a card'}
          onClose={() => setOpen(undefined)}
        >
          <SwapCard drill={drill} place={open.place} onDone={() => setOpen(undefined)} />
        </Popover>
      )}
    </section>
  );
}

function SwapCard({
  drill,
  place,
  onDone,
}: {
  readonly drill: Drill;
  readonly place: number;
  readonly onDone: () => void;
}) {
  const id = drill.visual[place];
  const adds = place >= drill.visual.length;
  const shown = new Set(drill.visual.map(lettersShown));
  const others = newestFirst(
    readyEngine()?.cardsFor(taught.value) ?? [],
    progress.value.sequence,
  ).filter((other) => !shown.has(lettersShown(other)));
  const put = (visual: readonly CardId[], said: string) => {
    setDrill({ ...drill, visual }, said);
    onDone();
  };
  return (
    <>
      <p class="popover-head">
        {adds || id === undefined ? 'Add a card' : cardName(id)}
        {!adds && (
          <button
            type="button"
            class="button"
            onClick={() => put(drill.visual.toSpliced(place, 1), 'Took out a card.')}
          >
            Leave it out today
          </button>
        )}
      </p>
      {others.length > 0 && !adds && <p class="quiet small">Put another in its place:</p>}
      <div class="choices">
        {others.map((other) => (
          <button
            key={other}
            type="button"
            class="choice"
            aria-label={cardName(other)}
            title={cardName(other)}
            onClick={() =>
              put(
                drill.visual.toSpliced(place, 1, other),
                adds ? 'Added a card.' : 'Swapped a card.',
              )
            }
          >
            <Card id={other} />
          </button>
        ))}
      </div>
    </>
  );
}

/** Card ids, those taught last first; what no step teaches goes last. */
function newestFirst(ids: readonly CardId[], sequence: Sequence): readonly CardId[] {
  const step = (id: CardId) => stepOf(sequence, { kind: 'card', id }) ?? 0;
  return ids.toSorted((left, right) => step(right) - step(left));
}

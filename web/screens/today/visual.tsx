import type { Drill } from '../../../core/drills/drill.ts';
import { type CardId, lettersShown } from '../../../core/language/card-id.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { Card } from '../../controls/card.tsx';
import { readyEngine } from '../../state/engine-ready.ts';
import { progress, taught } from '../../state/progress.ts';
import { cardName } from '../../wording/card-name.ts';
import { reasonOf, reasonSaid } from '../../wording/reason.ts';
import { dayView } from './day-view.ts';
import { EditedPart, type Other } from './edited-part.tsx';
import { hereSaid, Missed } from './missed.tsx';

/** Part 1: the cards that are shown in silence. */
export function Visual({ drill }: { readonly drill: Drill }) {
  const { came } = dayView.value;
  return (
    <EditedPart
      part="visual"
      noun="card"
      drill={drill}
      things={drill.visual}
      nameOf={cardName}
      withThings={(visual) => ({ ...drill, visual })}
      others={() => othersThan(drill.visual)}
    >
      {(open) => (
        <ol class="visual-cards">
          {drill.visual.map((id, place) => {
            const reason = reasonSaid(id, progress.value);
            const here = came.get(placeKey('visual', place));
            return (
              <li key={id} class={here?.state}>
                <button
                  class={`swap ${reasonOf(id, progress.value)}`}
                  aria-label={`${cardName(id)}; ${reason}${hereSaid(here)}. Swap`}
                  title={cardName(id)}
                  {...open(place)}
                >
                  <Card id={id} />
                </button>
                {here ? <Missed here={here} /> : <span class="reason">{reason}</span>}
              </li>
            );
          })}
        </ol>
      )}
    </EditedPart>
  );
}

/** Taught cards with other letters than those shown, the newest first. */
function othersThan(shown: readonly CardId[]): readonly Other<CardId>[] {
  const letters = new Set(shown.map(lettersShown));
  const all = readyEngine()?.cardsFor(taught.value) ?? [];
  return newestFirst(all, progress.value.sequence)
    .filter((id) => !letters.has(lettersShown(id)))
    .map((id) => ({
      thing: id,
      key: id,
      title: cardName(id),
      label: cardName(id),
      face: <Card id={id} />,
    }));
}

/** Card ids, those taught last first; what no step teaches goes last. */
function newestFirst(ids: readonly CardId[], sequence: Sequence): readonly CardId[] {
  const step = (id: CardId) => stepOf(sequence, { kind: 'card', id }) ?? 0;
  return ids.toSorted((left, right) => step(right) - step(left));
}

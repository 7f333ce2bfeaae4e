import type { Drill } from '../../../core/drills/drill.ts';
import { visualPool } from '../../../core/drills/visual.ts';
import { type CardId, isSightId, lettersShown } from '../../../core/language/card-id.ts';
import { itemOfCard } from '../../../core/sequence/item.ts';
import type { Sequence } from '../../../core/sequence/sequence.ts';
import { stepOf } from '../../../core/sequence/step-of.ts';
import { placeKey } from '../../../core/warm-up/came-through.ts';
import { Card } from '../../controls/card.tsx';
import { isPinned } from '../../state/pins.ts';
import { progress, taught } from '../../state/progress.ts';
import { sightWords } from '../../state/sight.ts';
import { cardName } from '../../wording/card-name.ts';
import { reasonOf, reasonSaid } from '../../wording/reason.ts';
import { dayView } from './day-view.ts';
import { EditedPart, type Other } from './edited-part.tsx';
import { hereSaid, Missed } from './missed.tsx';
import { say } from './wording.ts';

/** Part 1: the cards that are shown in silence, then the words known by sight. */
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
      others={() => othersThan(drill.visual, visualPool(taught.value.correspondences))}
      isWord={isSightId}
      otherWords={() => othersThan(drill.visual, sightWords.value)}
      pinOf={(id) => id}
    >
      {(open) => (
        <ol class="visual-cards">
          {drill.visual.map((id, place) => {
            const reason = isPinned('visual', id)
              ? say.visual.everyDay
              : reasonSaid(id, progress.value);
            const here = came.get(placeKey('visual', place));
            return (
              <li key={id} class={here?.state}>
                <button
                  class={`swap ${reasonOf(id, progress.value)}`}
                  aria-label={say.visual.swap(cardName(id), reason, hereSaid(here))}
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

/** Of these cards, those with other letters than those shown, the newest first. */
function othersThan(shown: readonly CardId[], all: readonly CardId[]): readonly Other<CardId>[] {
  const letters = new Set(shown.map(lettersShown));
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
  const step = (id: CardId) => stepOf(sequence, itemOfCard(id)) ?? 0;
  return ids.toSorted((left, right) => step(right) - step(left));
}

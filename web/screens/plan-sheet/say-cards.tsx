import { whatTheySay } from '../../../core/drills/what-they-say.ts';
import { type CardId, isSightId, lettersShown } from '../../../core/language/card-id.ts';
import { Card } from '../../controls/card.tsx';
import { soundStyle } from '../../state/accent.ts';
import { taught } from '../../state/progress.ts';
import { say } from './wording.ts';

/** Part 1: the cards, each with what children say. */
export function SayCards({ ids }: { readonly ids: readonly CardId[] }) {
  return (
    <section aria-labelledby="plan-visual">
      <h3 id="plan-visual">
        <span class="ordinal">1</span> {say.sayCards.visualDrill}
      </h3>
      <p class="how">
        {say.sayCards.showACard}
        {ids.some(isSightId) && say.sayCards.aWord}
      </p>
      <ol class="say-cards" aria-label={say.sayCards.cardsToShow}>
        {ids.map((id) => (
          <li key={id}>
            <span class="box" />
            <Card id={id} />
            <span class="for-ears">{lettersShown(id)}</span>
            <span class="they-say">
              {whatTheySay(id, taught.value.correspondences, soundStyle.value).map(
                ({ sound, keyword }) => (
                  <span key={sound}>
                    <b>{sound}</b> {keyword}
                  </span>
                ),
              )}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

import { graphemeOf } from '../../../core/language/card-id.ts';
import { soundStyle } from '../../state/accent.ts';
import '../../controls/word.css';
import type { Flip } from '../../../core/boards/shapes/board.ts';
import type { Drill } from '../../../core/drills/drill.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import { Card } from '../../controls/card.tsx';
import { say } from './wording.ts';

const pileNames = [say.blend.beginnings, say.blend.vowels, say.blend.endings];

/** Part 3: the piles, and the words in their order. */
export function Blend({ drill: { board, run } }: { readonly drill: Drill }) {
  return (
    <section class="blend" aria-labelledby="plan-blending">
      <h3 id="plan-blending">
        <span class="ordinal">3</span> {say.blend.blendingDrill}
      </h3>
      <p class="how">{say.blend.pointToEachCard}</p>
      <div class="plan-piles">
        {board.piles.map((pile, place) => (
          <div key={place}>
            <h4>{board.piles.length === 3 ? pileNames[place] : say.blend.pile(place + 1)}</h4>
            <p>
              {pile.map((id) => (
                <span key={id} role="img" aria-label={graphemeOf(id)}>
                  <Card id={id} />
                </span>
              ))}
            </p>
          </div>
        ))}
      </div>
      <ol class="plan-flips" aria-label={say.blend.wordsToBlend}>
        {run.map((flip, place) => (
          <li key={place}>
            <span class="place-in-run">{place + 1}</span>
            <span class="box" />
            <span class={`word plan-word ${flip.kind}`} data-kind={flip.kind}>
              {flip.word}
            </span>
            {flip.kind === 'real' && <span class="for-ears">{say.blend.aRealWord}</span>}
            {flip.kind === 'nonsense' && <span class="quiet small said-of">{saidOf(flip)}</span>}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** How a nonsense word is said, for someone who has never seen it. */
function saidOf({ sounds }: Flip): string {
  return sounds.length === 0 ? '' : soundLabel(sounds, soundStyle.value);
}

import { type CardId, isSightId } from '../../../core/language/card-id.ts';
import {
  correspondenceById,
  correspondencesByGrapheme,
} from '../../../core/language/correspondences.ts';
import { soundLabel } from '../../../core/language/phonemes.ts';
import { soundStyle } from '../../state/accent.ts';
import { taught } from '../../state/progress.ts';
import { cardName } from '../../wording/card-name.ts';
import { AtSight } from './at-sight.tsx';
import { say } from './wording.ts';

/** The name of the letters, and every sound of theirs that was taught, each with its keyword. */
export function AtVisual({ id }: { readonly id: CardId }) {
  if (isSightId(id)) return <AtSight id={id} />;
  const card = correspondenceById.get(id);
  if (!card) return <p class="desk-said">{cardName(id)}</p>;
  const known = (correspondencesByGrapheme.get(card.grapheme) ?? []).filter(
    (other) => other.id === id || taught.value.correspondences.has(other.id),
  );
  const letters = [...card.grapheme.replace('_', '')];
  return (
    <div class="desk-said">
      <p class="quiet">
        {letters.length === 1 ? say.atVisual.letter : say.atVisual.letters}{' '}
        <b>{letters.join(' – ')}</b>
      </p>
      <ul class="desk-sounds">
        {known.map(({ id: each, phonemes, keyword }) => (
          <li key={each}>
            <b class="desk-sound">{soundLabel(phonemes, soundStyle.value, card.grapheme)}</b>
            {keyword && <span class="quiet"> {say.atVisual.asIn(keyword)}</span>}
          </li>
        ))}
      </ul>
    </div>
  );
}

import { soundStyle } from '../state/accent.ts';
import './sounded-card.css';
import type { CardId } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import { cardName } from '../wording/card-name.ts';
import { Card } from './card.tsx';

/** A card with its sound beside it, since one letter may have several; for ears its whole name. */
export function SoundedCard({ id }: { readonly id: CardId }) {
  const card = correspondenceById.get(id);
  const isOneSound = card && card.kind !== 'cluster' && card.phonemes.length > 0;
  return (
    <span class="sounded-card" title={cardName(id)}>
      <span class="for-ears">{cardName(id)}</span>
      <Card id={id} />
      {isOneSound && (
        <span class="quiet" aria-hidden="true">
          {soundLabel(card.phonemes, soundStyle.value, card.grapheme)}
        </span>
      )}
    </span>
  );
}

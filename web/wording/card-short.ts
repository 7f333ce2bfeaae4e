import { type CardId, lettersShown } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import { settings } from '../state/settings.ts';
import { twins } from '../state/twins.ts';

/** A card as it stands in a sentence: its letters, and where another taught card has the same, which of them it is: `th (thumb)`. */
export function cardShort(id: CardId): string {
  const note = cardNote(id);
  return note === null ? lettersShown(id) : `${lettersShown(id)} (${note})`;
}

/** What tells a card from another taught one with the same letters: its keyword, else its sound; null where nothing has to. */
export function cardNote(id: CardId): string | null {
  if (!twins.value.has(id)) return null;
  const card = correspondenceById.get(id);
  return card?.keyword ?? (card ? soundLabel(card.phonemes, settings.value.notation) : null);
}

import { computed } from '@preact/signals';
import { type CardId, lettersShown } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { soundLabel } from '../../core/language/phonemes.ts';
import { twinsIn } from '../../core/language/twins.ts';
import { soundStyle } from '../state/accent.ts';
import { taught } from '../state/progress.ts';

/** A card as it stands in a sentence: its letters, and where another taught card has the same, which of them it is: `th (thumb)`. */
export function cardShort(id: CardId): string {
  const note = cardNote(id);
  return note === null ? lettersShown(id) : `${lettersShown(id)} (${note})`;
}

/**
 * What tells a card from another one with the same letters: its keyword, else its sound; null where nothing
 * has to. The others are the taught ones, or those that it stands `among`.
 */
export function cardNote(id: CardId, among: ReadonlySet<string> = twins.value): string | null {
  if (!among.has(id)) return null;
  const card = correspondenceById.get(id);
  return (
    card?.keyword ?? (card ? soundLabel(card.phonemes, soundStyle.value, card.grapheme) : null)
  );
}

/** The taught cards whose letters another taught card has too. */
const twins = computed<ReadonlySet<string>>(() => twinsIn(taught.value.correspondences));

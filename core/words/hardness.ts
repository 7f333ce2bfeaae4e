/**
 * How hard a word is likely to be for a young reader, for ordering lists: no
 * measure of a child, and no published scale.
 *
 * A sum of parts, each never lower for more of it: how rare the word is (its
 * band), how many cards it has beyond three, consonants in a row, syllables
 * after the first, cards of later tiers, irregular cards; and a little less for
 * each common neighbor (a word that differs in one card), since look-alikes
 * already known help. The parts are those that studies of word reading name
 * (frequency, length, clusters, regularity, neighborhood); their weights are
 * ours (common practice, no source).
 */
import type { CardId } from '../language/card-id.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isNucleus } from '../language/syllables.ts';
import type { Band } from './lexicon.ts';

/** What hardness is made of; all that can be known of a word without its sound. */
export interface HardnessParts {
  readonly band: Band;
  readonly cardIds: readonly CardId[];
  readonly syllables: number;
  readonly regular: boolean;
  /** Familiar words (bands 1–4) that differ in one card. */
  readonly neighbors: number;
}

/** 0 for the easiest words; a long rare one reaches about 15. */
export function hardness(parts: HardnessParts): number {
  const cards = parts.cardIds.map((id) => correspondenceById.get(id));
  const later = cards.reduce((sum, card) => sum + Math.max(0, (card?.tier ?? 4) - 1), 0);
  return (
    (parts.band - 1) * 0.8 +
    Math.max(0, parts.cardIds.length - 3) * 0.5 +
    consonantsInARow(parts.cardIds) * 0.7 +
    (parts.syllables - 1) * 1.2 +
    later * 0.6 +
    (parts.regular ? 0 : 2) +
    1 / (1 + parts.neighbors)
  );
}

/** How many consonant cards stand directly after another. */
function consonantsInARow(cardIds: readonly CardId[]): number {
  let count = 0;
  let previous = false;
  for (const id of cardIds) {
    const card = correspondenceById.get(id);
    const consonant = card !== undefined && !isNucleus(card) && card.phonemes.length > 0;
    if (consonant && previous) count += 1;
    previous = consonant;
  }
  return count;
}

import { computed } from '@preact/signals';
import { type CardId, graphemeOf, lettersShown, makeSightId } from '../../core/language/card-id.ts';
import { type SightPart, sightParts } from '../../core/words/sight-parts.ts';
import { readyEngine } from './engine-ready.ts';
import { progress, taught } from './progress.ts';
import { inOrder } from './taught-order.ts';

/** The words known by sight that the group at work was taught, as cards, in the order of its teaching. */
export const sightWords = computed<readonly CardId[]>(() =>
  inOrder([...taught.value.irregularWords].map(makeSightId), progress.value),
);

const parts = computed<ReadonlyMap<CardId, readonly SightPart[]>>(() => {
  const ready = readyEngine();
  if (!ready) return new Map();
  const { lexicon } = ready;
  return new Map(
    sightWords.value.map((id) => [id, sightParts(graphemeOf(id), taught.value, lexicon)]),
  );
});

/**
 * The letters of a word known by sight as they are written, in runs: what the group can read by what it
 * was taught, and what it learns by heart. Before the word list is here, or of a word that the group was
 * not taught, the word in one run.
 */
export function partsOfSight(id: CardId): readonly SightPart[] {
  const shown = lettersShown(id);
  const found = parts.value.get(id);
  if (!found) return [{ letters: shown, byHeart: false }];
  let at = 0;
  return found.map(({ letters, byHeart }) => {
    at += letters.length;
    return { letters: shown.slice(at - letters.length, at), byHeart };
  });
}

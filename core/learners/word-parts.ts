import type { CardId } from '../language/card-id.ts';
import {
  type Correspondence,
  isVowelCard,
  PLACES,
  type Place,
} from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { isNucleus } from '../language/syllables.ts';
import type { Habit } from '../language/taught.ts';
import { isSchwaCard, needsOf } from '../words/needs.ts';
import type { WordParts } from './belief/spots.ts';

/**
 * The parts of a word from its cards alone: consonants before the first vowel
 * are its beginning, those after the last one its ending, all else its middle.
 * A habit belongs to the cards that it is about: a cluster's consonants, the
 * faded vowel, every card of a long word.
 */
export function wordParts(cardIds: readonly CardId[]): WordParts {
  let parts = known.get(cardIds);
  if (parts === undefined) {
    parts = partsOf(cardIds);
    known.set(cardIds, parts);
  }
  return parts;
}

/** What is known is worked out again with each event, and of the same words: each list of cards is taken apart once. */
const known = new WeakMap<readonly CardId[], WordParts>();

function partsOf(cardIds: readonly CardId[]): WordParts {
  const cards = cardIds.map((id) => correspondenceById.get(id));
  const vowels = cards.map((card) => card !== undefined && isNucleus(card));
  const last = vowels.lastIndexOf(true);
  const first = last < 0 ? cards.length : vowels.indexOf(true);
  const syllables = vowels.filter((isVowel) => isVowel).length;
  const { habits } = needsOf(cardIds, Math.max(1, syllables));
  return {
    places: cards.map((_, at) => {
      if (cards.length === 1) return null;
      if (last < 0) return at === 0 ? 'beginning' : 'ending';
      return at < first ? 'beginning' : at > last ? 'ending' : 'middle';
    }),
    habits: cards.map((card, at) =>
      habits.filter((habit) => isAbout(habit, card, at < first, at > last)),
    ),
  };
}

/** Whether a habit is about a card, which stands before the first vowel or behind the last one. */
function isAbout(
  habit: Habit,
  card: Correspondence | undefined,
  isBefore: boolean,
  isBehind: boolean,
): boolean {
  if (habit === 'long-words') return true;
  if (habit === 'schwa') return card !== undefined && isSchwaCard(card);
  if (card?.phonemes.length === 0) return false;
  return habit === 'ending-clusters' ? isBehind : isBefore;
}

/** The place where a card mostly stands: vowels in the middle, others as early as they may. */
export function usualPlace(id: CardId): Place {
  const card = correspondenceById.get(id);
  if (card === undefined || card.places.length === 0) return 'beginning';
  if (isVowelCard(card)) return 'middle';
  return PLACES.find((place) => card.places.includes(place)) ?? 'beginning';
}

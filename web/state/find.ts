import type { Taught } from '../../core/language/taught.ts';
import { findWords, minimalPairs } from '../../core/words/finder.ts';
import type { Lexicon } from '../../core/words/lexicon.ts';
import { easiestFirst } from './easiest-first.ts';
import type { Engine } from './engine.ts';
import type { WordWish } from './wish.ts';

/** What is found stands alone, or in a pair that differs in one card. Indexes into the word list. */
export type Entry = readonly number[];

/** In the order of the alphabet, by the first word of an entry. */
function byLetters(entries: readonly Entry[], { word }: Lexicon): readonly Entry[] {
  const first = ([index]: Entry): string => word(index as number);
  return entries.toSorted((one, other) => (first(one) < first(other) ? -1 : 1));
}

/** The entries a wish asks for, in its order; the word screen is not asked yet. */
export function find(
  wish: WordWish,
  taught: Taught,
  { lexicon }: Pick<Engine, 'lexicon'>,
): readonly Entry[] {
  const { onlyTaught, irregular, shape, syllables, card, place, left, right, order } = wish;
  const letters = wish.letters.trim().toLowerCase();
  const words = findWords(lexicon, {
    irregular,
    ...(onlyTaught ? { taught } : {}),
    ...(shape === '' ? {} : { shape }),
    ...(syllables === 0 ? {} : { syllables }),
    ...(card === '' ? {} : { card: { id: card, place } }),
  });
  const all: readonly Entry[] =
    left === '' || right === ''
      ? words.map((index) => [index])
      : minimalPairs(lexicon, words, left, right);
  const entries =
    letters === ''
      ? all
      : all.filter((entry) => entry.some((index) => lexicon.word(index).includes(letters)));
  if (order === 'common') return entries;
  return order === 'easy' ? easiestFirst(entries, lexicon) : byLetters(entries, lexicon);
}

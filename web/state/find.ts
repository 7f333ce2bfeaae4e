import type { Taught } from '../../core/language/taught.ts';
import { findWords, minimalPairs } from '../../core/words/finder.ts';
import { easiestFirst } from './easiest-first.ts';
import type { Engine } from './engine.ts';
import type { Wish } from './wish.ts';

/** What is found stands alone, or in a pair that differs in one card. Indexes into the word list. */
export type Entry = readonly number[];

/** The entries a wish asks for, in its order; the word screen is not asked yet. */
export function find(
  wish: Wish,
  taught: Taught,
  { lexicon }: Pick<Engine, 'lexicon'>,
): readonly Entry[] {
  const { onlyTaught, irregular, shape, syllables, card, place, left, right, order } = wish;
  const words = findWords(lexicon, {
    irregular,
    ...(onlyTaught ? { taught } : {}),
    ...(shape === '' ? {} : { shape }),
    ...(syllables === 0 ? {} : { syllables }),
    ...(card === '' ? {} : { card: { id: card, place } }),
  });
  const entries: readonly Entry[] =
    left === '' || right === ''
      ? words.map((index) => [index])
      : minimalPairs(lexicon, words, left, right);
  return order === 'common' ? entries : easiestFirst(entries, lexicon);
}

import { basesOf } from '../lexicon/inflected.ts';
import { builtLexicon } from './built-lexicon.ts';

/**
 * Indexes of the words that a dictionary lists by themselves: those in -s, -ed or -ing whose base is
 * in the list are left out. Published counts over dictionaries are of such words. A few short ones
 * go with them by their letters alone (*his*, as if from *hi*).
 */
export const dictionaryForms: readonly number[] = Array.from(
  { length: builtLexicon.size },
  (_, index) => index,
).filter(
  (index) =>
    !basesOf(builtLexicon.word(index)).some(
      ([base]) => base.length > 1 && builtLexicon.indexOf(base) >= 0,
    ),
);

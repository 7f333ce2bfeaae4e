import type { Lexicon } from '../words/lexicon.ts';

/** The rarest band whose words a child may think of. */
const FAMILIAR = 4;
/** So many are named at most. */
const MOST = 2;

/**
 * Familiar words that are heard like this one, commonest first: it is said in a sentence, so that children
 * know which is meant (*see* and *sea*; *pen* and *pin* where the two are alike). None for a word that the
 * list does not have.
 */
export function heardAlso(word: string, lexicon: Lexicon): readonly string[] {
  const own = lexicon.indexOf(word);
  const sounds = own < 0 ? undefined : lexicon.readings(own)[0]?.sounds;
  if (!sounds) return [];
  return lexicon
    .saidAs(sounds.join(' '))
    .filter((index) => index !== own && lexicon.band(index) <= FAMILIAR)
    .slice(0, MOST)
    .map((index) => lexicon.word(index));
}

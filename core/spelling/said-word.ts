import { guessReading } from '../language/guess.ts';
import type { Reading } from '../language/reading.ts';
import type { Lexicon } from '../words/lexicon.ts';

/**
 * How a word that was said falls into cards, in each of its pronunciations, the ordinary one first; of a
 * word that is not in the list a guess by its letters. Null when they give none.
 */
export function saidWord(word: string, lexicon: Lexicon): readonly Reading[] | null {
  const lower = word.trim().toLowerCase();
  const index = lexicon.indexOf(lower);
  if (index >= 0) return lexicon.readings(index);
  const guess = /^[a-z]+$/.test(lower) ? guessReading(lower) : null;
  return guess && [guess];
}

/** The rarest band of the word list whose words a child may mean. */
const FAMILIAR = 5;

/** Whether letters (lower case) spell a word of the list that children know. */
export function isFamiliarIn(lexicon: Lexicon): (letters: string) => boolean {
  return (letters) => {
    const index = lexicon.indexOf(letters);
    return index >= 0 && lexicon.band(index) <= FAMILIAR;
  };
}

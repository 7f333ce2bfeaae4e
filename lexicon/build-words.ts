import { align } from '../core/language/align.ts';
import { parsePronunciation } from '../core/language/pronunciation.ts';
import type { Reading } from '../core/language/reading.ts';
import { type ChosenWord, chooseWords } from './choose-words.ts';
import { type BaseFinder, findMorphemes } from './morphology.ts';
import type { Sources } from './sources.ts';
import type { WordNet } from './wordnet.ts';

/** A chosen word with its readings, the ordinary one first. */
export interface LexiconWord extends ChosenWord {
  readonly readings: readonly Reading[];
}

/** Chooses the words, finds their parts and splits them into cards. Commonest first. */
export function buildWords(sources: Sources, wordnet: WordNet): readonly LexiconWord[] {
  const chosen = chooseWords(sources);
  const finder = makeFinder(chosen, sources, wordnet);
  return chosen.map((word) => ({ ...word, readings: readingsOf(word, finder) }));
}

/** Bases are looked for among listed words and any lower-case word with a pronunciation. */
function makeFinder(
  chosen: readonly ChosenWord[],
  { sizes, pronunciations }: Sources,
  wordnet: WordNet,
): BaseFinder {
  const listed = new Map(chosen.map((word) => [word.word, word.pronunciations]));
  const said = (word: string) => {
    const own = listed.get(word);
    const other = sizes.has(word) ? pronunciations.get(word) : undefined;
    return own && other ? [...own, ...other] : (own ?? other);
  };
  return { said, wordnet };
}

function readingsOf({ word, pronunciations }: ChosenWord, finder: BaseFinder): readonly Reading[] {
  const readings = new Map<string, Reading>();
  for (const text of pronunciations) {
    const spoken = parsePronunciation(text);
    if (!spoken) throw new Error(`${word}: ${text} is no pronunciation.`);
    const reading = align(word, spoken, findMorphemes(word, text, finder));
    const key = reading.cards.map(({ id }) => id).join(' ');
    if (!readings.has(key)) readings.set(key, reading);
  }
  return [...readings.values()];
}

import { ADDITIONS } from './additions.ts';
import { buildWords, type LexiconWord } from './build-words.ts';
import { encodeLexicon } from './encode.ts';
import { chooseMeanings } from './meanings.ts';
import { type BuiltFiles, measureFile } from './report.ts';
import { readSources } from './sources.ts';
import { readWordNet } from './wordnet.ts';

/** All that the build step makes, in memory. */
export interface BuiltList {
  /** Commonest first. */
  readonly words: readonly LexiconWord[];
  readonly meanings: ReadonlyMap<string, string>;
  readonly files: BuiltFiles;
}

/** Builds the word list from the installed packages. Deterministic; some seconds. */
export function buildList(): BuiltList {
  const sources = readSources();
  const wordnet = readWordNet((word) => sources.sizes.has(word) || Object.hasOwn(ADDITIONS, word));
  const words = buildWords(sources, wordnet);
  const meanings = chooseMeanings(words, wordnet);
  const json = JSON.stringify(Object.fromEntries(meanings));
  return {
    words,
    meanings,
    files: {
      words: measureFile(encodeLexicon(words)),
      meanings: measureFile(new TextEncoder().encode(json)),
    },
  };
}

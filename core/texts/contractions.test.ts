import { expect, test } from 'vitest';
import { builtLexicon } from '../../test/built-lexicon.ts';
import { partsOfContraction } from './contractions.ts';

test.each<[word: string, base: string | null, irregular: boolean]>([
  ["can't", 'can', false],
  ["isn't", 'is', false],
  ["didn't", 'did', false],
  ["it's", 'it', false],
  ["i'm", 'i', false],
  ["he'd", 'he', false],
  ["she'll", 'she', false],
  ["we're", 'we', false],
  ["we've", 'we', false],
  ["cat's", 'cat', false],
  ["girls'", 'girls', false],
  ["don't", 'do', true],
  ["won't", 'will', true],
  ["shan't", 'shall', true],
  ["megan's", null, false],
  ["o'clock", null, false],
  ["it'x", null, false],
  ["it'sx", null, false],
  ['cat', null, false],
  ["n't", null, false],
  ["'s", null, false],
])('%s is built on %s; said unlike its parts: %s', (word, base, irregular) => {
  const built = partsOfContraction(word, builtLexicon);
  expect(built && { base: builtLexicon.word(built.base), irregular: built.irregular }).toEqual(
    base === null ? null : { base, irregular },
  );
});

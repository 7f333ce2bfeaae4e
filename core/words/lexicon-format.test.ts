import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { encodeLexicon, type ListedWord } from '../../lexicon/encode.ts';
import { align } from '../language/align.ts';
import { parsePronunciation } from '../language/pronunciation.ts';
import type { Band } from './lexicon.ts';
import { decodeLexicon } from './lexicon-format.ts';

/** Spellings with their sounds (CMUdict); silent letters, split vowels, doubles and guesses among them. */
const SPOKEN: readonly (readonly [string, ...string[]])[] = [
  ['a', 'AH0', 'EY1'],
  ['cat', 'K AE1 T'],
  ['catch', 'K AE1 CH'],
  ['kate', 'K EY1 T'],
  ['concrete', 'K AA1 N K R IY0 T'],
  ['table', 'T EY1 B AH0 L'],
  ['rabbit', 'R AE1 B AH0 T'],
  ['read', 'R IY1 D', 'R EH1 D'],
  ['said', 'S EH1 D'],
  ['colonel', 'K ER1 N AH0 L'],
  ['queue', 'K Y UW1'],
  ['radio', 'R EY1 D IY0 OW2'],
];

function listed([word, ...spoken]: readonly [string, ...string[]], band: Band): ListedWord {
  const readings = spoken.map((text) => align(word, parsePronunciation(text)!));
  return { word, band, readings };
}

const someWords = fc
  .uniqueArray(fc.constantFrom(...SPOKEN), { minLength: 1, selector: ([word]) => word })
  .chain((chosen) =>
    fc
      .array(fc.integer({ min: 1, max: 7 }), { minLength: chosen.length, maxLength: chosen.length })
      .map((bands) => chosen.map((spoken, at) => listed(spoken, bands[at] as Band))),
  );

describe('the word-list file', () => {
  test('gives back every word, band and reading', () => {
    fc.assert(
      fc.property(someWords, (words) => {
        const lexicon = decodeLexicon(encodeLexicon(words));
        expect(lexicon.size).toBe(words.length);
        for (const { word, band, readings } of words) {
          const index = lexicon.indexOf(word);
          expect(lexicon.word(index)).toBe(word);
          expect(lexicon.band(index)).toBe(band);
          expect(lexicon.readings(index)).toEqual(readings);
        }
      }),
    );
  });

  test('does not depend on the order in which words are given', () => {
    fc.assert(
      fc.property(someWords, (words) => {
        expect(encodeLexicon(words.toReversed())).toEqual(encodeLexicon(words));
      }),
    );
  });

  test('lists commoner bands first, and shorter words within a band', () => {
    fc.assert(
      fc.property(someWords, (words) => {
        const lexicon = decodeLexicon(encodeLexicon(words));
        for (let index = 1; index < lexicon.size; index++) {
          const [a, b] = [lexicon.band(index - 1), lexicon.band(index)];
          const longer = lexicon.word(index).length >= lexicon.word(index - 1).length;
          expect(a < b || (a === b && longer)).toBe(true);
        }
      }),
    );
  });
});

describe('a decoded list', () => {
  const lexicon = decodeLexicon(encodeLexicon(SPOKEN.map((spoken) => listed(spoken, 3))));

  test('finds words by any of their sounds', () => {
    const words = (sounds: string) => lexicon.saidAs(sounds).map((index) => lexicon.word(index));
    expect(words('R EH D')).toEqual(['read']);
    expect(words('K EY T')).toEqual(['kate']);
    expect(words('R AE B IH T').concat(words('R AE B AX T'))).toEqual(['rabbit']);
    expect(words('Z Z Z')).toEqual([]);
  });

  test('knows which words are regular', () => {
    const regular = (word: string) => lexicon.isRegular(lexicon.indexOf(word));
    expect([regular('cat'), regular('table'), regular('said'), regular('colonel')]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  test('is safe for words that objects know', () => {
    expect(lexicon.indexOf('constructor')).toBe(-1);
    expect(lexicon.indexOf('__proto__')).toBe(-1);
    expect(lexicon.saidAs('constructor')).toEqual([]);
  });
});

test('bytes that are no word list are refused with a way out', () => {
  const bytes = encodeLexicon(SPOKEN.map((spoken) => listed(spoken, 3)));
  expect(() => decodeLexicon(new Uint8Array([1, 2, 3]))).toThrow(/Load it again/);
  expect(() => decodeLexicon(bytes.subarray(0, bytes.length - 5))).toThrow(/Load it again/);
});

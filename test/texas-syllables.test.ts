import { describe, expect, it } from 'vitest';
import { builtLexicon } from './built-lexicon.ts';
import { readFixture } from './fixture.ts';

/**
 * Texas Administrative Code 19, Chapter 110 (2008 adoption), with examples that a state guide and
 * Moats 2000 give for the same six types: divided words divide as printed, and the named type is
 * that of the syllable it is an example of.
 */
const typeOf: Readonly<Record<string, string>> = {
  closed: 'closed',
  open: 'open',
  'final stable': 'cle',
  'consonant-le': 'cle',
  VCe: 'vce',
  'vowel team': 'team',
  'r-controlled': 'r',
};

const rows = readFixture('teks-syllables.tsv')
  .filter(({ type = '', division_or_text = '' }) => type in typeOf && division_or_text[0] !== '-')
  .map(({ type = '', division_or_text = '' }) => ({
    type,
    words: division_or_text.replace(/\(.*\)/, '').match(/[A-Za-z]+(?:-[a-z]+)*(?= |$)/g) ?? [],
  }));

/** -tion is a final stable syllable too; we have no type of that name. */
const otherFinal = /(tion|sion|ture|age)$/;

describe('the Texas syllable examples', () => {
  it.each(rows)('$type: $words', ({ type, words }) => {
    for (const printed of words) {
      const word = printed.replaceAll('-', '').toLowerCase();
      const index = builtLexicon.indexOf(word);
      if (index < 0) {
        expect(absent, `${word} is in the word list`).toContain(word);
        continue;
      }
      const [reading] = builtLexicon.readings(index);
      const divided = reading?.syllables.map(({ from, to }) => word.slice(from, to)).join('-');
      if (printed.includes('-')) expect(divided).toBe(printed.toLowerCase());
      const types = reading?.syllables.map((syllable) => syllable.type) ?? [];
      const wanted = otherFinal.test(word) ? 'other' : typeOf[type];
      expect(types, `${word} has a syllable of type ${wanted}`).toContain(wanted);
    }
  });
});

/** A name, which the word list leaves out. */
const absent = ['pete'];

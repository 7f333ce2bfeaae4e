import { describe, expect, it } from 'vitest';
import type { Phoneme } from '../core/language/phonemes.ts';
import { builtLexicon } from './built-lexicon.ts';
import { readFixture } from './fixture.ts';

/**
 * England's National Curriculum, English Appendix 1: Spelling (DfE 2013), Year 1: every example
 * word shows its row's grapheme for its row's sound. Pronunciation here is American; the rows
 * below are mapped by hand from the table's RP.
 */
const soundsByRow: Readonly<Record<string, readonly string[]>> = {
  '/f/ /l/ /s/ /z/ /k/ spelt ff ll ss zz ck': ['F', 'L', 'S', 'Z', 'K'],
  '/ŋ/ spelt n before k': ['NG'],
  '-tch': ['CH'],
  '/v/ at the end of words': ['V'],
  ai: ['EY'],
  oi: ['OY'],
  ay: ['EY'],
  oy: ['OY'],
  'a-e': ['EY'],
  'e-e': ['IY'],
  'i-e': ['AY'],
  'o-e': ['OW'],
  'u-e': ['UW', 'Y UW'],
  ar: ['AA R'],
  ee: ['IY'],
  'ea (/i:/)': ['IY'],
  'ea (/ɛ/)': ['EH'],
  'er (/ɜ:/)': ['ER'],
  'er (/ə/)': ['ER'],
  ir: ['ER'],
  ur: ['ER'],
  'oo (/u:/)': ['UW'],
  'oo (/ʊ/)': ['UH'],
  oa: ['OW'],
  oe: ['OW'],
  ou: ['AW'],
  'ow (/aʊ/)': ['AW'],
  'ow (/əʊ/)': ['OW'],
  ue: ['UW', 'Y UW'],
  ew: ['UW', 'Y UW'],
  'ie (/aɪ/)': ['AY'],
  'ie (/i:/)': ['IY'],
  igh: ['AY'],
  or: ['AO R'],
  ore: ['AO R'],
  aw: ['AO'],
  au: ['AO'],
  air: ['EH R'],
  ear: ['IH R'],
  'ear (/ɛə/)': ['EH R'],
  'are (/ɛə/)': ['EH R'],
  'Words ending -y (/i:/ or /ɪ/)': ['IY'],
  ph: ['F'],
  wh: ['W'],
  'Using k for the /k/ sound': ['K'],
};

const rows = readFixture('nc-appendix1.tsv').filter(
  ({ year, kind }) => year === '1' && kind === 'gpc',
);

describe('Year 1 of the National Curriculum', () => {
  it('has all its grapheme rows mapped', () => {
    expect(rows.map(({ row }) => row).sort()).toEqual(Object.keys(soundsByRow).sort());
  });

  it.each(rows)('$row: $example_words', ({ row = '', grapheme = '', example_words = '' }) => {
    const graphemes = grapheme.split(' ').map((text) => text.replace('-', '_'));
    for (const word of example_words.split(' ')) {
      const index = builtLexicon.indexOf(word.toLowerCase());
      expect(index, `${word} is in the word list`).toBeGreaterThanOrEqual(0);
      const shown = builtLexicon
        .readings(index)
        .some(({ cards }) =>
          cards.some(
            (card) =>
              graphemes.includes(card.grapheme) &&
              soundsByRow[row]?.includes(soundsOf(card.phonemes)),
          ),
        );
      expect(shown, `${word} shows ${grapheme}`).toBe(true);
    }
  });
});

function soundsOf(phonemes: readonly Phoneme[]): string {
  return phonemes.join(' ');
}

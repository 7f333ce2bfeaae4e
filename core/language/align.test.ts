import { describe, expect, it } from 'vitest';
import { align } from './align.ts';
import { type Morphemes, parsePronunciation } from './pronunciation.ts';
import type { Reading } from './reading.ts';

/** Pronunciations in these tables are CMUdict 0.7b's, or what it lists for a variant. */
function read(word: string, spoken: string, suffixAt: number | null = null): Reading {
  const pronunciation = parsePronunciation(spoken);
  if (!pronunciation) throw new Error(`${spoken} is no pronunciation`);
  const morphemes: Morphemes = { breaks: suffixAt === null ? [] : [suffixAt], suffixAt };
  return align(word, pronunciation, morphemes);
}

function cards(reading: Reading): string {
  return reading.cards.map(({ grapheme }) => grapheme).join('-');
}

function irregular(reading: Reading): string {
  return reading.cards
    .filter((card) => !card.regular)
    .map(({ grapheme }) => grapheme)
    .join(' ');
}

describe('cards', () => {
  // Common practice, no source: the conventions of docs/engine.md.
  it.each([
    ['ship', 'SH IH1 P', 'sh-i-p'],
    ['quit', 'K W IH1 T', 'qu-i-t'],
    ['fox', 'F AA1 K S', 'f-o-x'],
    ['bank', 'B AE1 NG K', 'b-a-n-k'],
    ['watch', 'W AA1 CH', 'w-a-tch'],
    ['bridge', 'B R IH1 JH', 'b-r-i-dge'],
    ['make', 'M EY1 K', 'm-a_e-k'],
    ['paste', 'P EY1 S T', 'p-a_e-s-t'],
    ['dance', 'D AE1 N S', 'd-a-n-ce'],
    ['house', 'HH AW1 S', 'h-ou-se'],
    ['hinge', 'HH IH1 N JH', 'h-i-n-ge'],
    ['freeze', 'F R IY1 Z', 'f-r-ee-ze'],
    ['have', 'HH AE1 V', 'h-a-ve'],
    ['table', 'T EY1 B AH0 L', 't-a-b-le'],
    ['lamb', 'L AE1 M', 'l-a-mb'],
    ['knight', 'N AY1 T', 'kn-igh-t'],
    ['walk', 'W AO1 K', 'w-al-k'],
    ['fire', 'F AY1 ER0', 'f-ire'],
    ['square', 'S K W EH1 R', 's-qu-are'],
    ['around', 'ER0 AW1 N D', 'a-r-ou-n-d'],
    ['station', 'S T EY1 SH AH0 N', 's-t-a-ti-o-n'],
    ['picture', 'P IH1 K CH ER0', 'p-i-c-t-ure'],
    ['finger', 'F IH1 NG G ER0', 'f-i-n-g-er'],
  ])('%s is %s: %s', (word, spoken, expected) => {
    expect(cards(read(word, spoken))).toBe(expected);
  });

  it.each([
    ['hoped', 'HH OW1 P T', 3, 'h-o-p-ed'],
    ['running', 'R AH1 N IH0 NG', 4, 'r-u-nn-i-ng'],
    ['boxes', 'B AA1 K S AH0 Z', 3, 'b-o-x-es'],
    ['makes', 'M EY1 K S', 4, 'm-a_e-k-s'],
    ['landed', 'L AE1 N D AH0 D', 4, 'l-a-n-d-ed'],
  ])('%s (%s) with an ending at %i: %s', (word, spoken, at, expected) => {
    expect(cards(read(word, spoken, at))).toBe(expected);
  });

  it('cover every letter once and give back the sounds, the schwa and doubtful vowels apart', () => {
    const reading = read('bake', 'B EY1 K');
    expect(reading.cards.map(({ letters }) => letters)).toEqual([[0], [1, 3], [2]]);
    expect(reading.sounds).toEqual(['B', 'EY', 'K']);
  });

  it('are guessed, and say so, only where no row of the table fits', () => {
    expect(read('ship', 'SH IH1 P').fallback).toBe(false);
    expect(read('xyz', 'SH IH1 P').fallback).toBe(true);
  });
});

describe('irregular parts', () => {
  // The words are among the common exception words of England's National Curriculum, English
  // Appendix 1, Years 1 and 2; which letters are the exception is common practice, no source.
  it.each([
    ['said', 'S EH1 D', 'ai'],
    ['was', 'W AH1 Z', 'a'],
    ['of', 'AH1 V', 'o f'],
    ['one', 'W AH1 N', 'o'],
    ['friend', 'F R EH1 N D', 'ie'],
    ['who', 'HH UW1', 'wh o'],
    ['could', 'K UH1 D', 'oul'],
    ['put', 'P UH1 T', 'u'],
    ['they', 'DH EY1', 'ey'],
    ['people', 'P IY1 P AH0 L', 'eo'],
    ['great', 'G R EY1 T', 'ea'],
    ['both', 'B OW1 TH', 'o'],
  ])('%s: %s is irregular in %s', (word, spoken, expected) => {
    expect(irregular(read(word, spoken))).toBe(expected);
  });

  it.each([
    ['want', 'W AA1 N T'],
    ['ball', 'B AO1 L'],
    ['cold', 'K OW1 L D'],
    ['kind', 'K AY1 N D'],
    ['city', 'S IH1 T IY0'],
    ['she', 'SH IY1'],
    ['about', 'AH0 B AW1 T'],
    ['mother', 'M AH1 DH ER0'],
  ])('%s (%s) has none', (word, spoken) => {
    expect(irregular(read(word, spoken))).toBe('');
  });
});

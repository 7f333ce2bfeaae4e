import { describe, expect, it } from 'vitest';
import { saidHere } from '../core/language/accent/said-here.ts';
import { builtLexicon } from './built-lexicon.ts';
import { readFixture } from './fixture.ts';

/**
 * England's National Curriculum, English Appendix 1: Spelling (DfE 2013), Years 1 and 2: every example word
 * has its row's vowel when our American cards are said in southern British. The table's sounds are
 * Received Pronunciation.
 */
const soundByIpa: Readonly<Record<string, string>> = {
  'ɜ:': 'ER',
  ə: 'AX',
  ɛə: 'EA',
  'ɔ:': 'AO',
  ɒ: 'OH',
  ʌ: 'AH',
  ʊ: 'UH',
  aʊ: 'AW',
  əʊ: 'OW',
  ɛ: 'EH',
};

/** The vowels of rows that name no sound in the table, by the row's grapheme. */
const soundByRow: Readonly<Record<string, string>> = {
  ar: 'AA',
  ir: 'ER',
  ur: 'ER',
  or: 'AO',
  ore: 'AO',
  aw: 'AO',
  au: 'AO',
  air: 'EA',
  ear: 'IA',
};

const said = (word: string): string[] =>
  builtLexicon
    .readings(builtLexicon.indexOf(word))
    .map((reading) => saidHere(reading, ['southern-british']).join(' '));

const rows = readFixture('nc-appendix1.tsv').flatMap((row) => {
  const { kind, year, row: name = '', phoneme_ipa_rp: ipa = '', example_words: words = '' } = row;
  const sound = soundByRow[name] ?? soundByIpa[ipa];
  if (kind !== 'gpc' || !/^[12]$/.test(year ?? '') || !sound) return [];
  return words
    .split(' ')
    .filter((word) => builtLexicon.indexOf(word) >= 0)
    .map((word) => [word, name, sound] as const);
});

describe('southern British from American cards', () => {
  it('is asked about enough words', () => {
    expect(rows.length).toBeGreaterThan(80);
  });

  it.each(rows)('%s has the vowel of %s', (word, _, sound) => {
    expect(said(word).some((sounds) => sounds.split(' ').includes(sound))).toBe(true);
  });

  // Wells, Accents of English, 1982, lexical sets; from memory.
  it.each([
    ['bath', 'B AA TH'],
    ['carry', 'K AE R IY'],
    ['area', 'EA R IY AX'],
    ['palm', 'P AA M'],
    ['poor', 'P AO'],
    ['hot', 'HH OH T'],
    ['father', 'F AA DH AX'],
    ['hurry', 'HH AH R IY'],
    ['orange', 'OH R AX N JH'],
    ['car', 'K AA'],
    ['caring', 'K EA R IH NG'],
    ['dancing', 'D AA N S IH NG'],
    ['gas', 'G AE S'],
    ['tune', 'T Y UW N'],
  ])('%s is said %s', (word, sounds) => {
    expect(said(word)).toContain(sounds);
  });
});

import { describe, expect, test } from 'vitest';
import { parseSounds } from '../language/phonemes.ts';
import { heard } from './screen-ear.ts';

/** Codes of sounds written as text, joined. */
function plain(text: string): string {
  const out = new Uint8Array(64);
  return out.slice(0, heard.plain(parseSounds(text) ?? [], out)).join(' ');
}

function full(text: string): string {
  const out = new Uint8Array(64);
  return out.slice(0, heard.full(parseSounds(text) ?? [], out)).join(' ');
}

describe('what a class hears as one (Wells 1982; Labov, Ash & Boberg 2006; from memory)', () => {
  test.each([
    ['cot and caught', 'K AA T', 'K AO T'],
    ['which and witch', 'HH W IH CH', 'W IH CH'],
    ['tune with and without y', 'T Y UW N', 'T UW N'],
    ['horse and hoarse', 'HH AO R S', 'HH OW R S'],
    ['marry, merry and Mary', 'M AE R IY', 'M EH R IY'],
    ['hurry with either vowel', 'HH AH R IY', 'HH ER IY'],
    ['fire in one syllable or two', 'F AY R', 'F AY ER'],
    ['the schwa and short u', 'AX B AH V', 'AH B AH V'],
    ['rabbit with schwa or short i', 'R AE B IH T', 'R AE B AX T'],
    ['kitten with schwa or short e', 'K IH T EH N', 'K IH T AX N'],
    ['a sound that two cards share', 'K IH T T AX N', 'K IH T AX N'],
    ['pitch with t and ch on two cards', 'P IH T CH', 'P IH CH'],
    ['bank with n or ng', 'B AE N K', 'B AE NG K'],
    ['finger with or without its g', 'F IH NG G ER', 'F IH NG ER'],
  ])('%s', (_, left, right) => {
    expect(plain(left)).toBe(plain(right));
  });

  test.each([
    ['pin and pen, which only graver words merge', 'P IH N', 'P EH N'],
    ['ship and sheep', 'SH IH P', 'SH IY P'],
    ['car and core', 'K AA R', 'K AO R'],
    ['cute and coot', 'K Y UW T', 'K UW T'],
    ['duck and dug', 'D AH K', 'D AH G'],
    ['sitting and sitten', 'S IH T IH NG', 'S IH T IH N'],
  ])('not %s', (_, left, right) => {
    expect(plain(left)).not.toBe(plain(right));
  });

  test('weak vowels stay apart in full sounds', () => {
    expect(full('T R AE F IH K')).not.toBe(full('T R AE F AX K'));
    expect(full('K AX N')).not.toBe(full('K AH N'));
    expect(full('K AA T')).toBe(full('K AO T'));
  });

  test('no more than 60 sounds are read, so that any input fits', () => {
    const out = new Uint8Array(64);
    const long = parseSounds(Array(500).fill('B IH').join(' ')) ?? [];
    expect(heard.plain(long, out)).toBeLessThanOrEqual(60);
    expect(heard.plain([], out)).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import { isVowelPhoneme, makeSounds, PHONEMES, parseSounds, soundLabel } from './phonemes.ts';

describe('phonemes', () => {
  it('are the 39 of CMUdict and the schwa', () => {
    // CMUdict 0.7b, cmudict.phones: 39 phonemes, 15 of them vowels; AX is ARPABET's schwa.
    expect(PHONEMES).toHaveLength(40);
    expect(PHONEMES.filter(isVowelPhoneme)).toHaveLength(16);
    expect(new Set(PHONEMES).size).toBe(PHONEMES.length);
  });

  it('are read with or without stress, and an unstressed AH is the schwa', () => {
    expect(parseSounds('SH IH P')).toEqual(['SH', 'IH', 'P']);
    expect(parseSounds('AH0 B AW1 T')).toEqual(['AX', 'B', 'AW', 'T']);
    expect(parseSounds('K AH1 P')).toEqual(['K', 'AH', 'P']);
  });

  it('are refused when unknown or missing', () => {
    expect(parseSounds('SH XX P')).toBeNull();
    expect(parseSounds('  ')).toBeNull();
  });

  it('are written as CMUdict writes them, the schwa as AH', () => {
    expect(makeSounds(['AX', 'B', 'AW', 'T'])).toBe('AH B AW T');
  });

  it('have a sign for classrooms and one in IPA', () => {
    expect(soundLabel(['SH'])).toBe('/sh/');
    expect(soundLabel(['EY'])).toBe('/ā/');
    expect(soundLabel(['Y', 'UW'])).toBe('/ū/');
    expect(soundLabel(['SH'], 'ipa')).toBe('/ʃ/');
    expect(soundLabel([])).toBe('silent');
  });
});

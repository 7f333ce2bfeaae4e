import type { Correspondence } from './correspondence.ts';
import type { LaidSyllable } from './laid-syllable.ts';

/** A single vowel letter with a short sound, including the a of wand. */
export function isOneShortVowel({ grapheme, kind, phonemes }: Correspondence): boolean {
  if (kind === 'short-vowel') return true;
  return kind === 'other-vowel' && grapheme.length === 1 && phonemes[0] !== 'AO';
}

/** Whether the vowel's e comes after the ending. */
export function isSplit({ vowel }: LaidSyllable): boolean {
  return vowel.kind === 'silent-e';
}

/** Whether this one letter, alone, ends the word. */
export function lastCoda(s: LaidSyllable, letter: string): boolean {
  return (
    s.opens && s.closes && !isSplit(s) && s.coda.length === 1 && s.coda[0]?.grapheme === letter
  );
}

import type { Phoneme } from '../language/phonemes.ts';

/**
 * Sounds that a letter's name holds and the letter alone does not spell: children who know names
 * before spellings write *h* for /ch/ (aitch), *y* for /w/ (wye) and *r* for *are* (Read 1971; Treiman,
 * Beginning to Spell, 1993, both from memory). Sounds joined by a space.
 */
export const NAME_SOUNDS: ReadonlyMap<string, readonly string[]> = new Map([
  ['a', ['EY']],
  ['c', ['S', 'S IY']],
  ['e', ['IY']],
  ['g', ['JH']],
  ['h', ['CH']],
  ['i', ['AY']],
  ['o', ['OW']],
  ['r', ['AA R']],
  ['u', ['Y UW', 'UW']],
  ['y', ['W', 'W AY']],
]);

/**
 * Vowels that a consonant carries by itself: the r of *brd*, the l of *tabl* and the m of *prizm*
 * are the whole of the syllable (Treiman 1993, from memory).
 */
export const SYLLABIC: ReadonlyMap<string, readonly string[]> = new Map([
  ['l', ['AX L']],
  ['m', ['AX M']],
  ['n', ['AX N']],
  ['r', ['ER', 'AX R', 'AA R']],
]);

/** Whether a letter, said by its name or as a syllable of its own, holds these sounds. */
export function isNamed(
  table: ReadonlyMap<string, readonly string[]>,
  letter: string,
  phonemes: readonly Phoneme[],
): boolean {
  return table.get(letter)?.includes(phonemes.join(' ')) === true;
}

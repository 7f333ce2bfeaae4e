import { isPhoneme, isVowelPhoneme, type Phoneme } from './phonemes.ts';

/** Primary, secondary, none; -1 for a consonant. */
export type Stress = 1 | 2 | 0 | -1;

/** Sounds with the stress of each; both lists have the same length. */
export interface Pronunciation {
  readonly sounds: readonly Phoneme[];
  readonly stress: readonly Stress[];
}

/**
 * Reads CMUdict notation, `"AH0 B AW1 T"`. An unstressed AH becomes the schwa
 * AX, and an ER before a stressed vowel becomes AX R, since its r opens the
 * next syllable (*a·round*). Null when a symbol is unknown or nothing is there.
 */
export function parsePronunciation(text: string): Pronunciation | null {
  const sounds: Phoneme[] = [];
  const stress: Stress[] = [];
  const symbols = text.trim().split(/\s+/).filter(Boolean);
  for (const [index, symbol] of symbols.entries()) {
    const bare = symbol.replace(/[0-2]$/, '');
    const digit = symbol.length > bare.length ? (Number(symbol.at(-1)) as Stress) : null;
    if (bare === 'AX') {
      sounds.push('AX');
      stress.push(0);
    } else if (!isPhoneme(bare)) {
      return null;
    } else if (bare === 'AH' && digit === 0) {
      sounds.push('AX');
      stress.push(0);
    } else if (bare === 'ER' && digit === 0 && /^[A-Z]+[12]$/.test(symbols[index + 1] ?? '')) {
      sounds.push('AX', 'R');
      stress.push(0, -1);
    } else {
      sounds.push(bare);
      stress.push(isVowelPhoneme(bare) ? (digit ?? 1) : -1);
    }
  }
  return sounds.length === 0 ? null : { sounds, stress };
}

/**
 * The parts a word is built from, as letter positions. `breaks` are where a
 * second part of a compound, a suffix, or the base after a prefix begins,
 * ascending. `suffixAt` is where an inflectional ending (s, es, ed, ing, er,
 * est) begins, also listed in `breaks`; null without one.
 */
export interface Morphemes {
  readonly breaks: readonly number[];
  readonly suffixAt: number | null;
}

/** A word of one part. */
export const ONE_PART: Morphemes = { breaks: [], suffixAt: null };

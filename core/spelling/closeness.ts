import { isVowelPhoneme, type Phoneme } from '../language/phonemes.ts';
import type { TableRow } from '../language/row.ts';
import { soundsApart } from './phonetics.ts';

/** How far each row of the table is from one card; told once and remembered. */
export interface Closeness {
  /**
   * 0: the same sound, in some speech at least; else up to 1; Infinity for a vowel and a consonant
   * with nothing in common.
   */
  of(row: TableRow): number;
}

const known = new Map<string, Closeness>();

/** The closeness to a card, by its row where the table has it. */
export function closenessTo(
  id: string,
  row: TableRow | null,
  phonemes: readonly Phoneme[],
): Closeness {
  const found = known.get(id);
  if (found) return found;
  const accepted = new Set((row?.accepts ?? [phonemes]).map((sounds) => sounds.join(' ')));
  const hasVowel = phonemes.some(isVowelPhoneme);
  const told = new Map<TableRow, number>();
  const made: Closeness = {
    of(other) {
      const before = told.get(other);
      if (before !== undefined) return before;
      const now = distance(other);
      told.set(other, now);
      return now;
    },
  };
  function distance(other: TableRow): number {
    if (other.accepts.some((sounds) => accepted.has(sounds.join(' ')))) return 0;
    if (phonemes.length === 0) return Infinity;
    const far = soundsApart(phonemes, other.phonemes);
    return far < 1 || !mixed(other) ? Math.max(0.05, far) : Infinity;
  }
  function mixed(other: TableRow): boolean {
    return hasVowel !== other.phonemes.some(isVowelPhoneme);
  }
  known.set(id, made);
  return made;
}

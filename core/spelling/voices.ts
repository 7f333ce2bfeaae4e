/**
 * What the letters of an attempt may stand for where they stand: rows of the table of correspondences
 * whose context holds there. A single vowel letter in a closed syllable is short; that it says its name
 * there (*fet* for *feet*) is taken into account only where the attempt is no word that children know: who
 * writes *ran* wrote what *ran* says. A c before e, i or y may still be meant as /k/. Irregular rows say
 * nothing of what a child means. Does not depend on the order of the table: rows are sorted by id.
 */
import { correspondencesByGrapheme, rowById } from '../language/correspondences.ts';
import { isVowelPhoneme } from '../language/phonemes.ts';
import { isLongByRule } from '../language/regularity.ts';
import type { Row } from '../language/row.ts';

/** A row as these letters may be meant: by the rules, by the letter's name, or as a c before e. */
export interface Voice {
  readonly row: Row;
  readonly by: 'rule' | 'name' | 'hard-c';
}

/** Letters of an attempt that make one grapheme; a split one covers its vowel only. */
export interface Written {
  readonly letters: string;
  /** The place after the last letter. */
  readonly to: number;
  readonly split: boolean;
  /** Whether a single letter may be said by its name: not where it ends a digraph. */
  readonly named: boolean;
  readonly voices: readonly Voice[];
}

/** The graphemes that may begin at each letter of an attempt, single letters first. */
export function writtenAt(attempt: string, isFamiliar: boolean): readonly (readonly Written[])[] {
  return Array.from({ length: attempt.length }, (_, at) => {
    const found: Written[] = [];
    const named = !isFamiliar && !isGrapheme(attempt.slice(at - 1, at + 1));
    for (let to = at + 1; to <= Math.min(attempt.length, at + LONGEST); to++) {
      const letters = attempt.slice(at, to);
      const rows = rowsByLetters.get(letters);
      if (!rows && to > at + 1) continue;
      const voices = (rows ?? []).flatMap((row) => voiceOf(row, attempt, at, to, isFamiliar));
      found.push({ letters, to, split: false, named: named && to === at + 1, voices });
    }
    const split = rowsByLetters.get(`${attempt[at]}_e`);
    if (split && attempt.indexOf('e', at + 1) >= 0) {
      const voices = split.map((row): Voice => ({ row, by: 'rule' }));
      found.push({ letters: `${attempt[at]}_e`, to: at + 1, split: true, named: false, voices });
    }
    return found;
  });
}

/** Whether these two letters or more are a grapheme that a child may mean. */
export function isGrapheme(letters: string): boolean {
  return letters.length > 1 && (rowsByLetters.get(letters)?.length ?? 0) > 0;
}

const NONE: readonly Voice[] = [];

function voiceOf(
  row: Row,
  attempt: string,
  at: number,
  to: number,
  isFamiliar: boolean,
): readonly Voice[] {
  const { before, after, inside } = row.context;
  const rest = attempt.slice(to);
  if (row.kind === 'long-vowel') {
    if (isLongByRule(row.id, rest, rest === '')) return [{ row, by: 'rule' }];
    return isFamiliar ? NONE : [{ row, by: 'name' }];
  }
  if (row.kind === 'consonant-e' && !/^[sd]?$/.test(rest) && !inside?.test(rest)) return NONE;
  if ((row.kind === 'ending' || row.kind === 'consonant-le') && !/^[sd]?$/.test(rest)) return NONE;
  const holds = before?.test(attempt.slice(0, at)) !== false && after?.test(rest) !== false;
  if (holds) return [{ row, by: 'rule' }];
  if (row.id === 'c=K') return [{ row, by: 'hard-c' }];
  if (!isFamiliar && NAMED_ROWS.has(row.id)) return [{ row, by: 'name' }];
  return NONE;
}

/** Soft c and g out of their place: the letters' names. */
const NAMED_ROWS: ReadonlySet<string> = new Set(['c=S', 'g=JH']);

const rowsByLetters: ReadonlyMap<string, readonly Row[]> = new Map(
  [...correspondencesByGrapheme].map(([letters, cards]) => [
    letters,
    cards
      .flatMap(({ id }) => rowById.get(id) ?? [])
      .filter(isMeant)
      .sort((one, other) => (one.id < other.id ? -1 : 1)),
  ]),
);

/**
 * Rows that a child may mean: not the irregular ones, nor consonants and short vowels that only stand in
 * words from elsewhere (the ch of *chef*, the y of *gym*).
 */
function isMeant({ tier, kind, phonemes, places }: Row): boolean {
  if (tier === 4 || phonemes.length === 0) return false;
  if (tier === 3 && kind === 'short-vowel') return false;
  return tier < 3 || places.length > 0 || phonemes.some(isVowelPhoneme);
}

const LONGEST = Math.max(
  ...[...rowsByLetters].map(([letters, rows]) => (rows.length > 0 ? letters.length : 0)),
);

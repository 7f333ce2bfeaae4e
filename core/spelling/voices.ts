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
import type { TableRow } from '../language/row.ts';

/** A row as these letters may be meant: by the rules, by the letter's name, or as a c before e. */
export interface Voice {
  readonly row: TableRow;
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
  const all: Written[][] = [];
  for (let at = 0; at < attempt.length; at++) {
    const found: Written[] = [];
    const named = !isFamiliar && !isGrapheme(attempt.slice(at - 1, at + 1));
    for (let to = at + 1; to <= Math.min(attempt.length, at + LONGEST); to++) {
      const letters = attempt.slice(at, to);
      const rows = rowsByLetters.get(letters);
      if (!rows && to > at + 1) continue;
      const voices: Voice[] = [];
      for (const row of rows ?? []) {
        const by = meantBy(row, attempt, at, to, isFamiliar);
        if (by) voices.push({ row, by });
      }
      found.push({ letters, to, split: false, named: named && to === at + 1, voices });
    }
    const split = splitVoices.get(attempt[at] as string);
    if (split && attempt.indexOf('e', at + 1) >= 0) {
      found.push({
        letters: `${attempt[at]}_e`,
        to: at + 1,
        split: true,
        named: false,
        voices: split,
      });
    }
    all.push(found);
  }
  return all;
}

/** Whether a vowel with its r says this between vowels alone: the er of *sheriff*. */
export function isBetweenVowels({ kind, tier, places, grapheme }: TableRow): boolean {
  return kind === 'r-vowel' && tier === 3 && places.length === 0 && grapheme.length === 2;
}

/** Whether these two letters or more are a grapheme that a child may mean. */
export function isGrapheme(letters: string): boolean {
  return letters.length > 1 && (rowsByLetters.get(letters)?.length ?? 0) > 0;
}

/** How a row may be meant by these letters; null where it may not. */
function meantBy(
  row: TableRow,
  attempt: string,
  at: number,
  to: number,
  isFamiliar: boolean,
): Voice['by'] | null {
  const { before, after, inside } = row.context;
  const { kind } = row;
  if (kind === 'long-vowel') {
    const rest = attempt.slice(to);
    if (isLongByRule(row.id, rest, rest === '')) return 'rule';
    return isFamiliar ? null : 'name';
  }
  if (kind === 'consonant-e' || kind === 'ending' || kind === 'consonant-le') {
    const rest = attempt.slice(to);
    if (!/^[sd]?$/.test(rest) && !inside?.test(rest)) return null;
  }
  if (isBetweenVowels(row) && !/^[aeiouy]/.test(attempt.slice(to))) return null;
  const holds =
    before?.test(attempt.slice(0, at)) !== false && after?.test(attempt.slice(to)) !== false;
  if (holds) return 'rule';
  if (row.id === 'c=K') return 'hard-c';
  return !isFamiliar && NAMED_ROWS.has(row.id) ? 'name' : null;
}

/** Soft c and g out of their place: the letters' names. */
const NAMED_ROWS: ReadonlySet<string> = new Set(['c=S', 'g=JH']);

const rowsByLetters: ReadonlyMap<string, readonly TableRow[]> = new Map(
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
function isMeant({ tier, kind, phonemes, places }: TableRow): boolean {
  if (tier === 4 || phonemes.length === 0) return false;
  if (tier === 3 && kind === 'short-vowel') return false;
  return tier < 3 || places.length > 0 || phonemes.some(isVowelPhoneme);
}

const LONGEST = Math.max(
  ...[...rowsByLetters].map(([letters, rows]) => (rows.length > 0 ? letters.length : 0)),
);

/** The split graphemes that a vowel letter may begin. */
const splitVoices: ReadonlyMap<string, readonly Voice[]> = new Map(
  [...rowsByLetters].flatMap(([letters, rows]) => {
    const voices = rows.map((row): Voice => ({ row, by: 'rule' }));
    return letters.endsWith('_e') ? [[letters[0] as string, voices] as const] : [];
  }),
);

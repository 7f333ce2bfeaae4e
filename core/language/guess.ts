/**
 * A best guess at the cards of a word that no dictionary lists, from its
 * letters alone: the cheapest cover by regular rows, longer graphemes first, a
 * single vowel short before consonants and long at the end. A guess is shown as
 * a guess; nothing more is claimed for it. O(letters × rows per grapheme).
 */

import { assembleReading } from './assemble.ts';
import type { CardId } from './card-id.ts';
import { ROWS, rowById } from './correspondences.ts';
import { ONE_PART } from './pronunciation.ts';
import type { Reading } from './reading.ts';
import type { TableRow } from './row.ts';
import { type PlacedCard, syllableBreaks } from './syllables.ts';

/**
 * A whole reading from the letters alone, every vowel taken as stressed; null
 * when some letter fits no row.
 */
export function guessReading(word: string): Reading | null {
  const ids = guessCards(word);
  if (!ids) return null;
  const whole = assembleReading(word, ids, []);
  const placed = whole.cards.map(
    ({ id, letters }): PlacedCard => ({
      card: rowById.get(id) as TableRow,
      letters,
      stress: 1,
    }),
  );
  return assembleReading(word, ids, syllableBreaks(word, placed, ONE_PART));
}

/** No English word is longer; anything longer is not a word, and guessing at it would take long. */
const LONGEST_WORD = 45;

/** Card ids in the order of their first letters, or null when some letter fits no row or the word is too long. */
export function guessCards(word: string): readonly CardId[] | null {
  if (word.length > LONGEST_WORD) return null;
  const best: ({ cost: number; ids: readonly CardId[] } | undefined)[] = [{ cost: 0, ids: [] }];
  for (let at = 0; at < word.length; at++) {
    const here = best[at];
    if (!here) continue;
    const offer = (to: number, cost: number, ids: readonly CardId[]): void => {
      const known = best[to];
      if (!known || here.cost + cost < known.cost) {
        best[to] = { cost: here.cost + cost, ids: [...here.ids, ...ids] };
      }
    };
    for (let to = at + 1; to <= Math.min(word.length, at + LONGEST); to++) {
      for (const row of rowsByLetters.get(word.slice(at, to)) ?? []) {
        if (fits(row, word, at, to)) offer(to, costOf(row, word, to), [row.id]);
      }
    }
    const split = splitVowel(word, at);
    if (split) offer(at + 3, 1.2, split);
  }
  return best[word.length]?.ids ?? null;
}

/** Long at the end of a word. An a there is faded more often than long (Anna), and stays with its first sound. */
const LONG_AT_END: ReadonlySet<string> = new Set(['e=IY', 'i=AY', 'o=OW', 'u=UW']);

function costOf(row: TableRow, word: string, to: number): number {
  const place = rank.get(row.id) as number;
  const open = to === word.length;
  if (row.kind === 'long-vowel') {
    if (row.grapheme === 'y') return open ? 1 : 5;
    return open && LONG_AT_END.has(row.id) ? 0.7 : 3;
  }
  return 0.5 + row.tier * 0.3 + place * 0.3;
}

function fits(row: TableRow, word: string, at: number, to: number): boolean {
  const { before, after } = row.context;
  if (row.kind === 'consonant-e' && to !== word.length) return false;
  if (row.kind === 'ending' && (to !== word.length || at < 2)) return false;
  if (row.grapheme === 'le' && to !== word.length) return false;
  if (row.grapheme === 'ed' && row.id !== soundOfEd(word.slice(0, at))) return false;
  return before?.test(word.slice(0, at)) !== false && after?.test(word.slice(to)) !== false;
}

/** melted, jumped, filled: the sound of -ed goes by the letter before it. */
function soundOfEd(stem: string): CardId {
  if (/[td]$/.test(stem)) return 'ed=IH+D';
  return /(p|k|f|x|s|sh|ch|c|gh)$/.test(stem) ? 'ed=T' : 'ed=D';
}

/** make, ride: a final e after one consonant. */
function splitVowel(word: string, at: number): readonly CardId[] | null {
  if (at + 3 !== word.length || word[at + 2] !== 'e') return null;
  const vowel = splitByLetter.get(word[at] as string);
  const consonant = /^[bdfgklmnpstvz]$/.test(word[at + 1] as string)
    ? (rowsByLetters.get(word[at + 1] as string) ?? [])[0]
    : undefined;
  return vowel && consonant ? [vowel, consonant.id] : null;
}

const usable = ROWS.filter((row) => row.tier <= 3 && row.phonemes.length > 0 && isPlain(row));
const rowsByLetters = new Map<string, TableRow[]>();
const rank = new Map<string, number>();
const splitByLetter = new Map<string, CardId>();
for (const row of usable) {
  if (row.grapheme.includes('_')) {
    const letter = row.grapheme[0] as string;
    if (!splitByLetter.has(letter)) splitByLetter.set(letter, row.id);
    continue;
  }
  const group = rowsByLetters.get(row.grapheme) ?? [];
  rank.set(row.id, group.length);
  group.push(row);
  rowsByLetters.set(row.grapheme, group);
}
const LONGEST = Math.max(...[...rowsByLetters.keys()].map((letters) => letters.length));

/** The faded vowels are habits, not guesses. */
function isPlain(row: TableRow): boolean {
  return !row.phonemes.includes('AX') || row.kind === 'consonant-le';
}

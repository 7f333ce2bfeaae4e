import { codeOf, isVoiceless, isVowelCode } from './screen-ear.ts';
import { isVowelLetter } from './screen-letters.ts';

/**
 * Where a base may end inside a word: at its own end, and before each ending
 * that children meet early (-s, -es, -ed, -er, -ers, -ing, -y, -ly, -le, -ish,
 * -est, -in', -a). Both functions write the places to `out`, the whole word
 * first, and return how many; `out` needs room for 6. A base has two codes at
 * least. A place before a looser ending (-le, -en, -in', -ish, -a) has LOOSE added
 * to it, for a mild word does not show through those.
 */
export function soundStems(
  codes: Uint8Array,
  count: number,
  spelledEd: boolean,
  out: Uint8Array,
): number {
  out[0] = count;
  let found = 1;
  const last = codes[count - 1] as number;
  const before = count > 1 ? (codes[count - 2] as number) : 0;
  const third = count > 2 ? (codes[count - 3] as number) : 0;
  if (last === S || last === Z) {
    found = add(out, found, count - 1);
    if (isWeak(before) || before === ER || before === IY) found = add(out, found, count - 2);
    if (last === Z && before === NG && third === IH) found = add(out, found, count - 3);
  } else if (last === T || last === D) {
    if (spelledEd || (last === T) === isVoiceless(before)) found = add(out, found, count - 1);
    if (last === D && isWeak(before)) found = add(out, found, count - 2);
    if (last === T && before === S && (isWeak(third) || third === EH)) {
      found = add(out, found, count - 3);
    }
  } else if (last === ER) found = add(out, found, count - 1);
  else if (last === AH || last === AX) found = add(out, found, count - 1, LOOSE);
  else if (last === IY) {
    found = add(out, found, count - 1);
    if (before === L) found = add(out, found, count - 2);
  } else if (last === NG && before === IH) found = add(out, found, count - 2);
  else if ((last === N || last === SH || last === L) && isWeak(before)) {
    found = add(out, found, count - 2, LOOSE);
  }
  return found;
}

/** Added to a place before a looser ending. */
export const LOOSE = 128;

/**
 * The same for letter codes, in which doubled consonants are single already. The
 * looser endings are left to the sounds.
 */
export function letterStems(codes: Uint8Array, count: number, out: Uint8Array): number {
  out[0] = count;
  let found = 1;
  const last = codes[count - 1] as number;
  const before = count > 1 ? (codes[count - 2] as number) : 0;
  const third = count > 2 ? (codes[count - 3] as number) : 0;
  if (last === s || last === z) {
    found = add(out, found, count - 1);
    if (before === e || before === r) found = add(out, found, count - 2);
    if (before === e && third === i) found = add(out, found, count - 3);
    if (before === r && third === e) found = add(out, found, count - 3);
    if (before === g && third === n) found = add(out, found, count - 4);
  } else if ((last === d || last === r) && before === e) {
    found = add(out, found, count - 1);
    found = add(out, found, count - 2);
  } else if (last === y) {
    found = add(out, found, count - 1);
    if (before === e || before === l) found = add(out, found, count - 2);
  } else if (last === e && before === i) found = add(out, found, count - 2);
  else if (last === g && before === n && third === i) found = add(out, found, count - 3);
  else if (last === h && before === s && third === i) found = add(out, found, count - 3);
  else if (last === t && before === s && third === e) found = add(out, found, count - 3);
  return found;
}

/**
 * Whether a part that begins at `from` begins a syllable: what stands before
 * it would not join it as one onset (*s* before *t*, *b* before *l*).
 */
export function opensSyllable(codes: Uint8Array, from: number): boolean {
  return !joins(codes[from - 1] as number, codes[from] as number);
}

/** Whether a part that ends before `to` closes a syllable: its last sound does not open the next. */
export function closesSyllable(codes: Uint8Array, to: number): boolean {
  const last = codes[to - 1] as number;
  const next = codes[to] as number;
  return last !== S || isVowelCode(next) || !joins(last, next);
}

/** The place of the first code that carries a syllable, or `count`. */
export function firstVowelOf(codes: Uint8Array, count: number, letters: boolean): number {
  for (let at = 0; at < count; at++) {
    const code = codes[at] as number;
    if (letters ? isVowelLetter(code) : isVowelCode(code)) return at;
  }
  return count;
}

/** The place of the last code that carries a syllable, or -1. */
export function lastVowelOf(codes: Uint8Array, count: number, letters: boolean): number {
  for (let at = count - 1; at >= 0; at--) {
    const code = codes[at] as number;
    if (letters ? isVowelLetter(code) : isVowelCode(code)) return at;
  }
  return -1;
}

const AH = codeOf('AH');
const AX = codeOf('AX');
const EH = codeOf('EH');
const ER = codeOf('ER');
const IH = codeOf('IH');
const IY = codeOf('IY');
const D = codeOf('D');
const L = codeOf('L');
const N = codeOf('N');
const NG = codeOf('NG');
const S = codeOf('S');
const SH = codeOf('SH');
const T = codeOf('T');
const Z = codeOf('Z');
const [d, e, g, h, i, l, n, r, s, t, y, z] = [4, 5, 7, 8, 9, 12, 14, 18, 19, 20, 25, 26];

const afterS = flags('P', 'T', 'K', 'M', 'N', 'L', 'W');
const beforeLiquid = flags('P', 'B', 'T', 'D', 'K', 'G', 'F', 'SH', 'S');
const liquid = flags('L', 'R', 'W');

function joins(before: number, after: number): boolean {
  if (before === S && afterS[after] === 1) return true;
  return beforeLiquid[before] === 1 && liquid[after] === 1;
}

function flags(...phonemes: readonly Parameters<typeof codeOf>[0][]): Uint8Array {
  const table = new Uint8Array(64);
  for (const phoneme of phonemes) table[codeOf(phoneme)] = 1;
  return table;
}

/** The vowel of an ending: -es, -ed, -in', -ish. */
function isWeak(code: number): boolean {
  return code === AH || code === AX || code === IH;
}

function add(out: Uint8Array, found: number, end: number, loose = 0): number {
  if (end < 2) return found;
  out[found] = end + loose;
  return found + 1;
}

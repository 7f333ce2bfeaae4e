/**
 * How a spelling looks to a class: simple respellings become the same codes.
 * `ph` is f; c, k, ck and q are k (c before e, i, y is s; ch stays ch, and tch
 * is ch); a doubled consonant is single; a last z after a consonant is s; x is
 * ks. Vowels stay: *boob* is not *bob*. Letters are 1 to 26, ch is 27;
 * all else is left out. One pass, no allocation; at most 60 letters are read.
 */
export function lettersSeen(word: string, out: Uint8Array): number {
  const size = Math.min(word.length, 60);
  let count = 0;
  for (let i = 0; i < size && count < 60; i++) {
    const letter = letterAt(word, i);
    if (letter === 0) continue;
    const next = letterAt(word, i + 1);
    let code = letter;
    if (letter === C) {
      if (next === H) {
        code = CH;
        i += 1;
      } else if (next === E || next === I || next === Y) code = S;
      else code = K;
    } else if (letter === P && next === H) {
      code = F;
      i += 1;
    } else if (letter === Q) code = K;
    else if (letter === T && next === C && letterAt(word, i + 2) === H) continue;
    else if (letter === X) {
      if (out[count - 1] !== K) out[count++] = K;
      code = S;
    } else if (letter === Z && next === 0 && count > 2 && !endsSoft(out[count - 1] as number)) {
      code = S;
    }
    if (count > 0 && code === out[count - 1] && !isVowelLetter(code)) continue;
    out[count++] = code;
  }
  return count;
}

/** The letters themselves as codes, nothing merged: for words known to be harmless. */
export function lettersExactly(word: string, out: Uint8Array): number {
  const size = Math.min(word.length, 60);
  let count = 0;
  for (let i = 0; i < size; i++) {
    const letter = letterAt(word, i);
    if (letter !== 0) out[count++] = letter;
  }
  return count;
}

const A = 1;
const C = 3;
const E = 5;
const F = 6;
const H = 8;
const I = 9;
const K = 11;
const O = 15;
const P = 16;
const Q = 17;
const S = 19;
const T = 20;
const U = 21;
const X = 24;
const Y = 25;
const Z = 26;
const CH = 27;

/** Whether a letter code is a vowel's; y counts, for it carries syllables. */
export function isVowelLetter(code: number): boolean {
  return code === A || code === E || code === I || code === O || code === U || code === Y;
}

/** Whether a z after this letter is a z: a vowel, or another z. */
function endsSoft(code: number): boolean {
  return isVowelLetter(code) || code === Z;
}

/** 1 to 26 for a to z in either case, n for ñ, 0 for anything else or no letter. */
function letterAt(word: string, index: number): number {
  const code = word.charCodeAt(index) | 32;
  if (code >= 97 && code <= 122) return code - 96;
  return code === 241 ? 14 : 0;
}

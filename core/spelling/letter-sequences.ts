/**
 * Correct letter sequences: every pair of neighboring letters that stands in the attempt as in the
 * word counts one, the edges of the word counting as letters, so that a word of four letters has five
 * (White & Haring 1980; Deno, Mirkin & Wesson 1984; as taught in Hosp, Hosp & Howell, The ABCs of CBM,
 * 2007; all from memory). A letter is matched with one letter only, in the order of the word, in the way
 * that gives most. O(letters of the word × letters of the attempt).
 */
import type { LetterSequences } from './attempt.ts';

/** The score of `wrote` against `word`, both as plain letters. */
export function letterSequences(word: string, wrote: string): LetterSequences {
  const of = word.length + 1;
  if (wrote === '') return { right: 0, of };
  if (wrote === word) return { right: of, of };
  const asked = `^${word}$`;
  const given = `^${wrote}$`;
  const width = given.length;
  // best[a][b]: most pairs when asked[a] is matched with given[b]; ahead: most of all matches up to there
  const ahead = new Uint8Array(asked.length * width);
  let best = 0;
  let previous = new Int16Array(width);
  for (let a = 0; a < asked.length; a++) {
    const matched = new Int16Array(width).fill(-1);
    for (let b = 0; b < width; b++) {
      if (asked[a] === given[b]) {
        const before = a > 0 && b > 0 ? (ahead[(a - 1) * width + b - 1] as number) : 0;
        const beside = a > 0 && b > 0 ? (previous[b - 1] as number) + 1 : 0;
        matched[b] = Math.max(before, beside);
        best = Math.max(best, matched[b] as number);
      }
      const up = a > 0 ? (ahead[(a - 1) * width + b] as number) : 0;
      const left = b > 0 ? (ahead[a * width + b - 1] as number) : 0;
      ahead[a * width + b] = Math.max(up, left, matched[b] as number, 0);
    }
    previous = matched;
  }
  return { right: best, of };
}

import { readFileSync } from 'node:fs';
import { readAttempt } from '../core/spelling/read-attempt.ts';
import { isFamiliarIn } from '../core/spelling/said-word.ts';
import { decodeLexicon } from '../core/words/lexicon-format.ts';
import { type Measurement, measure } from './measure.ts';

const WORDS = 4000;

/**
 * Reading what children wrote (the aim is 20,000 attempts a second on one core): of the commonest words,
 * each with a vowel lost, a letter exchanged and a letter doubled in turn. Beside it stands its ratio to a
 * yardstick taken in the same run: the edit distance of the same words.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const bytes = new Uint8Array(readFileSync(new URL('../lexicon/dist/words.bin', import.meta.url)));
  const lexicon = decodeLexicon(bytes);
  const known = { taught: null, isFamiliar: isFamiliarIn(lexicon) };
  const attempts = Array.from({ length: WORDS }, (_, index) => ({
    readings: lexicon.readings(index),
    word: lexicon.word(index),
    wrote: slipOn(lexicon.word(index), index),
  }));
  const yardstick = await measure({
    name: `yardstick: the edit distance of ${WORDS} attempts`,
    run: () => attempts.reduce((sum, { word, wrote }) => sum + editDistance(word, wrote), 0),
  });
  const read = await measure({
    name: `read ${WORDS} attempts`,
    aim: WORDS / 20,
    run: () => attempts.forEach(({ readings, wrote }) => void readAttempt(readings, wrote, known)),
  });
  const ratio = (read.median / yardstick.median).toFixed(1);
  return [yardstick, { ...read, name: `${read.name} (${ratio} yardsticks)` }];
}

function slipOn(word: string, turn: number): string {
  const middle = Math.floor(word.length / 2);
  if (turn % 3 === 0) return word.replace(/(?<=.)[aeiou]/, '') || word;
  if (turn % 3 === 1) return `${word.slice(0, middle)}d${word.slice(middle + 1)}`;
  return word.slice(0, middle) + word[middle] + word.slice(middle);
}

/** Levenshtein 1966, one row at a time. */
function editDistance(word: string, wrote: string): number {
  let row = Array.from({ length: wrote.length + 1 }, (_, at) => at);
  for (let at = 1; at <= word.length; at++) {
    const next = [at];
    for (let to = 1; to <= wrote.length; to++) {
      const same = word[at - 1] === wrote[to - 1] ? 0 : 1;
      next.push(
        Math.min(
          (row[to] as number) + 1,
          (next[to - 1] as number) + 1,
          (row[to - 1] as number) + same,
        ),
      );
    }
    row = next;
  }
  return row.at(-1) as number;
}

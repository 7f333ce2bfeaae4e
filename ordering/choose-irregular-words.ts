import type { Grade } from '../core/sequence/sequence.ts';
import type { CommonWord } from './common-words.ts';
import { IRREGULAR_WORDS } from './irregular-words.ts';
import { openingSteps, type PlacedUnit } from './placed-unit.ts';

/** The first step with an irregular word: by then a few words can be read around it. */
const FIRST_STEP = 3;
const WORDS_A_STEP: Readonly<Record<Grade, number>> = { K: 1, '1': 2, '2': 2, '3': 2 };

/** A word that its rules open within this many steps is not learned by heart: it can wait. */
export const SOON = 20;

/**
 * The irregular words of each step, by place. A step takes the commonest of its
 * grade's words (or of an earlier grade's, left over) that no rule opens soon.
 */
export function chooseIrregularWords(
  placed: readonly PlacedUnit[],
  words: readonly CommonWord[],
): readonly (readonly string[])[] {
  const opens = openingSteps(placed, words);
  const bandOf = new Map(words.map(({ word, band }) => [word, band]));
  const waiting: string[] = [];
  const chosen: string[][] = [];
  let grade: Grade | null = null;
  for (const step of placed) {
    if (step.grade !== grade) {
      grade = step.grade;
      waiting.push(...byBand(IRREGULAR_WORDS[grade], bandOf));
    }
    const taken: string[] = [];
    for (const word of waiting) {
      if (step.number < FIRST_STEP || taken.length === WORDS_A_STEP[step.grade]) break;
      if ((opens.get(word) ?? Number.POSITIVE_INFINITY) > step.number + SOON) taken.push(word);
    }
    for (const word of taken) waiting.splice(waiting.indexOf(word), 1);
    chosen.push(taken);
  }
  return chosen;
}

const UNLISTED = 8;

/** The commonest band first; inside a band, and for words that the table lacks, the list's order. */
function byBand(list: readonly string[], bandOf: ReadonlyMap<string, number>): readonly string[] {
  const band = (word: string): number => bandOf.get(word) ?? UNLISTED;
  return [...list].sort((left, right) => band(left) - band(right));
}

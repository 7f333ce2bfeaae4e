import { LOGISTIC, LOGISTIC_ROOT, NODES } from './grid.ts';

/** No strength is ever ruled out for good. */
const LEAST = 1e-12;
/** A likelihood may fall so far, and grow as far, before it is brought back. */
const REACH = 1e-3;

/** It was read correctly: each strength is as likely as that is under it. */
export function readCorrectly(all: Float64Array, first: number, table: number): void {
  const logistic = LOGISTIC;
  const end = first + NODES;
  let at = table;
  for (let node = first; node < end; node++) {
    all[node] = (all[node] as number) * (logistic[at] as number) + LEAST;
    at += 1;
  }
}

/**
 * The word went wrong. `others` is the chance that all its other cards go well: 1 where it was said
 * that this card broke; else the word is wrong unless this card and all others go well, which is exact.
 */
export function readWrongly(all: Float64Array, first: number, table: number, others: number): void {
  const logistic = LOGISTIC;
  const end = first + NODES;
  let at = table;
  for (let node = first; node < end; node++) {
    all[node] = (all[node] as number) * (1 - others * (logistic[at] as number)) + LEAST;
    at += 1;
  }
}

/** A reading together counts half: the square root of what one alone would say, at log-odds stretched by `slope`. */
export function readCorrectlyByHalf(
  all: Float64Array,
  first: number,
  table: number,
  slope: number,
): void {
  const roots = LOGISTIC_ROOT;
  const end = first + NODES;
  let at = table;
  for (let node = first; node < end; node++) {
    all[node] = (all[node] as number) * (roots[at] as number) + LEAST;
    at += slope;
  }
}

/** The same of a word that went wrong together; `others` as in `readWrongly`. */
export function readWronglyByHalf(
  all: Float64Array,
  first: number,
  table: number,
  slope: number,
  others: number,
): void {
  const logistic = LOGISTIC;
  const end = first + NODES;
  let at = table;
  for (let node = first; node < end; node++) {
    const factor = 1 - others * (logistic[at] as number) + 1e-9;
    all[node] = (all[node] as number) * Math.sqrt(factor) + LEAST;
    at += slope;
  }
}

/** It was read correctly, but that counts only in part: its likelihood to the power of `weight`. */
export function readCorrectlyInPart(
  all: Float64Array,
  first: number,
  table: number,
  weight: number,
): void {
  const logistic = LOGISTIC;
  const end = first + NODES;
  let at = table;
  for (let node = first; node < end; node++) {
    all[node] = (all[node] as number) * (logistic[at] as number) ** weight + LEAST;
    at += 1;
  }
}

/**
 * What one learns of a card from a word that is written down only because it went wrong: what it says
 * of the card, over the chance that the word is written down at all.
 */
export function readAmongMistakes(
  all: Float64Array,
  first: number,
  table: number,
  others: number,
  said: 'well' | 'wrong' | 'unknown' | 'unsaid',
): void {
  const logistic = LOGISTIC;
  const end = first + NODES;
  let at = table;
  for (let node = first; node < end; node++) {
    const p = logistic[at] as number;
    const wrong = 1 - others * p;
    const factor = said === 'well' ? p : said === 'wrong' ? 1 - p : said === 'unknown' ? 1 : wrong;
    all[node] = ((all[node] as number) * factor) / (wrong + 1e-9) + LEAST;
    at += 1;
  }
}

/**
 * What counts of a likelihood is how its strengths compare: by many readings it falls or grows as a
 * whole, and is brought back before it is lost. `mean` is what it is on average.
 */
export function keepInReach(all: Float64Array, first: number, mean: number): void {
  if (mean > REACH && mean < 1 / REACH) return;
  const inverse = 1 / Math.max(mean, LEAST);
  for (let node = first; node < first + NODES; node++) all[node] = (all[node] as number) * inverse;
}

import { LOGISTIC, NODES, STRIDE } from './grid.ts';

/** No strength is ever ruled out for good. */
const LEAST = 1e-12;

/** It was read rightly: each strength is as likely as that is under it. */
export function readRightly(all: Float64Array, first: number, table: number): void {
  let most = 0;
  let at = table;
  for (let node = first; node < first + NODES; node++) {
    const value = (all[node] as number) * (LOGISTIC[at] as number);
    all[node] = value;
    if (value > most) most = value;
    at += STRIDE;
  }
  scale(all, first, most);
}

/**
 * The word went wrong. `others` is the chance that all its other cards go well: 1 where it was said
 * that this card broke; else the word is wrong unless this card and all others go well, which is exact.
 */
export function readWrongly(all: Float64Array, first: number, table: number, others: number): void {
  let most = 0;
  let at = table;
  for (let node = first; node < first + NODES; node++) {
    const value = (all[node] as number) * (1 - others * (LOGISTIC[at] as number));
    all[node] = value;
    if (value > most) most = value;
    at += STRIDE;
  }
  scale(all, first, most);
}

/** A reading that counts only in part: its likelihood to the power of `weight`. `others` null: rightly. */
export function readInPart(
  all: Float64Array,
  first: number,
  table: number,
  slope: number,
  others: number | null,
  weight: number,
): void {
  let most = 0;
  let at = table;
  for (let node = first; node < first + NODES; node++) {
    const p = LOGISTIC[at] as number;
    const factor = others === null ? p : 1 - others * p + 1e-9;
    // A square root takes a fraction of the time of any other power, and a choir's weight is a half.
    const value = (all[node] as number) * (weight === 0.5 ? Math.sqrt(factor) : factor ** weight);
    all[node] = value;
    if (value > most) most = value;
    at += STRIDE * slope;
  }
  scale(all, first, most);
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
  let most = 0;
  let at = table;
  for (let node = first; node < first + NODES; node++) {
    const p = LOGISTIC[at] as number;
    const wrong = 1 - others * p;
    const factor = said === 'well' ? p : said === 'wrong' ? 1 - p : said === 'unknown' ? 1 : wrong;
    const value = ((all[node] as number) * factor) / (wrong + 1e-9);
    all[node] = value;
    if (value > most) most = value;
    at += STRIDE;
  }
  scale(all, first, most);
}

/** The likeliest strength has 1: what counts is how they compare. */
function scale(all: Float64Array, first: number, most: number): void {
  const inverse = 1 / Math.max(most, 1e-30);
  for (let node = first; node < first + NODES; node++) {
    const value = (all[node] as number) * inverse;
    all[node] = Math.max(value, LEAST);
  }
}

/**
 * The words of a shape while cards move: each row of cards is judged once and
 * remembered.
 *
 * Method: a memo by row. When some rows of the asked piles are new, the smallest
 * piles that hold all new rows are judged together (for one card put down, that
 * card with all others), since makeWordTable shares its work among rows. After
 * that a table costs one look-up a row. Alternative: all candidates judged
 * beforehand. That is quick for three piles, and hopeless for five, whose
 * candidates make millions of rows.
 */

import type { CardId } from '../../language/card-id.ts';
import type { Shape } from '../shapes/shapes.ts';
import type { JudgeContext } from './judge-context.ts';
import { makeWordTable, type WordTable } from './word-table.ts';

type Piles = readonly (readonly CardId[])[];

/** Judges rows of one shape in one context; the same piles give the same table as makeWordTable. */
export interface RowJudge {
  readonly shape: Shape;
  /** How many rows of these piles were not judged yet: what `table` would cost. */
  readonly unjudged: (piles: Piles) => number;
  /** The table of these piles. Throws on an unknown card id. */
  readonly table: (piles: Piles) => WordTable;
}

/** A judge that has judged nothing yet. */
export function makeRowJudge(shape: Shape, context: JudgeContext): RowJudge {
  const numbers = shape.piles.map(() => new Map<string, number>());
  /** Where a row's word and outcome stand, by its key. */
  const places = new Map<number, number>();
  const allWords: string[] = [];
  const allOutcomes: number[] = [];
  return {
    shape,
    unjudged(piles) {
      const keys = rowKeys(piles, numbers);
      let count = 0;
      for (let row = 0; row < keys.length; row++) if (!places.has(keys[row] as number)) count++;
      return count;
    },
    table(piles) {
      const keys = rowKeys(piles, numbers);
      const open = smallestHolding(piles, (row) => !places.has(keys[row] as number), keys.length);
      if (open) remember(open);
      const words = new Array<string>(keys.length);
      const outcomes = new Uint8Array(keys.length);
      for (let row = 0; row < keys.length; row++) {
        const place = places.get(keys[row] as number) as number;
        words[row] = allWords[place] as string;
        outcomes[row] = allOutcomes[place] as number;
      }
      return { shape, piles, words, outcomes };
    },
  };

  function remember(piles: Piles): void {
    const fresh = makeWordTable(shape, piles, context);
    const keys = rowKeys(piles, numbers);
    for (let row = 0; row < keys.length; row++) {
      if (places.has(keys[row] as number)) continue;
      places.set(keys[row] as number, allWords.length);
      allWords.push(fresh.words[row] as string);
      allOutcomes.push(fresh.outcomes[row] as number);
    }
  }
}

/** More different cards than any pile can see; six piles of them stay within whole numbers. */
const MOST_CARDS = 400;

/** One whole number a row, in the order of a word table; cards are numbered as they come. */
function rowKeys(piles: Piles, numbers: readonly Map<string, number>[]): Float64Array {
  let keys = new Float64Array(1);
  piles.forEach((pile, at) => {
    const longer = new Float64Array(keys.length * pile.length);
    const own = pile.map((id) => numberOf(id, numbers[at] as Map<string, number>));
    let row = 0;
    for (const key of keys) for (const number of own) longer[row++] = key * MOST_CARDS + number;
    keys = longer;
  });
  return keys;
}

function numberOf(id: string, numbers: Map<string, number>): number {
  const known = numbers.get(id);
  if (known !== undefined) return known;
  if (numbers.size === MOST_CARDS) throw new Error(`more than ${MOST_CARDS} cards for one pile`);
  numbers.set(id, numbers.size);
  return numbers.size - 1;
}

/** The smallest piles that hold every marked one of the rows; null when none is marked. */
function smallestHolding(
  piles: Piles,
  isMarked: (row: number) => boolean,
  rows: number,
): Piles | null {
  const used = piles.map((pile) => new Uint8Array(pile.length));
  let isAny = false;
  for (let row = 0; row < rows; row++) {
    if (!isMarked(row)) continue;
    isAny = true;
    let rest = row;
    for (let at = piles.length - 1; at >= 0; at--) {
      const pile = used[at] as Uint8Array;
      pile[rest % pile.length] = 1;
      rest = Math.floor(rest / pile.length);
    }
  }
  return isAny ? piles.map((pile, at) => pile.filter((_, card) => used[at]?.[card])) : null;
}

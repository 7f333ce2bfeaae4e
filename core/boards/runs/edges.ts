/** Which words of a board are one card apart. The arrays are flat, since a walk reads them all the time. */

import type { WordTable } from '../judge/word-table.ts';
import type { RunWords } from './words.ts';

/** Edges between words that differ in one card and in spelling, each in both directions. */
export interface RunEdges {
  /** The edges of word n are those from firstEdge[n] to firstEdge[n + 1]. */
  readonly firstEdge: Int32Array;
  /** By edge: the word it leads to, the pile it turns, and the contrast it shows (-1: none). */
  readonly leadsTo: Int32Array;
  readonly turns: Uint8Array;
  readonly contrast: Int16Array;
  /** How many contrasts some edge shows. */
  readonly contrasts: number;
}

/** Joins the words of a judged board. A contrast counts once in each pile that holds both cards. */
export function makeRunEdges(
  table: WordTable,
  { index, spelling, cardAt }: RunWords,
  contrasts: readonly (readonly [string, string])[],
): RunEdges {
  const { piles } = table;
  const wordAt = new Int32Array(table.outcomes.length).fill(-1);
  index.forEach((at, word) => {
    wordAt[at] = word;
  });
  const cards = piles.reduce((sum, pile) => sum + pile.length, 0);
  const pairOf = numberContrasts(piles, cards, contrasts);
  const shown = new Set<number>();
  const firstEdge = new Int32Array(index.length + 1);
  const most = index.length * (cards - piles.length);
  const leadsTo = new Int32Array(most);
  const turns = new Uint8Array(most);
  const contrast = new Int16Array(most);
  let edges = 0;
  for (let word = 0; word < index.length; word++) {
    const at = index[word] as number;
    let stride = 1;
    for (let pile = piles.length - 1; pile >= 0; pile--) {
      const size = (piles[pile] as readonly string[]).length;
      const own = Math.floor(at / stride) % size;
      const left = cardAt[word * piles.length + pile] as number;
      for (let card = 0; card < size; card++) {
        const other = wordAt[at + (card - own) * stride] as number;
        if (card === own || other < 0 || spelling[word] === spelling[other]) continue;
        const pair = pairOf[left * cards + left + card - own] as number;
        if (pair >= 0) shown.add(pair);
        leadsTo[edges] = other;
        turns[edges] = pile;
        contrast[edges++] = pair;
      }
      stride *= size;
    }
    firstEdge[word + 1] = edges;
  }
  return {
    firstEdge,
    leadsTo: leadsTo.subarray(0, edges),
    turns: turns.subarray(0, edges),
    contrast: contrast.subarray(0, edges),
    contrasts: shown.size,
  };
}

/** The number of each contrast by one card's number · cards + the other's, in both orders; else -1. */
function numberContrasts(
  piles: readonly (readonly string[])[],
  cards: number,
  contrasts: readonly (readonly [string, string])[],
): Int16Array {
  const pairOf = new Int16Array(cards * cards).fill(-1);
  let number = 0;
  let first = 0;
  for (const pile of piles) {
    for (const [one, other] of contrasts) {
      const [left, right] = [first + pile.indexOf(one), first + pile.indexOf(other)];
      if (left < first || right < first || left === right) continue;
      if (pairOf[left * cards + right] !== -1) continue;
      pairOf[left * cards + right] = number;
      pairOf[right * cards + left] = number++;
    }
    first += pile.length;
  }
  return pairOf;
}

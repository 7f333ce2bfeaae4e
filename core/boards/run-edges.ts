/** Which words of a board are one card apart, in flat arrays: a walk looks at them all the time. */
import type { RunWords } from './run-words.ts';
import type { WordTable } from './word-table.ts';

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
  const pairs = numberContrasts(piles, contrasts);
  const shown = new Set<number>();
  const firstEdge = new Int32Array(index.length + 1);
  const leadsTo: number[] = [];
  const turns: number[] = [];
  const contrast: number[] = [];
  for (let word = 0; word < index.length; word++) {
    let stride = 1;
    for (let pile = piles.length - 1; pile >= 0; pile--) {
      const size = (piles[pile] as readonly string[]).length;
      const at = index[word] as number;
      const own = Math.floor(at / stride) % size;
      for (let card = 0; card < size; card++) {
        const other = wordAt[at + (card - own) * stride] as number;
        if (card === own || other < 0 || spelling[word] === spelling[other]) continue;
        const left = cardAt[word * piles.length + pile] as number;
        const right = cardAt[other * piles.length + pile] as number;
        const pair = pairs.size > 0 ? (pairs.get(`${left} ${right}`) ?? -1) : -1;
        if (pair >= 0) shown.add(pair);
        leadsTo.push(other);
        turns.push(pile);
        contrast.push(pair);
      }
      stride *= size;
    }
    firstEdge[word + 1] = leadsTo.length;
  }
  return {
    firstEdge,
    leadsTo: Int32Array.from(leadsTo),
    turns: Uint8Array.from(turns),
    contrast: Int16Array.from(contrast),
    contrasts: shown.size,
  };
}

/** The number of each contrast by the numbers of its cards, in both orders. */
function numberContrasts(
  piles: readonly (readonly string[])[],
  contrasts: readonly (readonly [string, string])[],
): ReadonlyMap<string, number> {
  const pairs = new Map<string, number>();
  let first = 0;
  for (const pile of piles) {
    for (const [one, other] of contrasts) {
      const [left, right] = [first + pile.indexOf(one), first + pile.indexOf(other)];
      if (left < first || right < first || left === right || pairs.has(`${left} ${right}`))
        continue;
      const number = pairs.size / 2;
      pairs.set(`${left} ${right}`, number);
      pairs.set(`${right} ${left}`, number);
    }
    first += pile.length;
  }
  return pairs;
}

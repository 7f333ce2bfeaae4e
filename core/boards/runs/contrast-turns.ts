/**
 * How many flips of a run can turn one card into its look-alike: what is asked (a third of the flips, or
 * what the board allows), and a bound that no run exceeds. A word of a run has two neighbors at most, so
 * it takes part in two such turns at most, and in one where only one look-alike of it is a word.
 */
import type { RunEdges } from './edges.ts';
import type { RunWords } from './words.ts';

/** So many flips are to turn one card into its look-alike when that is asked; ours. */
const SHARE = 1 / 3;

/** The turns that are asked of a run of so many flips, contrasts being asked for. */
export function contrastTurnsAsked(flips: number): number {
  return flips < 2 ? 0 : Math.ceil(flips * SHARE);
}

/** The turns that a run aims at: one more than is asked, since walks now and then end one short. */
export function contrastTurnsSought(flips: number): number {
  return flips < 2 ? 0 : contrastTurnsAsked(flips) + 1;
}

/** No run of so many flips has more turns of one card into its look-alike. O(edges). */
export function mostContrastTurns(
  { spelling, spellings }: RunWords,
  { firstEdge, contrast }: RunEdges,
  flips: number,
): number {
  const ways = new Uint8Array(spellings);
  for (let word = 0; word < spelling.length; word++) {
    let own = 0;
    for (let edge = firstEdge[word] as number; edge < (firstEdge[word + 1] as number); edge++) {
      if ((contrast[edge] as number) >= 0) own++;
    }
    const at = spelling[word] as number;
    ways[at] = Math.max(ways[at] as number, Math.min(2, own));
  }
  const often = Math.min(
    flips,
    ways.reduce((count, way) => count + Number(way === 2), 0),
  );
  const once = Math.min(
    flips - often,
    ways.reduce((count, way) => count + Number(way === 1), 0),
  );
  return Math.max(0, Math.min(flips - 1, Math.floor(often + once / 2)));
}

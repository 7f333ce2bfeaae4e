/**
 * A board as a graph: its nodes are the words that may be shown, its edges join
 * those that differ in one card. A run is a path in it.
 */
import type { Lexicon } from '../../words/lexicon.ts';
import type { WordTable } from '../judge/word-table.ts';
import { makeRunEdges, type RunEdges } from './edges.ts';
import { reachOf } from './reach.ts';
import type { RunWishes } from './wishes.ts';
import { makeRunWords, type RunWords } from './words.ts';

/** Nodes are words by number. */
export interface RunGraph extends RunWords, RunEdges {
  /** By node: how many spellings can be reached from it, its own among them. */
  readonly reach: Int32Array;
}

/** Makes the graph of a judged board. O(words × cards). */
export function makeRunGraph(table: WordTable, wishes: RunWishes, lexicon: Lexicon): RunGraph {
  const words = makeRunWords(table, wishes, lexicon);
  const edges = makeRunEdges(table, words, wishes.contrasts ?? []);
  return { ...words, ...edges, reach: reachOf(words, edges) };
}

/** The edge between two nodes, which there must be. */
export function edgeBetween({ firstEdge, leadsTo }: RunGraph, from: number, to: number): number {
  let edge = firstEdge[from] as number;
  while (leadsTo[edge] !== to) edge++;
  return edge;
}

/** Whether two nodes differ in exactly one card and in spelling. */
export function areJoined(
  { cardAt, piles, spelling }: RunGraph,
  one: number,
  other: number,
): boolean {
  let differ = 0;
  for (let pile = 0; pile < piles; pile++) {
    if (cardAt[one * piles + pile] !== cardAt[other * piles + pile]) differ++;
  }
  return differ === 1 && spelling[one] !== spelling[other];
}

/** What the score counts of a path through the graph of a board. */
import { edgeBetween, type RunGraph } from './graph.ts';
import { offRise, RISE_SLACK } from './hardness.ts';
import { MOST_IN_A_ROW, type RunCounts } from './score.ts';
import { AGAIN, GLADLY } from './words.ts';

/** Counts a path of at most `flips` nodes in the order they are shown, each one edge from the last. */
export function countRun(graph: RunGraph, path: readonly number[], flips: number): RunCounts {
  const { isReal, isFocused, isDue, reserve, hard, cardAt, piles } = graph;
  const seenCards = new Uint8Array(graph.cards);
  const contrasted = new Uint8Array(graph.contrasts);
  const counts = {
    real: 0,
    focused: 0,
    due: 0,
    fresh: 0,
    good: 0,
    varied: 0,
    risen: 0,
    cards: 0,
    contrasts: 0,
    contrastTurns: 0,
  };
  let inARow = 0;
  let turnedBefore = -1;
  for (let place = 0; place < path.length; place++) {
    const node = path[place] as number;
    counts.real += isReal[node] as number;
    counts.focused += isFocused[node] as number;
    counts.due += isDue[node] as number;
    if (reserve[node] !== AGAIN) counts.fresh++;
    if (reserve[node] === GLADLY) counts.good++;
    if (hard && offRise(hard[node] as number, place, flips) <= RISE_SLACK) counts.risen++;
    for (let pile = 0; pile < piles; pile++) {
      const card = cardAt[node * piles + pile] as number;
      if (seenCards[card]) continue;
      seenCards[card] = 1;
      counts.cards++;
    }
    if (place > 0) turn(path[place - 1] as number, node);
    if (inARow <= MOST_IN_A_ROW) counts.varied++;
  }
  return { flips: path.length, ...counts };

  function turn(from: number, to: number): void {
    const turned = turnedBetween(graph, from, to);
    inARow = turned === turnedBefore ? inARow + 1 : 1;
    turnedBefore = turned;
    if (graph.contrasts === 0) return;
    const contrast = graph.contrast[edgeBetween(graph, from, to)] as number;
    if (contrast < 0) return;
    counts.contrastTurns++;
    if (contrasted[contrast]) return;
    contrasted[contrast] = 1;
    counts.contrasts++;
  }
}

/** The pile whose card is another. */
function turnedBetween({ cardAt, piles }: RunGraph, from: number, to: number): number {
  let pile = 0;
  while (cardAt[from * piles + pile] === cardAt[to * piles + pile]) pile++;
  return pile;
}

/**
 * Improves a path flip by flip: a word gives way to another that is one card away
 * from both its neighbors when the run is worth more with it. This is hill
 * climbing in the smallest neighborhood there is. It ends when no exchange helps,
 * since each one gains points. O(flips × edges of a node) counts a round; there
 * are seldom more than three rounds.
 */
import { countRun } from './counts.ts';
import { areJoined, type RunGraph } from './graph.ts';
import { pointsOf, type RunGoal } from './score.ts';

/** The path with words exchanged; the same path when no exchange makes it worth more. */
export function polishPath(
  graph: RunGraph,
  path: readonly number[],
  goal: RunGoal,
): readonly number[] {
  const { firstEdge, leadsTo, spelling } = graph;
  const better = [...path];
  const used = new Uint8Array(graph.spellings);
  for (const node of path) used[spelling[node] as number] = 1;
  let points = pointsOf(countRun(graph, better, goal.flips), goal);
  let gained = path.length > 1;
  while (gained) {
    gained = false;
    for (let place = 0; place < better.length; place++) gained = exchangeAt(place) || gained;
  }
  return better;

  /** Tries every word that is joined to both neighbors of a place. */
  function exchangeAt(place: number): boolean {
    const near = better[place === 0 ? 1 : place - 1] as number;
    const after = place === 0 ? undefined : better[place + 1];
    let exchanged = false;
    for (let edge = firstEdge[near] as number; edge < (firstEdge[near + 1] as number); edge++) {
      const node = leadsTo[edge] as number;
      if (used[spelling[node] as number]) continue;
      if (after !== undefined && !areJoined(graph, node, after)) continue;
      const old = better[place] as number;
      better[place] = node;
      const now = pointsOf(countRun(graph, better, goal.flips), goal);
      if (now <= points) {
        better[place] = old;
        continue;
      }
      points = now;
      exchanged = true;
      used[spelling[old] as number] = 0;
      used[spelling[node] as number] = 1;
    }
    return exchanged;
  }
}

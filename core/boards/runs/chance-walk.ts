/** A walk by chance alone: what a board gives when its cards are turned blindly. */
import type { Random } from '../../random.ts';
import type { RunGraph } from './graph.ts';

/** A path of at most `flips` nodes, no spelling twice; it ends early where no edge leads on. */
export function walkByChance(graph: RunGraph, flips: number, random: Random): readonly number[] {
  const { index, spelling, firstEdge, leadsTo } = graph;
  if (index.length === 0 || flips === 0) return [];
  const used = new Set<number>();
  const path: number[] = [];
  let at = random.below(index.length);
  for (;;) {
    path.push(at);
    used.add(spelling[at] as number);
    if (path.length === flips) return path;
    const onward: number[] = [];
    for (let edge = firstEdge[at] as number; edge < (firstEdge[at + 1] as number); edge++) {
      const next = leadsTo[edge] as number;
      if (!used.has(spelling[next] as number)) onward.push(next);
    }
    if (onward.length === 0) return path;
    at = onward[random.below(onward.length)] as number;
  }
}

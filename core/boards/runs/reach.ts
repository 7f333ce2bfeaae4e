/** How far a run can come: a board may fall into parts that no single card joins. */
import type { RunEdges } from './edges.ts';
import type { RunWords } from './words.ts';

/** By word: how many spellings, its own among them, can be reached from it edge by edge. O(edges). */
export function reachOf(
  { spelling, spellings }: RunWords,
  { firstEdge, leadsTo }: RunEdges,
): Int32Array {
  const words = spelling.length;
  const reach = new Int32Array(words);
  const countedFor = new Int32Array(spellings).fill(-1);
  const isMet = new Uint8Array(words);
  for (let first = 0; first < words; first++) {
    if (isMet[first]) continue;
    const part = [first];
    isMet[first] = 1;
    let count = 0;
    for (let at = 0; at < part.length; at++) {
      const word = part[at] as number;
      const own = spelling[word] as number;
      if (countedFor[own] !== first) count++;
      countedFor[own] = first;
      for (let edge = firstEdge[word] as number; edge < (firstEdge[word + 1] as number); edge++) {
        const next = leadsTo[edge] as number;
        if (isMet[next]) continue;
        isMet[next] = 1;
        part.push(next);
      }
    }
    for (const word of part) reach[word] = count;
  }
  return reach;
}

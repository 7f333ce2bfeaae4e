import type { Space } from '../../../core/boards/shapes/row-layout.ts';

/** Where the teacher's edge lies: along a side, along the foot of a narrow screen, or nowhere. */
export type Edge = 'side' | 'foot' | 'none';

/** How wide the edge is at a side, how high at the foot, in pixels. */
const EDGE_WIDE = 64;
const EDGE_HIGH = 60;
/** From so narrow a screen on the edge lies at the foot. */
const NARROW = 700;

/** Where the edge lies on a screen, when there is to be one. */
export function edgeOn(wanted: boolean, { width }: Pick<Space, 'width'>): Edge {
  if (!wanted) return 'none';
  return width <= NARROW ? 'foot' : 'side';
}

/** What the edge leaves for the children. */
export function besideEdge({ width, height }: Space, edge: Edge): Space {
  return {
    width: edge === 'side' ? width - EDGE_WIDE : width,
    height: edge === 'foot' ? height - EDGE_HIGH : height,
  };
}

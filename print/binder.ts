/**
 * Where binders have their rings. Holes lie along one edge of the sheet, the same on both sides of its
 * middle.
 */
import { INCH, type Paper } from './paper.ts';

export const RING_COUNTS = [2, 3, 4] as const;
export type RingCount = (typeof RING_COUNTS)[number];

/** Lengths in mm; `fromEdge` is to the middle of a hole. */
export interface HoleSpec {
  readonly apart: number;
  readonly fromEdge: number;
  readonly diameter: number;
}

/** Two holes, 80 mm apart, 6 mm wide, 12 mm from the edge; four continue them at the same distance. */
const iso838: HoleSpec = { apart: 80, fromEdge: 12, diameter: 6 };

/**
 * Two holes on A4 and four on both papers are those of ISO 838. Two holes of North America, 2 3/4 in apart and
 * 9/32 in wide, and three, 4 1/4 in apart and 5/16 in wide, 1/2 in from the edge, are common practice without
 * a published standard.
 */
export function holesOf(rings: RingCount, paper: Paper): HoleSpec {
  const fromEdge = INCH / 2;
  if (rings === 3) return { apart: 4.25 * INCH, fromEdge, diameter: (5 / 16) * INCH };
  if (rings === 2 && paper === 'letter') {
    return { apart: 2.75 * INCH, fromEdge, diameter: (9 / 32) * INCH };
  }
  return iso838;
}

/** The middles of the holes along an edge `length` mm long, from its start. */
export function holePlaces(rings: RingCount, paper: Paper, length: number): readonly number[] {
  const { apart } = holesOf(rings, paper);
  const first = length / 2 - ((rings - 1) * apart) / 2;
  return Array.from({ length: rings }, (_, at) => first + at * apart);
}

/**
 * Where binders have their rings. Holes lie along one edge of the sheet, the same on both sides of its
 * middle.
 */
export const RING_COUNTS = [2, 3, 4] as const;
export type RingCount = (typeof RING_COUNTS)[number];

/** Lengths in mm; `fromEdge` is to the middle of a hole. */
export interface HoleSpec {
  readonly apart: number;
  readonly fromEdge: number;
  readonly diameter: number;
}

/**
 * Two holes by ISO 838: 80 mm apart, 6 mm wide, 12 mm from the edge. Four continue them at the same
 * distance. Three holes of North America, 4 1/4 in apart, 5/16 in wide, 1/2 in from the edge, are common
 * practice without a published standard.
 */
export const holesOf: Readonly<Record<RingCount, HoleSpec>> = {
  2: { apart: 80, fromEdge: 12, diameter: 6 },
  3: { apart: 107.95, fromEdge: 12.7, diameter: 7.94 },
  4: { apart: 80, fromEdge: 12, diameter: 6 },
};

/** The middles of the holes along an edge `length` mm long, from its start. */
export function holePlaces(rings: RingCount, length: number): readonly number[] {
  const { apart } = holesOf[rings];
  const first = length / 2 - ((rings - 1) * apart) / 2;
  return Array.from({ length: rings }, (_, at) => first + at * apart);
}

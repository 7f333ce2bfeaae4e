import type { Inks } from './ink.ts';
import { line, type PageMark } from './page.ts';
import { SAFE_EDGE, type Size } from './paper.ts';

/** Where to cut: the lines of a sheet, in mm from its left and from its top. */
export interface Cuts {
  readonly across: readonly number[];
  readonly down: readonly number[];
}

/** How long a mark is at each end of a cut, and each arm of a cross where two meet. */
const LENGTH = 5;
const ARM = 2;

/**
 * Marks for cutting along lines from edge to edge: one at both ends of each, as near to the edge of the
 * paper as printers reach, and a small cross where two lines meet. They lie on the cut and go with it.
 */
export function cutMarks(
  { across, down }: Cuts,
  { width, height }: Size,
  { rule }: Inks,
): readonly PageMark[] {
  const look = { stroke: rule, line: 0.15 };
  const ends = (length: number): readonly (readonly [number, number])[] => [
    [SAFE_EDGE, SAFE_EDGE + LENGTH],
    [length - SAFE_EDGE - LENGTH, length - SAFE_EDGE],
  ];
  return [
    ...across.flatMap((x) => ends(height).map(([from, to]) => line([x, from], [x, to], look))),
    ...down.flatMap((y) => ends(width).map(([from, to]) => line([from, y], [to, y], look))),
    ...across.flatMap((x) =>
      down.flatMap((y) => [
        line([x - ARM, y], [x + ARM, y], look),
        line([x, y - ARM], [x, y + ARM], look),
      ]),
    ),
  ];
}

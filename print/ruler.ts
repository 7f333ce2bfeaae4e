import type { Inks } from './ink.ts';
import { line, type PageMark } from './page.ts';
import { points } from './paper.ts';

/** How long the ruler is, in mm. */
export const RULER = 50;

/**
 * A ruler to lay a real one against, from (`x`, `y`): if it does not measure 50 mm, the printer has
 * scaled the page. Takes 50 mm by 3 mm below `y`, and words to its right.
 */
export function ruler(x: number, y: number, { soft }: Inks): readonly PageMark[] {
  const look = { stroke: soft, line: 0.2 };
  const ticks = Array.from({ length: RULER / 10 + 1 }, (_, at) => {
    const length = at % 5 === 0 ? 3 : 1.6;
    return line([x + at * 10, y], [x + at * 10, y + length], look);
  });
  return [
    line([x, y], [x + RULER, y], look),
    ...ticks,
    {
      kind: 'text',
      text: '50 mm. If it measures otherwise, print at 100 %.',
      x: x + RULER + 3,
      y: y + 2.6,
      size: points(7),
      ink: soft,
    },
  ];
}

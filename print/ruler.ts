import type { Inks } from './ink.ts';
import { line, type PageMark } from './page.ts';
import { INCH, points } from './paper.ts';

/** What the ruler and its words take, in mm: no cut mark may cross this box. */
export const RULER = { width: 57, height: 6.6 };

/**
 * A ruler to lay a real one against, its upper left corner at (`x`, `y`): 5 cm above its line and 2 in
 * below it. If either measures otherwise, the printer has scaled the page.
 */
export function rulerMarks(
  { x, y }: { readonly x: number; readonly y: number },
  { soft }: Inks,
): readonly PageMark[] {
  const look = { stroke: soft, line: 0.2 };
  const base = y + 2;
  const ticks = (count: number, apart: number, way: number, isLong: (at: number) => boolean) =>
    Array.from({ length: count + 1 }, (_, at) => {
      const place = x + at * apart;
      return line([place, base], [place, base + way * (isLong(at) ? 2 : 1.1)], look);
    });
  const words = (text: string, left: number, foot: number): PageMark => ({
    kind: 'text',
    text,
    x: left,
    y: foot,
    size: points(6),
    ink: soft,
  });
  return [
    line([x, base], [x + 2 * INCH, base], look),
    ...ticks(5, 10, -1, () => true),
    ...ticks(8, INCH / 4, 1, (at) => at % 4 === 0),
    words('5 cm', x + 51.4, base - 0.3),
    words('2 in', x + 51.4, base + 2),
    words('If it measures otherwise, print at 100%.', x, y + 5.8),
  ];
}

/** Outlines to draw with, as SVG paths in the units of a picture. All turn the same way round, so that those that overlap in one path stay filled. */

type Point = readonly [x: number, y: number];

/** A circle about (`x`, `y`). */
export function disc(x: number, y: number, radius: number): string {
  return oval(x, y, radius, radius);
}

/** An ellipse about (`x`, `y`), `rx` and `ry` half as wide and high as it is. */
export function oval(x: number, y: number, rx: number, ry: number): string {
  return `M${at(x - rx, y)}a${at(rx, ry)} 0 1 0 ${at(2 * rx, 0)}a${at(rx, ry)} 0 1 0 ${at(-2 * rx, 0)}Z`;
}

/** A shape with straight sides. */
export function corners(...points: readonly Point[]): string {
  return `M${points.map(([x, y]) => at(x, y)).join('L')}Z`;
}

/** An upright rectangle, its top left corner at (`x`, `y`). */
export function slab(x: number, y: number, width: number, height: number): string {
  return corners([x, y], [x, y + height], [x + width, y + height], [x + width, y]);
}

/** A star of five points about (`x`, `y`), one of them up. */
export function star(x: number, y: number, radius: number): string {
  return corners(
    ...Array.from({ length: 10 }, (_, index): Point => {
      const turn = (index * Math.PI) / 5 + Math.PI / 2;
      const far = index % 2 === 0 ? radius : radius * 0.42;
      return [x + far * Math.cos(turn), y - far * Math.sin(turn)];
    }),
  );
}

/** A line `width` thick through the points, with round ends. Needs two points that differ. */
export function stroke(width: number, ...points: readonly Point[]): string {
  return points
    .slice(1)
    .map((to, index) => capsule(width / 2, points[index] as Point, to))
    .join('');
}

function capsule(half: number, [x1, y1]: Point, [x2, y2]: Point): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const x = (-(y2 - y1) / length) * half;
  const y = ((x2 - x1) / length) * half;
  const end = `A${at(half, half)} 0 0 0 `;
  return `M${at(x1 + x, y1 + y)}L${at(x2 + x, y2 + y)}${end}${at(x2 - x, y2 - y)}L${at(x1 - x, y1 - y)}${end}${at(x1 + x, y1 + y)}Z`;
}

function at(x: number, y: number): string {
  return `${round(x)} ${round(y)}`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

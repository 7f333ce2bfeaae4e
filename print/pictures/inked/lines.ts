/**
 * Lines to draw with, as SVG paths in a square of 100 units: smooth ones through given points
 * (Catmull–Rom splines written as cubic curves: the way at a point is that from its neighbor before to
 * its neighbor after), so that a drawing reads as the list of places its outline passes.
 */

/** A place on a line; `bend` is how round the line is there: 1 unless given, 0 for a corner. */
export type LinePoint = readonly [x: number, y: number, bend?: number];

/** A closed smooth outline through the spots. */
export function soft(...spots: readonly LinePoint[]): string {
  const around = (at: number) => spots[(at + spots.length) % spots.length] as LinePoint;
  const curves = spots.map((_, at) =>
    between(around(at - 1), around(at), around(at + 1), around(at + 2)),
  );
  return `M${place(spots[0] as LinePoint)}${curves.join('')}Z`;
}

/** An open smooth line through the spots. */
export function sway(...spots: readonly LinePoint[]): string {
  const along = (at: number) => spots[Math.max(0, Math.min(spots.length - 1, at))] as LinePoint;
  const curves = spots
    .slice(1)
    .map((_, at) => between(along(at - 1), along(at), along(at + 1), along(at + 2)));
  return `M${place(spots[0] as LinePoint)}${curves.join('')}`;
}

/** Straight strokes from spot to spot. */
export function straight(...spots: readonly LinePoint[]): string {
  return `M${spots.map(place).join('L')}`;
}

/** The spots of a left half, from the top down, and after them their mirror images: a shape even about `middle`. */
export function even(left: readonly LinePoint[], middle = 50): readonly LinePoint[] {
  const isOff = ([x]: LinePoint) => x !== middle;
  const mirrored = left
    .filter(isOff)
    .map(([x, y, bend = 1]): LinePoint => [2 * middle - x, y, bend]);
  return [...left, ...mirrored.reverse()];
}

/** The spots turned clockwise by `degrees` about (`x`, `y`). */
export function turned(
  degrees: number,
  [x, y]: LinePoint,
  spots: readonly LinePoint[],
): readonly LinePoint[] {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return spots.map(([px, py, bend = 1]): LinePoint => {
    const [dx, dy] = [px - x, py - y];
    return [x + dx * cos - dy * sin, y + dx * sin + dy * cos, bend];
  });
}

/** An upright box with corners rounded by `round`. */
export function box(x: number, y: number, width: number, height: number, round: number): string {
  const [right, bottom] = [x + width, y + height];
  return (
    `M${x + round} ${y}H${right - round}Q${right} ${y} ${right} ${y + round}V${bottom - round}` +
    `Q${right} ${bottom} ${right - round} ${bottom}H${x + round}Q${x} ${bottom} ${x} ${bottom - round}` +
    `V${y + round}Q${x} ${y} ${x + round} ${y}Z`
  );
}

function between(before: LinePoint, from: LinePoint, to: LinePoint, after: LinePoint): string {
  const [leave, arrive] = [pull(before, from, to), pull(from, to, after)];
  return `C${pair(from[0] + leave[0], from[1] + leave[1])} ${pair(to[0] - arrive[0], to[1] - arrive[1])} ${place(to)}`;
}

/** How far a control point lies from its spot. */
function pull(
  [ax, ay]: LinePoint,
  [, , bend = 1]: LinePoint,
  [bx, by]: LinePoint,
): readonly [number, number] {
  return [((bx - ax) * bend) / 6, ((by - ay) * bend) / 6];
}

function place([x, y]: LinePoint): string {
  return pair(x, y);
}

function pair(x: number, y: number): string {
  return `${hundredth(x)} ${hundredth(y)}`;
}

function hundredth(value: number): number {
  return Math.round(value * 100) / 100;
}

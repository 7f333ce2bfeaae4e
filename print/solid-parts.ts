/**
 * A letter taken apart into solids that any program fills alike.
 *
 * Problem: typefaces draw a t as a stem and a bar that overlap, and fill by the
 * non-zero winding rule; presentation programs fill even–odd, and the overlap
 * becomes a hole. Method: each outer contour becomes a part of its own, together
 * with the holes that lie in it, so that no part overlaps itself and both rules
 * agree. A contour that crosses itself (the e, whose bar runs into its bowl) is
 * first cut into loops where it does, as a fine polygon. A union of all contours
 * would give the same picture; it needs a geometry library and makes lines of
 * every curve.
 */
import type { OutlineStep } from './glyphs.ts';

type Point = readonly [number, number];

/** A closed contour: its steps, and its corner points to measure it by. */
interface Contour {
  readonly steps: readonly OutlineStep[];
  readonly points: readonly Point[];
  readonly area: number;
}

/** The solid parts of an outline: outer contours, each with the holes in it. */
export function solidParts(steps: readonly OutlineStep[]): readonly (readonly OutlineStep[])[] {
  const contours = contoursOf(steps);
  const largest = contours.reduce(
    (most, { area }) => (Math.abs(area) > Math.abs(most) ? area : most),
    0,
  );
  const isOuter = ({ area }: Contour) => Math.sign(area) === Math.sign(largest);
  const outers = contours
    .filter(isOuter)
    .sort((one, other) => Math.abs(one.area) - Math.abs(other.area));
  const parts = new Map(outers.map((outer) => [outer, [...outer.steps]]));
  for (const hole of contours) {
    if (isOuter(hole)) continue;
    const around = outers.find((outer) => isAround(outer, hole));
    if (around) parts.get(around)?.push(...hole.steps);
  }
  return [...parts.values()];
}

function contoursOf(steps: readonly OutlineStep[]): readonly Contour[] {
  const contours: Contour[] = [];
  let now: OutlineStep[] = [];
  for (const step of steps) {
    now.push(step);
    if (step.kind !== 'close') continue;
    const points = flatten(now);
    const loops = loopsOf(points);
    if (loops.length === 1) contours.push({ steps: now, points, area: signedArea(points) });
    else contours.push(...loops.map(polygon));
    now = [];
  }
  return contours;
}

/** A polygon as a contour of straight lines. */
function polygon(points: readonly Point[]): Contour {
  const steps = points.map(
    ([x, y], at): OutlineStep => ({ kind: at === 0 ? 'move' : 'line', x, y }),
  );
  return { steps: [...steps, { kind: 'close' }], points, area: signedArea(points) };
}

/** A polygon cut in two wherever it crosses itself, until no loop does. About n² steps. */
function loopsOf(points: readonly Point[]): readonly (readonly Point[])[] {
  const count = points.length;
  for (let one = 0; one < count; one++) {
    for (let other = one + 2; other < count; other++) {
      if (one === 0 && other === count - 1) continue;
      const next = points[(other + 1) % count] as Point;
      const at = crossing(points[one]!, points[one + 1]!, points[other]!, next);
      if (!at) continue;
      const inner = [at, ...points.slice(one + 1, other + 1)];
      const outer = [...points.slice(0, one + 1), at, ...points.slice(other + 1)];
      return [...loopsOf(inner), ...loopsOf(outer)];
    }
  }
  return [points];
}

/** Where two lines cross between their ends; null where they do not. */
function crossing(
  [ax, ay]: Point,
  [bx, by]: Point,
  [cx, cy]: Point,
  [dx, dy]: Point,
): Point | null {
  const across = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
  if (across === 0) return null;
  const first = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / across;
  const second = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / across;
  if (first <= 0 || first >= 1 || second <= 0 || second >= 1) return null;
  return [ax + first * (bx - ax), ay + first * (by - ay)];
}

/** How many lines stand for a curve: less than a 500th of an em away from it. */
const FINENESS = 12;
const ALONG = Array.from({ length: FINENESS }, (_, at) => (at + 1) / FINENESS);

/** A contour as a polygon. */
export function flatten(steps: readonly OutlineStep[]): readonly Point[] {
  const points: Point[] = [];
  let from: Point = [0, 0];
  for (const step of steps) {
    if (step.kind === 'close') continue;
    if (step.kind === 'quadratic') {
      const [x0, y0] = from;
      for (const t of ALONG) {
        const s = 1 - t;
        points.push([
          s * s * x0 + 2 * s * t * step.x1 + t * t * step.x,
          s * s * y0 + 2 * s * t * step.y1 + t * t * step.y,
        ]);
      }
    } else if (step.kind === 'cubic') {
      const [x0, y0] = from;
      for (const t of ALONG) {
        const s = 1 - t;
        const [a, b, c, d] = [s ** 3, 3 * s * s * t, 3 * s * t * t, t ** 3];
        points.push([
          a * x0 + b * step.x1 + c * step.x2 + d * step.x,
          a * y0 + b * step.y1 + c * step.y2 + d * step.y,
        ]);
      }
    } else {
      points.push([step.x, step.y]);
    }
    from = [step.x, step.y];
  }
  return points;
}

/** The area of a polygon by the shoelace formula; its sign tells which way round it runs. */
function signedArea(points: readonly Point[]): number {
  return (
    points.reduce((sum, [x, y], at) => {
      const [nextX, nextY] = points[(at + 1) % points.length] as Point;
      return sum + x * nextY - nextX * y;
    }, 0) / 2
  );
}

/** Whether a hole lies in a contour. It may touch it, so that one point of it tells nothing. */
function isAround(outer: Contour, { points }: Contour): boolean {
  return points.filter((point) => isInside(point, outer)).length > points.length / 2;
}

/** Whether a point lies in a contour: a ray to the right crosses it an odd number of times. */
function isInside([x, y]: Point, { points }: Contour): boolean {
  let inside = false;
  points.forEach(([x1, y1], at) => {
    const [x2, y2] = points[(at + 1) % points.length] as Point;
    if (y1 > y === y2 > y) return;
    if (x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  });
  return inside;
}

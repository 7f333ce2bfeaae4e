/**
 * Closed outlines as values: made, moved and measured without any drawing
 * surface. Lengths are in whatever unit the caller means; y runs as the caller
 * means it, so that an outline in em with y up becomes one in mm with y down by
 * `placed`.
 */
import type { Ink, OutlineStep } from './glyphs.ts';

/** The radii of a corner, across and down. */
export type Corner = readonly [number, number];

/** The corners of a box, from the top left one clockwise. */
export type Corners = readonly [Corner, Corner, Corner, Corner];

/** A box with y down. */
export interface CornerBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly corners: Corners;
}

/** How far the control points of a cubic lie from its ends, to look like a quarter of an ellipse. */
const KAPPA = 0.5523;

/** The outline of a box with elliptical corners. Radii that do not fit are shrunk, all alike, as CSS does. */
export function cornerBox({ left, top, width, height, corners }: CornerBox): OutlineStep[] {
  const fit = shrinkToFit(corners, width, height);
  const shrunk = ([x, y]: Corner): Corner => [x * fit, y * fit];
  const [ax, ay] = shrunk(corners[0]);
  const [bx, by] = shrunk(corners[1]);
  const [cx, cy] = shrunk(corners[2]);
  const [dx, dy] = shrunk(corners[3]);
  const right = left + width;
  const bottom = top + height;
  const rest = 1 - KAPPA;
  return [
    { kind: 'move', x: left + ax, y: top },
    { kind: 'line', x: right - bx, y: top },
    curve([right - bx * rest, top], [right, top + by * rest], [right, top + by]),
    { kind: 'line', x: right, y: bottom - cy },
    curve([right, bottom - cy * rest], [right - cx * rest, bottom], [right - cx, bottom]),
    { kind: 'line', x: left + dx, y: bottom },
    curve([left + dx * rest, bottom], [left, bottom - dy * rest], [left, bottom - dy]),
    { kind: 'line', x: left, y: top + ay },
    curve([left, top + ay * rest], [left + ax * rest, top], [left + ax, top]),
    { kind: 'close' },
  ];
}

/** An outline enlarged and then moved; a negative `scaleY` turns y around. */
export function placed(
  steps: readonly OutlineStep[],
  at: { readonly x: number; readonly y: number; readonly scaleX: number; readonly scaleY: number },
): OutlineStep[] {
  const x = (value: number) => at.x + value * at.scaleX;
  const y = (value: number) => at.y + value * at.scaleY;
  return steps.map((step): OutlineStep => {
    if (step.kind === 'close') return step;
    const end = { x: x(step.x), y: y(step.y) };
    if (step.kind === 'quadratic') return { ...step, ...end, x1: x(step.x1), y1: y(step.y1) };
    if (step.kind === 'cubic') {
      const control = { x1: x(step.x1), y1: y(step.y1), x2: x(step.x2), y2: y(step.y2) };
      return { ...step, ...end, ...control };
    }
    return { ...step, ...end };
  });
}

/** The box around all points of outlines, control points too: no ink lies outside it. Null for none. */
export function boundsOf(steps: readonly OutlineStep[]): Ink | null {
  const across: number[] = [];
  const down: number[] = [];
  for (const step of steps) {
    if (step.kind === 'close') continue;
    across.push(step.x);
    down.push(step.y);
    if (step.kind === 'quadratic' || step.kind === 'cubic') {
      across.push(step.x1);
      down.push(step.y1);
    }
    if (step.kind === 'cubic') {
      across.push(step.x2);
      down.push(step.y2);
    }
  }
  if (across.length === 0) return null;
  return {
    left: Math.min(...across),
    right: Math.max(...across),
    top: Math.min(...down),
    bottom: Math.max(...down),
  };
}

function curve(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  [x, y]: readonly [number, number],
): OutlineStep {
  return { kind: 'cubic', x1, y1, x2, y2, x, y };
}

function shrinkToFit(
  [[ax, ay], [bx, by], [cx, cy], [dx, dy]]: Corners,
  width: number,
  height: number,
): number {
  return Math.min(
    1,
    width / (ax + bx || 1),
    width / (cx + dx || 1),
    height / (by + cy || 1),
    height / (dy + ay || 1),
  );
}

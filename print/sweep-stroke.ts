import type { OutlineStep } from './glyphs.ts';
import { placed } from './outline.ts';

/**
 * The sweep line as a filled brush stroke (web/look/stroke.svg), so that its ends
 * are round in every program: from `left` to `right`, `thick` high around the
 * middle `y`; y runs down, all in one unit.
 */
export function sweepStroke(
  left: number,
  right: number,
  y: number,
  thick: number,
): readonly OutlineStep[] {
  const scaleX = (right - left) / 100;
  const scaleY = thick / 3;
  return placed(stroke, { x: left, y: y - 3 * scaleY, scaleX, scaleY });
}

/** In a box of 100 by 6, the stroke about 3 thick. */
const stroke: readonly OutlineStep[] = [
  { kind: 'move', x: 1.5, y: 2.2 },
  { kind: 'cubic', x1: 18, y1: 1.2, x2: 40, y2: 1.9, x: 62, y: 1.5 },
  { kind: 'cubic', x1: 84, y1: 1.1, x2: 92, y2: 0.6, x: 98.6, y: 1.6 },
  { kind: 'cubic', x1: 99.9, y1: 1.9, x2: 99.8, y2: 4.2, x: 98.4, y: 4.5 },
  { kind: 'cubic', x1: 84, y1: 5.3, x2: 60, y2: 4.3, x: 38, y: 4.7 },
  { kind: 'cubic', x1: 16, y1: 5.1, x2: 10, y2: 5.4, x: 1.6, y: 4.8 },
  { kind: 'cubic', x1: 0.2, y1: 4.6, x2: 0.2, y2: 2.4, x: 1.5, y: 2.2 },
  { kind: 'close' },
];

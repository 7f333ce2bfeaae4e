import type { Outline, OutlineStep } from './glyphs.ts';

/** Into how many chords a curve is cut to find its center of area: letters come out true to 0.001 em. */
const CHORDS = 6;

/**
 * Where the middle of a text lies for the eye, in em from its start: halfway between the middle of its ink's
 * box and the center of its ink's area. By the box alone the stem of a b leans out on one side and the hook
 * of a j pushes its stem to the other (common practice, no source).
 */
export function opticalMiddle({ ink, steps }: Outline): number {
  const box = (ink.left + ink.right) / 2;
  const heavy = centerOfArea(steps);
  return heavy === null ? box : (box + heavy) / 2;
}

/** By Green's theorem over the outlines, whose holes run the other way round; null where there is no area. */
function centerOfArea(steps: readonly OutlineStep[]): number | null {
  let [area, moment] = [0, 0];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  const lineTo = (toX: number, toY: number) => {
    const cross = x * toY - toX * y;
    area += cross;
    moment += cross * (x + toX);
    [x, y] = [toX, toY];
  };
  for (const step of steps) {
    if (step.kind === 'close') lineTo(startX, startY);
    else if (step.kind === 'quadratic' || step.kind === 'cubic') {
      const [fromX, fromY] = [x, y];
      const second = step.kind === 'cubic' ? step : { x2: 0, y2: 0 };
      for (let chord = 1; chord <= CHORDS; chord += 1) {
        const [t, u] = [chord / CHORDS, 1 - chord / CHORDS];
        const mix = (from: number, one: number, two: number, end: number) =>
          step.kind === 'quadratic'
            ? u * u * from + 2 * u * t * one + t * t * end
            : u ** 3 * from + 3 * u * u * t * one + 3 * u * t * t * two + t ** 3 * end;
        lineTo(mix(fromX, step.x1, second.x2, step.x), mix(fromY, step.y1, second.y2, step.y));
      }
    } else if (step.kind === 'line') lineTo(step.x, step.y);
    else [x, y, startX, startY] = [step.x, step.y, step.x, step.y];
  }
  return Math.abs(area) < 1e-9 ? null : moment / (3 * area);
}

import type { OutlineStep } from './glyphs.ts';

/** An outline in SVG path syntax, lengths to a thousandth of their unit. */
export function outlinePath(steps: readonly OutlineStep[]): string {
  return steps.map(stepPath).join('');
}

function stepPath(step: OutlineStep): string {
  switch (step.kind) {
    case 'move':
      return `M${pair(step.x, step.y)}`;
    case 'line':
      return `L${pair(step.x, step.y)}`;
    case 'quadratic':
      return `Q${pair(step.x1, step.y1)} ${pair(step.x, step.y)}`;
    case 'cubic':
      return `C${pair(step.x1, step.y1)} ${pair(step.x2, step.y2)} ${pair(step.x, step.y)}`;
    case 'close':
      return 'Z';
  }
}

function pair(x: number, y: number): string {
  return `${short(x)} ${short(y)}`;
}

function short(value: number): number {
  return Math.round(value * 1000) / 1000;
}

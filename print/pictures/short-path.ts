import type { plainPath } from './plain-path.ts';

type Steps = ReturnType<typeof plainPath>;

/**
 * Steps written as briefly as SVG path syntax allows with moves, lines, cubic curves and closings alone:
 * relative, to a hundredth of a unit (a picture is 32 of them wide). Each place is rounded once, from where
 * the last one was written, so that roundings do not add up.
 */
export function shortPath(steps: Steps): string {
  let [atX, atY] = [0, 0];
  let [startX, startY] = [0, 0];
  let last = '';
  let text = '';
  for (const step of steps) {
    if (step.kind === 'close') {
      text += 'z';
      last = 'z';
      [atX, atY] = [startX, startY];
      continue;
    }
    const [x, y] = [hundredths(step.x), hundredths(step.y)];
    const numbers =
      step.kind === 'cubic'
        ? [
            hundredths(step.x1) - atX,
            hundredths(step.y1) - atY,
            hundredths(step.x2) - atX,
            hundredths(step.y2) - atY,
            x - atX,
            y - atY,
          ]
        : [x - atX, y - atY];
    const letter = { move: 'm', line: 'l', cubic: 'c' }[step.kind];
    const isRepeated = letter === last && letter !== 'm';
    text += numbers
      .reduce((sofar, number) => joined(sofar, brief(number)), isRepeated ? '' : letter)
      .replace(/^(?=[\d.])/, isRepeated ? ' ' : '');
    last = letter;
    [atX, atY] = [x, y];
    if (step.kind === 'move') [startX, startY] = [x, y];
  }
  return text;
}

function hundredths(value: number): number {
  return Math.round(value * 100);
}

/** Hundredths as a number without a nought before its point. */
function brief(value: number): string {
  return `${value / 100}`.replace(/^(-?)0\./, '$1.');
}

/** Numbers beside each other, a space between them only where they would run together. */
function joined(sofar: string, number: string): string {
  const runsOn = /[\d.]$/.test(sofar) && !number.startsWith('-');
  return `${sofar}${runsOn ? ' ' : ''}${number}`;
}

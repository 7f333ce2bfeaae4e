/**
 * An outline of SVG path syntax as nothing but moves, lines, cubic curves and closings, in absolute
 * lengths: what every painter of paths reads alike. Painters differ on the rest: PDFKit takes the
 * control point of a smooth curve that follows an arc from inside the arc's own arithmetic.
 *
 * The syntax is that of SVG 2, chapter 9; arcs become centers and angles by its appendix B.2.4 and
 * then cubic curves of at most a quarter turn each, which lie within 0.03% of the radius. Written here
 * because it runs once, when the picture file is made, and is shorter than what it would replace.
 */
import type { OutlineStep } from '../glyphs.ts';

type Point = readonly [number, number];
type Held = { readonly kind: 'S' | 'T'; readonly point: Point } | null;
type Drawing = Exclude<OutlineStep, { readonly kind: 'quadratic' }>;

/** How many numbers each command takes at a time. */
const TAKES = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 } as const;
type Command = keyof typeof TAKES;

const commandOf = (letter: string): Command | null => {
  const upper = letter.toUpperCase();
  return upper in TAKES ? (upper as Command) : null;
};

/** The steps of a path. Throws on what is no path of SVG: nothing is dropped in silence. */
export function plainPath(path: string): readonly Drawing[] {
  const steps: Drawing[] = [];
  let at: Point = [0, 0];
  let start: Point = [0, 0];
  /** The last control point, for a smooth curve of the same kind that goes on from it. */
  let held: Held = null;
  for (const { letter, command, numbers } of pieces(path)) {
    const relative = letter !== command;
    const from: Point = at;
    const point = (index: number): Point =>
      relative
        ? [from[0] + numbers[index]!, from[1] + numbers[index + 1]!]
        : [numbers[index]!, numbers[index + 1]!];
    const mirrored = (kind: 'S' | 'T'): Point =>
      held?.kind === kind ? [2 * from[0] - held.point[0], 2 * from[1] - held.point[1]] : from;
    let holds: Held = null;
    const lineTo = (to: Point) => {
      steps.push({ kind: 'line', x: to[0], y: to[1] });
      at = to;
    };
    const curveTo = (first: Point, second: Point, to: Point) => {
      steps.push(cubic(first, second, to));
      holds = { kind: 'S', point: second };
      at = to;
    };
    const bendTo = (control: Point, to: Point) => {
      const toward = (end: Point): Point => [
        end[0] + (2 / 3) * (control[0] - end[0]),
        end[1] + (2 / 3) * (control[1] - end[1]),
      ];
      steps.push(cubic(toward(from), toward(to), to));
      holds = { kind: 'T', point: control };
      at = to;
    };
    switch (command) {
      case 'M':
        at = point(0);
        start = at;
        steps.push({ kind: 'move', x: at[0], y: at[1] });
        break;
      case 'L':
        lineTo(point(0));
        break;
      case 'H':
        lineTo([numbers[0]! + (relative ? from[0] : 0), from[1]]);
        break;
      case 'V':
        lineTo([from[0], numbers[0]! + (relative ? from[1] : 0)]);
        break;
      case 'C':
        curveTo(point(0), point(2), point(4));
        break;
      case 'S':
        curveTo(mirrored('S'), point(0), point(2));
        break;
      case 'Q':
        bendTo(point(0), point(2));
        break;
      case 'T':
        bendTo(mirrored('T'), point(0));
        break;
      case 'A':
        steps.push(...arc(from, numbers, point(5)));
        at = point(5);
        break;
      case 'Z':
        steps.push({ kind: 'close' });
        at = start;
        break;
    }
    held = holds;
  }
  return steps;
}

interface Piece {
  readonly letter: string;
  readonly command: Command;
  readonly numbers: readonly number[];
}

const NUMBER = /[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)/iy;
/** The two flags of an arc may stand without anything between them and what follows. */
const FLAG = /[\s,]*([01])/y;

/** Commands with their numbers, each time written out: a pair after a move is a line. */
function* pieces(path: string): Generator<Piece> {
  let index = 0;
  const next = (pattern: RegExp): number | null => {
    pattern.lastIndex = index;
    const found = pattern.exec(path);
    if (!found) return null;
    index = pattern.lastIndex;
    return Number(found[1]);
  };
  while (path.slice(index).trim() !== '') {
    index += path.slice(index).length - path.slice(index).trimStart().length;
    let letter = path[index]!;
    const first = commandOf(letter);
    if (!first) throw new Error(`A path has “${path.slice(index, index + 12)}”.`);
    index += 1;
    let command: Command = first;
    for (let turn = 0; ; turn += 1) {
      const numbers: number[] = [];
      for (let position = 0; position < TAKES[command]; position += 1) {
        const isFlag = command === 'A' && (position === 3 || position === 4);
        const number = next(isFlag ? FLAG : NUMBER);
        if (number === null) break;
        numbers.push(number);
      }
      if (turn > 0 && numbers.length === 0) break;
      if (numbers.length < TAKES[command]) throw new Error(`A path breaks off after ${letter}.`);
      yield { letter, command, numbers };
      if (command === 'Z') break;
      if (command === 'M') {
        letter = letter === 'M' ? 'L' : 'l';
        command = 'L';
      }
    }
  }
}

function cubic([x1, y1]: Point, [x2, y2]: Point, [x, y]: Point): Drawing {
  return { kind: 'cubic', x1, y1, x2, y2, x, y };
}

/** An arc of an ellipse: its radii, tilt in degrees and two flags are `numbers`. */
function arc([x0, y0]: Point, numbers: readonly number[], [x1, y1]: Point): readonly Drawing[] {
  const [across, down, degrees, large, sweep] = numbers as [number, number, number, number, number];
  if (x0 === x1 && y0 === y1) return [];
  if (across === 0 || down === 0) return [{ kind: 'line', x: x1, y: y1 }];
  const tilt = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  const [dx, dy] = [(x0 - x1) / 2, (y0 - y1) / 2];
  const [px, py] = [cos * dx + sin * dy, cos * dy - sin * dx];
  const grow = Math.max(1, Math.hypot(px / across, py / down));
  const [rx, ry] = [Math.abs(across) * grow, Math.abs(down) * grow];
  const span = (rx * py) ** 2 + (ry * px) ** 2;
  const far = Math.sqrt(Math.max(0, ((rx * ry) ** 2 - span) / span)) * (large === sweep ? -1 : 1);
  const [qx, qy] = [(far * rx * py) / ry, (-far * ry * px) / rx];
  const middle: Point = [cos * qx - sin * qy + (x0 + x1) / 2, sin * qx + cos * qy + (y0 + y1) / 2];
  const begin = Math.atan2((py - qy) / ry, (px - qx) / rx);
  const end = Math.atan2((-py - qy) / ry, (-px - qx) / rx);
  const full = 2 * Math.PI;
  const turn = sweep ? (end - begin + full) % full : -((begin - end + full) % full);
  const count = Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9));
  const step = turn / count;
  const pull = (4 / 3) * Math.tan(step / 4);
  /** The point at an angle, moved by `along` times the way the arc goes there. */
  const place = (angle: number, along: number): Point => {
    const [u, v] = [
      rx * (Math.cos(angle) - along * Math.sin(angle)),
      ry * (Math.sin(angle) + along * Math.cos(angle)),
    ];
    return [middle[0] + cos * u - sin * v, middle[1] + sin * u + cos * v];
  };
  return Array.from({ length: count }, (_, at): Drawing => {
    const [from, to] = [begin + at * step, begin + (at + 1) * step];
    const last: Point = at === count - 1 ? [x1, y1] : place(to, 0);
    return cubic(place(from, pull), place(to, -pull), last);
  });
}

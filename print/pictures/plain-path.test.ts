import { array, assert, constant, integer, oneof, property, record } from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { outlinePath } from '../outline-path.ts';
import { plainPath } from './plain-path.ts';
import { shortPath } from './short-path.ts';

describe('a path in moves, lines and cubic curves', () => {
  test.each([
    ['M1 2h3v4H0V0z', 'M1 2L4 2L4 6L0 6L0 0Z'],
    ['m1 1 2 2m1 1 1 0', 'M1 1L3 3M4 4L5 4'],
    ['M2 2l1 1zl1 0', 'M2 2L3 3ZL3 2'],
    ['M0 0C1 0 2 1 2 2S3 4 4 4', 'M0 0C1 0 2 1 2 2C2 3 3 4 4 4'],
    ['M0 0L2 0S3 1 3 2', 'M0 0L2 0C2 0 3 1 3 2'],
    ['M0 0q3 0 3 3t3 3', 'M0 0C2 0 3 1 3 3C3 5 4 6 6 6'],
    ['M.5.5-1e0-1', 'M0.5 0.5L-1 -1'],
    ['M0 0A0 5 0 0 1 4 4', 'M0 0L4 4'],
    ['M0 0a3 3 0 0 1 0 0', 'M0 0'],
  ])('%s is %s', (path, plain) => {
    expect(outlinePath(plainPath(path))).toBe(plain);
  });

  test('a smooth curve after an arc begins at its own end, as SVG 2 has it (9.3.6)', () => {
    const plain = plainPath('M0 0a1 1 0 0 1 1 1s1 1 2 2');
    expect(plain.at(-1)).toMatchObject({ x1: 1, y1: 1 });
  });

  test.each([
    ['M1 0a1 1 0 0 1 0 2', 1, 1, 1],
    ['M3 0a3 3 0 1 0 3 3', 3, 3, 3],
    // Flags that stand together, and a radius too short for its chord.
    ['M0 0a1 1 0 014 0', 2, 0, 2],
  ])('%s lies on the circle around (%d, %d) of radius %d', (path, x, y, radius) => {
    expect(farthestFrom(path, x, y, radius)).toBeLessThan(0.0003 * radius);
  });

  it('of a tilted ellipse lies on it', () => {
    // Half axes 4 and 2, turned by 30°, around (10, 10): from one end of the long axis to the other.
    const [cos, sin] = [Math.cos(Math.PI / 6), 0.5];
    const [dx, dy] = [4 * cos, 4 * sin];
    const path = `M${10 - dx} ${10 - dy}A4 2 30 0 1 ${10 + dx} ${10 + dy}`;
    for (const [x, y] of sampled(path)) {
      const [u, v] = [(x - 10) * cos + (y - 10) * sin, (y - 10) * cos - (x - 10) * sin];
      expect(Math.hypot(u / 4, v / 2)).toBeCloseTo(1, 3);
    }
  });

  test.each(['M0 0X', 'M0', 'M0 0L1', 'M0 0a1 1 0 2 0 1 1', '5 5'])('%s is refused', (path) => {
    expect(() => plainPath(path)).toThrow('path');
  });

  it('is the same when it was written short, to half a hundredth', () => {
    const place = integer({ min: -99999, max: 99999 }).map((value) => value / 1000);
    const step = oneof(
      record({ kind: constant('line' as const), x: place, y: place }),
      record({ kind: constant('move' as const), x: place, y: place }),
      record({
        kind: constant('cubic' as const),
        x1: place,
        y1: place,
        x2: place,
        y2: place,
        x: place,
        y: place,
      }),
      constant({ kind: 'close' as const }),
    );
    assert(
      property(array(step, { maxLength: 12 }), (steps) => {
        const from = [{ kind: 'move' as const, x: 0, y: 0 }, ...steps];
        const back = plainPath(shortPath(from));
        expect(back).toHaveLength(from.length);
        back.forEach((read, at) => {
          for (const [key, value] of Object.entries(from[at]!)) {
            const found = (read as unknown as Record<string, unknown>)[key];
            if (typeof value !== 'number') expect(found).toBe(value);
            else expect(Math.abs((found as number) - value)).toBeLessThan(0.0051);
          }
        });
      }),
      { numRuns: 60 },
    );
  });
});

/** Points along the curves of a path. */
function sampled(path: string): readonly (readonly [number, number])[] {
  const points: [number, number][] = [];
  let [fromX, fromY] = [0, 0];
  for (const step of plainPath(path)) {
    if (step.kind === 'close') continue;
    if (step.kind === 'cubic') {
      for (let t = 0; t <= 1; t += 0.05) {
        const u = 1 - t;
        const mix = (a: number, b: number, c: number, d: number) =>
          u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
        points.push([mix(fromX, step.x1, step.x2, step.x), mix(fromY, step.y1, step.y2, step.y)]);
      }
    }
    [fromX, fromY] = [step.x, step.y];
  }
  return points;
}

function farthestFrom(path: string, x: number, y: number, radius: number): number {
  const points = sampled(path);
  expect(points.length).toBeGreaterThan(20);
  return Math.max(
    ...points.map((point) => Math.abs(Math.hypot(point[0] - x, point[1] - y) - radius)),
  );
}

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type OutlineStep, readLetters } from './glyphs.ts';
import { flatten, solidParts } from './solid-parts.ts';

const letters = readLetters([
  readFileSync(
    new URL(
      '../node_modules/@fontsource/andika/files/andika-latin-400-normal.woff',
      import.meta.url,
    ),
  ),
]);

function contours(steps: readonly OutlineStep[]): OutlineStep[][] {
  const all: OutlineStep[][] = [[]];
  for (const step of steps) {
    all.at(-1)?.push(step);
    if (step.kind === 'close') all.push([]);
  }
  return all.slice(0, -1);
}

type Polygon = ReturnType<typeof flatten>;

const polygons = (steps: readonly OutlineStep[]): Polygon[] => contours(steps).map(flatten);

/** How often polygons wind around a point, and how many of their edges a ray from it crosses. */
function windings(all: readonly Polygon[], x: number, y: number) {
  let winding = 0;
  let crossings = 0;
  for (const points of all) {
    let [x1, y1] = points.at(-1) as readonly [number, number];
    for (const [x2, y2] of points) {
      if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) {
        winding += y2 > y1 ? 1 : -1;
        crossings++;
      }
      [x1, y1] = [x2, y2];
    }
  }
  return { winding, crossings };
}

const alphabet = [...'abcdefghijklmnopqrstuvwxyz', 'ee', 'ft'];

describe('solid parts of letters', () => {
  /**
   * The two fill rules as SVG 2 defines them (§13.4.2 fill-rule): what the typeface fills by
   * non-zero winding is what its parts fill even–odd, at every point of a grid.
   */
  test('are filled by the even–odd rule as the whole is by the non-zero rule', () => {
    let inside = 0;
    for (const grapheme of alphabet) {
      const { steps, advance } = letters.outlineOf(grapheme);
      const whole = polygons(steps);
      const parts = solidParts(steps).map(polygons);
      for (let x = 0.013; x < advance; x += 0.031) {
        for (let y = -0.25; y < 0.8; y += 0.031) {
          const filled = windings(whole, x, y).winding !== 0;
          const painted = parts.some((part) => windings(part, x, y).crossings % 2 === 1);
          if (filled !== painted)
            expect([grapheme, x, y, painted]).toEqual([grapheme, x, y, filled]);
          if (filled) inside++;
        }
      }
    }
    expect(inside).toBeGreaterThan(3_000);
  });

  test('are needed: t, f and e overlap themselves; an o is one ring', () => {
    const holed = (letter: string) => {
      const { steps, advance } = letters.outlineOf(letter);
      const whole = polygons(steps);
      const spots = Array.from({ length: 2500 }, (_, at) =>
        windings(whole, ((at % 50) / 50) * advance, Math.floor(at / 50) / 60 - 0.2),
      );
      return spots.some(({ winding, crossings }) => winding !== 0 && crossings % 2 === 0);
    };
    expect([...'tfeo'].map(holed)).toEqual([true, true, true, false]);
    expect(solidParts(letters.outlineOf('t').steps)).toHaveLength(2);
    expect(solidParts(letters.outlineOf('o').steps)).toHaveLength(1);
  });
});

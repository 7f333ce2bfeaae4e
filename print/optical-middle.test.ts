import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it, test } from 'vitest';
import { type OutlineStep, readLetters } from './glyphs.ts';
import { opticalMiddle } from './optical-middle.ts';
import { ANDIKA } from './typeface-files.ts';

const { resolve } = createRequire(import.meta.url);
const letters = readLetters(
  ANDIKA.regular.map((name) => readFileSync(resolve(`@fontsource/andika/files/${name}`))),
);

const box = (left: number, right: number, top: number): OutlineStep[] => [
  { kind: 'move', x: left, y: 0 },
  { kind: 'line', x: right, y: 0 },
  { kind: 'line', x: right, y: top },
  { kind: 'line', x: left, y: top },
  { kind: 'close' },
];

it('lies halfway between the middle of the box and the center of the area', () => {
  // Areas 1 about 0.5 and 4 about 1.5: their center is at 6.5 / 5 = 1.3, the middle of the box at 1.
  const steps = [...box(0, 1, 1), ...box(1, 2, 4)];
  const ink = { left: 0, right: 2, top: 4, bottom: 0 };
  expect(opticalMiddle({ advance: 2, ink, steps })).toBeCloseTo(1.15, 9);
});

it('of a text without ink is its start', () => {
  const ink = { left: 0, right: 0, top: 0, bottom: 0 };
  expect(opticalMiddle({ advance: 0.3, ink, steps: [] })).toBe(0);
});

test.each([
  ['b', -1],
  ['d', 1],
  ['p', -1],
  ['q', 1],
  ['j', 1],
  ['o', 0],
  ['x', 0],
])('of %s lies toward its stem', (letter, way) => {
  const outline = letters.outlineOf(letter);
  const off = opticalMiddle(outline) - (outline.ink.left + outline.ink.right) / 2;
  if (way === 0) expect(Math.abs(off)).toBeLessThan(0.006);
  else expect(off * way).toBeGreaterThan(0.006);
});

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Outline, readLetters } from './glyphs.ts';

const file = (subset: string) =>
  readFileSync(
    new URL(
      `../node_modules/@fontsource/andika/files/andika-${subset}-400-normal.woff`,
      import.meta.url,
    ),
  );
const letters = readLetters([file('latin'), file('latin-ext')]);

describe('letters as outlines', () => {
  /**
   * Andika’s own numbers as FontTools reads them from its tables, in units of which an em has 2048:
   * hmtx advances a 1150, h 1175; glyf bounds a from −25 to 1040, h from 0 to 1600, p from −490.
   */
  test('have the widths and heights of the font’s own tables', () => {
    const unit = 1 / 2048;
    expect(letters.outlineOf('a').advance).toBeCloseTo(1150 * unit, 6);
    expect(letters.outlineOf('h').advance).toBeCloseTo(1175 * unit, 6);
    expect(letters.outlineOf('h').ink.top).toBeCloseTo(1600 * unit, 6);
    expect(letters.outlineOf('h').ink.bottom).toBe(0);
    expect(letters.outlineOf('p').ink.bottom).toBeCloseTo(-490 * unit, 6);
  });

  test('stand side by side by their advances', () => {
    const [sh, s, h] = ['sh', 's', 'h'].map(letters.outlineOf) as [Outline, Outline, Outline];
    expect(sh.advance).toBeCloseTo(s.advance + h.advance, 9);
    expect(sh.ink.left).toBeCloseTo(s.ink.left, 9);
    expect(sh.ink.right).toBeCloseTo(s.advance + h.ink.right, 9);
    expect(sh.steps).toHaveLength(s.steps.length + h.steps.length);
  });

  test('are never joined: a ligature would hide a letter that a child reads', () => {
    const contours = (text: string) =>
      letters.outlineOf(text).steps.filter(({ kind }) => kind === 'close').length;
    expect(contours('ffi')).toBe(2 * contours('f') + contours('i'));
  });

  test('are closed paths that begin with a move', () => {
    for (const letter of 'abcdefghijklmnopqrstuvwxyz') {
      const { steps } = letters.outlineOf(letter);
      const moves = steps.filter(({ kind }) => kind === 'move').length;
      const closes = steps.filter(({ kind }) => kind === 'close').length;
      expect([letter, steps[0]?.kind, steps.at(-1)?.kind]).toEqual([letter, 'move', 'close']);
      expect(moves, letter).toBe(closes);
    }
  });

  test('come from the first file that has them; what none has is never drawn as a box', () => {
    expect(letters.has('ă')).toBe(true);
    expect(letters.outlineOf('ă').steps.length).toBeGreaterThan(10);
    expect(readLetters([file('latin')]).has('ă')).toBe(false);
    expect(() => letters.outlineOf('→')).toThrow('→');
  });
});

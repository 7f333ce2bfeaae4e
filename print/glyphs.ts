/**
 * Letters as outlines, for paper and slides where the font may be missing and
 * for placing letters by their ink instead of their boxes.
 *
 * All lengths are in em of the letters, with the baseline at 0, up positive and
 * the pen's start at 0. Letters stand side by side by their advance widths:
 * Andika has no kerning, and its ligatures are left alone so that every letter
 * keeps its own shape.
 */
import { create, type Font, type Glyph, type PathCommand } from 'fontkit';

/** One stroke of an outline; a quadratic curve has one control point, a cubic one two. */
export type OutlineStep =
  | { readonly kind: 'move' | 'line'; readonly x: number; readonly y: number }
  | {
      readonly kind: 'quadratic';
      readonly x1: number;
      readonly y1: number;
      readonly x: number;
      readonly y: number;
    }
  | {
      readonly kind: 'cubic';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly kind: 'close' };

/** Where the ink of a text lies, in em; all 0 for a text without ink. */
export interface Ink {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A text as outlines: how far the pen moves, where its ink lies, and the closed paths. */
export interface Outline {
  readonly advance: number;
  readonly ink: Ink;
  readonly steps: readonly OutlineStep[];
}

/** The letters of one or several font files. */
export interface Letters {
  /** Whether every character of a text can be drawn. */
  has(text: string): boolean;
  /** The outline of a text. Throws on a character that no file has: an empty box is never drawn. */
  outlineOf(text: string): Outline;
}

/**
 * Reads font files (WOFF or TrueType; a WOFF2 gives blank glyphs in some readers
 * and is not meant here). A character is taken from the first file that has it.
 */
export function readLetters(files: readonly Uint8Array[]): Letters {
  const fonts = files.map(openFont);
  const glyphOf = (character: string): { glyph: Glyph; font: Font } | null => {
    const code = character.codePointAt(0) as number;
    const font = fonts.find((each) => each.hasGlyphForCodePoint(code));
    return font ? { glyph: font.glyphForCodePoint(code), font } : null;
  };
  return {
    has: (text) => [...text].every((character) => glyphOf(character) !== null),
    outlineOf(text) {
      const steps: OutlineStep[] = [];
      let advance = 0;
      for (const character of text) {
        const found = glyphOf(character);
        if (!found) throw new Error(`No font file has “${character}”.`);
        const { glyph, font } = found;
        const em = 1 / font.unitsPerEm;
        steps.push(...glyph.path.commands.map((command) => stepOf(command, em, advance)));
        advance += glyph.advanceWidth * em;
      }
      return { advance, ink: inkOf(steps), steps };
    },
  };
}

function openFont(bytes: Uint8Array): Font {
  const opened = create(bytes as Parameters<typeof create>[0]);
  if (!('unitsPerEm' in opened)) throw new Error('A collection of fonts where one was expected.');
  return opened;
}

function stepOf({ command, args }: PathCommand, em: number, pen: number): OutlineStep {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args.map((value, at) =>
    at % 2 === 0 ? value * em + pen : value * em,
  );
  switch (command) {
    case 'moveTo':
      return { kind: 'move', x: a, y: b };
    case 'lineTo':
      return { kind: 'line', x: a, y: b };
    case 'quadraticCurveTo':
      return { kind: 'quadratic', x1: a, y1: b, x: c, y: d };
    case 'bezierCurveTo':
      return { kind: 'cubic', x1: a, y1: b, x2: c, y2: d, x: e, y: f };
    case 'closePath':
      return { kind: 'close' };
  }
}

/** The box around all points. Letters have points at their extremes, so that it is the ink's own. */
function inkOf(steps: readonly OutlineStep[]): Ink {
  const ends = steps.flatMap((step) => (step.kind === 'close' ? [] : [step]));
  if (ends.length === 0) return { left: 0, right: 0, top: 0, bottom: 0 };
  const across = ends.map(({ x }) => x);
  const up = ends.map(({ y }) => y);
  return {
    left: Math.min(...across),
    right: Math.max(...across),
    top: Math.max(...up),
    bottom: Math.min(...up),
  };
}

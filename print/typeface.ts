/**
 * Measures text in Andika: how wide a line is, where its ink lies, and which characters it cannot print.
 *
 * The typeface comes in subsets (Latin letters and marks in one file, ā and ŏ in another), so a line is
 * cut into runs by which file holds each character. Two signs of the classroom, the long arc and the
 * long bar over oo, are in no file: they are taken off here and drawn above the pair (`over`).
 */
import { create, type Font } from 'fontkit';
import type { Weight } from './page.ts';

/** The files of a typeface, each weight's subsets in the order in which they are asked. WOFF, not WOFF2: a PDF made from that prints blank. */
export type FontFiles = Readonly<Record<Weight, readonly Uint8Array[]>>;

/** Characters that one file prints in a row, `x` mm from the start of the line. */
export interface TextRun {
  readonly text: string;
  /** Which of the weight's files. */
  readonly file: number;
  readonly x: number;
}

/** A sign drawn over a pair of letters, from `x` over `width` mm. */
export interface OverSign {
  readonly sign: 'arc' | 'bar';
  readonly x: number;
  readonly width: number;
}

/** A line as it will be printed; lengths in mm. */
export interface LaidLine {
  readonly runs: readonly TextRun[];
  readonly over: readonly OverSign[];
  readonly width: number;
}

/** Where the ink of a line lies in mm: from its start, and above (`top`) and below (`bottom`, negative) the baseline. */
export interface InkBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Typeface {
  readonly files: FontFiles;
  /** Lays out one line at a size (em in mm). Throws when a character cannot be printed: ask `missing` first. */
  lay(text: string, size: number, weight?: Weight): LaidLine;
  /** Where the ink of a line lies. */
  ink(text: string, size: number, weight?: Weight): InkBox;
  /** The characters of a text that the typeface lacks, each once. */
  missing(text: string): readonly string[];
}

const overSigns: Readonly<Record<string, OverSign['sign']>> = { '\u035d': 'arc', '\u035e': 'bar' };

/** Opens the files of a typeface. */
export function openTypeface(files: FontFiles): Typeface {
  const fonts = { regular: files.regular.map(open), bold: files.bold.map(open) };
  const fileOf = (character: string, weight: Weight): number =>
    fonts[weight].findIndex((font) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0));
  const lay = (text: string, size: number, weight: Weight = 'regular') =>
    layLine(text, size, fonts[weight], (character) => fileOf(character, weight));
  return {
    files,
    lay,
    ink(text, size, weight = 'regular') {
      let [left, right, top, bottom] = [Infinity, -Infinity, -Infinity, Infinity];
      for (const run of lay(text, size, weight).runs) {
        const font = fonts[weight][run.file]!;
        const { glyphs, positions } = font.layout(run.text);
        const scale = size / font.unitsPerEm;
        let x = run.x;
        glyphs.forEach((glyph, at) => {
          const { xAdvance, xOffset, yOffset } = positions[at]!;
          const { minX, maxX, minY, maxY } = glyph.bbox;
          if (maxX > minX) {
            left = Math.min(left, x + (minX + xOffset) * scale);
            right = Math.max(right, x + (maxX + xOffset) * scale);
            top = Math.max(top, (maxY + yOffset) * scale);
            bottom = Math.min(bottom, (minY + yOffset) * scale);
          }
          x += xAdvance * scale;
        });
      }
      return right < left ? { left: 0, right: 0, top: 0, bottom: 0 } : { left, right, top, bottom };
    },
    missing: (text) => [
      ...new Set(
        [...text].filter(
          (character) => !(character in overSigns) && fileOf(character, 'regular') < 0,
        ),
      ),
    ],
  };
}

function open(bytes: Uint8Array): Font {
  // The types ask for Node's Buffer; any bytes do.
  const font = create(bytes as Parameters<typeof create>[0]);
  if (!('layout' in font)) throw new Error('A collection of fonts where one was expected.');
  return font;
}

function layLine(
  text: string,
  size: number,
  fonts: readonly Font[],
  fileOf: (character: string) => number,
): LaidLine {
  const runs: TextRun[] = [];
  const over: OverSign[] = [];
  let x = 0;
  const widthOf = (part: string, file: number): number => {
    const font = fonts[file]!;
    return (font.layout(part).advanceWidth * size) / font.unitsPerEm;
  };
  for (const piece of pieces(text, fileOf)) {
    const width = widthOf(piece.text, piece.file);
    runs.push({ text: piece.text, file: piece.file, x });
    for (const { sign, at } of piece.over) {
      const before = widthOf(piece.text.slice(0, at), piece.file);
      const pair = widthOf(piece.text.slice(at, at + 2), piece.file);
      over.push({ sign, x: x + before, width: pair });
    }
    x += width;
  }
  return { runs, over, width: x };
}

interface Piece {
  text: string;
  readonly file: number;
  readonly over: { readonly sign: OverSign['sign']; readonly at: number }[];
}

function pieces(text: string, fileOf: (character: string) => number): readonly Piece[] {
  const found: Piece[] = [];
  for (const character of text) {
    const last = found.at(-1);
    const sign = overSigns[character];
    if (sign) {
      last?.over.push({ sign, at: last.text.length - 1 });
      continue;
    }
    const file = fileOf(character);
    if (file < 0) throw new Error(`The typeface cannot print “${character}”.`);
    if (last?.file === file) last.text += character;
    else found.push({ text: character, file, over: [] });
  }
  return found;
}

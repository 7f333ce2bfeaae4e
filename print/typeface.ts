/**
 * Measures text in Andika: how wide a line is, where its ink lies, and which characters it cannot print.
 *
 * The typeface comes in subsets (Latin letters and marks in one file, ā and ŏ in another), so a line is
 * cut into runs by which file holds each character. Two signs of the classroom, the long arc and the
 * long bar over oo, are in no file: they are taken off here and drawn above the pair (`over`).
 */
import { type Ink, type Letters, type Outline, readLetters } from './glyphs.ts';
import { opticalMiddle } from './optical-middle.ts';
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

export interface Typeface {
  readonly files: FontFiles;
  /** Lays out one line at a size (em in mm). Throws when a character cannot be printed: ask `missing` first. */
  lay(text: string, size: number, weight?: Weight): LaidLine;
  /** Where the ink of a line lies, in mm from its start and above (`bottom`: negative below) its baseline. */
  ink(text: string, size: number, weight?: Weight): Ink;
  /** Where the middle of a line lies for the eye, in mm from its start. */
  middle(text: string, size: number, weight?: Weight): number;
  /** The characters of a text that the typeface lacks, each once. */
  missing(text: string): readonly string[];
}

const overSigns: Readonly<Record<string, OverSign['sign']>> = { '\u035d': 'arc', '\u035e': 'bar' };

/** Opens the files of a typeface. */
export function openTypeface(files: FontFiles): Typeface {
  const fonts = { regular: files.regular.map(openFile), bold: files.bold.map(openFile) };
  const fileOf = (character: string, weight: Weight): number =>
    fonts[weight].findIndex((font) => font.has(character));
  const lay = (text: string, size: number, weight: Weight = 'regular') =>
    layLine(text, size, fonts[weight], (character) => fileOf(character, weight));
  const ink = (text: string, size: number, weight: Weight = 'regular'): Ink => {
    const boxes = lay(text, size, weight).runs.map((run) => {
      const { ink } = fonts[weight][run.file]!.outlineOf(run.text);
      return {
        left: run.x + ink.left * size,
        right: run.x + ink.right * size,
        top: ink.top * size,
        bottom: ink.bottom * size,
      };
    });
    if (boxes.length === 0) return { left: 0, right: 0, top: 0, bottom: 0 };
    return {
      left: Math.min(...boxes.map(({ left }) => left)),
      right: Math.max(...boxes.map(({ right }) => right)),
      top: Math.max(...boxes.map(({ top }) => top)),
      bottom: Math.min(...boxes.map(({ bottom }) => bottom)),
    };
  };
  return {
    files,
    lay,
    ink,
    middle(text, size, weight = 'regular') {
      const [run, ...others] = lay(text, size, weight).runs;
      if (run && others.length === 0) {
        return opticalMiddle(fonts[weight][run.file]!.outlineOf(run.text)) * size;
      }
      const { left, right } = ink(text, size, weight);
      return (left + right) / 2;
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

/** A file's letters; the outlines of a text are made once, since one word is measured many times. */
function openFile(bytes: Uint8Array): Letters {
  const letters = readLetters([bytes]);
  const known = new Map<string, Outline>();
  return {
    has: letters.has,
    outlineOf(text) {
      const outline = known.get(text) ?? letters.outlineOf(text);
      known.set(text, outline);
      return outline;
    },
  };
}

function layLine(
  text: string,
  size: number,
  fonts: readonly Letters[],
  fileOf: (character: string) => number,
): LaidLine {
  const runs: TextRun[] = [];
  const over: OverSign[] = [];
  let x = 0;
  for (const piece of pieces(text, fileOf)) {
    const widthOf = (part: string): number => fonts[piece.file]!.outlineOf(part).advance * size;
    runs.push({ text: piece.text, file: piece.file, x });
    for (const { sign, at } of piece.over) {
      const before = widthOf(piece.text.slice(0, at));
      over.push({ sign, x: x + before, width: widthOf(piece.text.slice(at, at + 2)) });
    }
    x += widthOf(piece.text);
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

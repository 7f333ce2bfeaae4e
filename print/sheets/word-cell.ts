import { outlinePath } from '../outline-path.ts';
import type { PageMark } from '../page.ts';
import { sweepStroke } from '../sweep-stroke.ts';
import type { Cell } from './blocks.ts';
import type { SheetLook } from './sheet-look.ts';

/** A word at a size (em in mm); a real one that is to be marked stands over the sweep line. */
export function wordCell(
  text: string,
  size: number,
  { typeface, inks }: SheetLook,
  { marked = false }: { readonly marked?: boolean } = {},
): Cell {
  const { width } = typeface.lay(text, size);
  return {
    width,
    height: size * 1.5,
    marks: (x, y) => {
      const base = y + size * 1.05;
      const marks: PageMark[] = [{ kind: 'text', text, x, y: base, size, ink: inks.ink }];
      if (!marked) return marks;
      const stroke = sweepStroke(x, x + width, base + size * 0.32, Math.max(0.6, size * 0.09));
      return [{ kind: 'shape', path: outlinePath(stroke), fill: inks.sweep }, ...marks];
    },
  };
}

/** The largest size up to `most`, not below `least`, at which the widest of these words fits `width`. */
export function sizeFor(
  words: readonly string[],
  width: number,
  [least, most]: readonly [number, number],
  { typeface }: SheetLook,
): number {
  const widest = Math.max(0.1, ...words.map((word) => typeface.lay(word, 1).width));
  return Math.max(least, Math.min(most, width / widest));
}

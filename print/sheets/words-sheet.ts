/** Words to read, in letters for children. */
import type { Page } from '../page.ts';
import { columnsFor, grid, space, titleBlock } from './blocks.ts';
import { fitPages } from './fit.ts';
import { blockWidth } from './flow.ts';
import { CHILD, childLeast, type SheetLook } from './sheet-look.ts';
import { sizeFor, wordCell } from './word-cell.ts';

/** A list of words as they are written; pairs stand with a stroke between them. */
export interface WordsSheetSpec {
  readonly title: string;
  /** What the list is, in a line. */
  readonly below: string;
  readonly words: readonly string[];
}

/** The pages of a list of words. */
export function wordsSheet({ title, below, words }: WordsSheetSpec, look: SheetLook) {
  const blocks = (look: SheetLook) => [
    ...titleBlock(title, below, look),
    space(2),
    ...wordRows(words, 4, look),
  ];
  return fitPages(blocks, { foot: title }, look) satisfies readonly Page[];
}

/** Words in rows of up to `most`, as large as children read. */
export function wordRows(words: readonly string[], most: number, look: SheetLook) {
  const size = sizeFor(words, blockWidth(look) - 6, [childLeast(look), CHILD], look);
  const cells = words.map((word) => wordCell(word, size, look));
  const widest = Math.max(0, ...cells.map(({ width }) => width)) + 6;
  return grid(cells, columnsFor(widest, most, look), look, size * 0.35);
}

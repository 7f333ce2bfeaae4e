/** The blocks that sheets are made of: headings, paragraphs, rows of cells, lines to write on. */

import { asParagraph, asPart, listItems } from '../as-part.ts';
import { box, circle, line, type PageMark, type Weight } from '../page.ts';
import type { PartRole } from '../part.ts';
import { wrap } from '../wrap.ts';
import { type Block, blockWidth } from './flow.ts';
import { BODY, HEADING, type SheetLook, TITLE } from './sheet-look.ts';

/** From one baseline to the next, in em. */
const LEADING = 1.38;
/** From the top of a line to its baseline, in em. */
const RISE = 1.02;

/** Something of its own size that stands in a row beside others. */
export interface Cell {
  readonly width: number;
  readonly height: number;
  readonly marks: (x: number, y: number) => readonly PageMark[];
  /** What is said of it to whoever hears the page, where its letters alone would mislead. */
  readonly says?: string;
}

/** Blank paper. */
export function space(height: number): Block {
  return { height, marks: () => [] };
}

/** The title of a sheet, and below it who or what it is for. */
export function titleBlock(title: string, below: string, look: SheetLook): readonly Block[] {
  return [
    { ...paragraph(title, look, { size: TITLE, weight: 'bold', role: 'H1' }), withNext: true },
    ...(below === '' ? [] : [paragraph(below, look, { soft: true })]),
    space(2),
  ];
}

interface ParagraphLook {
  readonly size?: number;
  readonly weight?: Weight;
  readonly soft?: boolean;
  readonly role?: PartRole;
}

/** Text in as many lines as it takes; a word wider than the sheet is set smaller. */
export function paragraph(text: string, look: SheetLook, how: ParagraphLook = {}): Block {
  const { size = BODY, weight = 'regular', soft = false, role = 'P' } = how;
  const { typeface, inks } = look;
  const width = blockWidth(look);
  const lines = wrap(text, width, size, typeface, weight);
  return {
    height: lines.length * size * LEADING,
    marks: (left, top) => {
      const marks = lines.map((words, at): PageMark => {
        const wide = typeface.lay(words, size, weight).width;
        return {
          kind: 'text',
          text: words,
          x: left,
          y: top + at * size * LEADING + size * RISE,
          size: size * Math.min(1, width / wide),
          ink: soft ? inks.soft : inks.ink,
          weight,
        };
      });
      return asPart({ role }, marks);
    },
  };
}

/** A heading, after the number of its part where it has one. It stays with what follows. */
export function heading(text: string, look: SheetLook, part: number | null = null): Block {
  const { inks } = look;
  const indent = part === null ? 0 : 9;
  const height = 10.5;
  const y = 7;
  return {
    height,
    withNext: true,
    marks: (left, top) =>
      asPart({ role: 'H2' }, [
        ...(part === null
          ? []
          : [
              circle(left + 3.2, top + y - 1.6, 3.2, { stroke: inks.ink, line: 0.4 }),
              {
                kind: 'text' as const,
                text: `${part}`,
                x: left + 3.2,
                y: top + y,
                size: HEADING * 0.92,
                ink: inks.ink,
                weight: 'bold' as const,
                align: 'center' as const,
              },
            ]),
        {
          kind: 'text',
          text,
          x: left + indent,
          y: top + y,
          size: HEADING,
          ink: inks.ink,
          weight: 'bold',
        },
      ]),
  };
}

/** Blocks under a heading, which says that they are continued where they go on on another page. */
export function headed(
  text: string,
  blocks: readonly Block[],
  look: SheetLook,
  part: number | null = null,
): readonly Block[] {
  const again = asDecoration(heading(`${text}, continued`, look, part));
  return [heading(text, look, part), ...blocks.map((block) => ({ ...block, under: again }))];
}

/** A block that is not read aloud: what it says was said before. */
function asDecoration(block: Block): Block {
  return {
    ...block,
    marks: (left, top) => block.marks(left, top).map(({ part: _, ...mark }) => mark),
  };
}

/** Cells in rows of `columns`, the items of a list, all columns alike wide; a row is never cut. */
export function grid(
  cells: readonly Cell[],
  columns: number,
  look: SheetLook,
  gap = 0,
): readonly Block[] {
  const wide = blockWidth(look) / columns;
  const items = asItems(cells);
  const rows = Array.from({ length: Math.ceil(items.length / columns) }, (_, row) =>
    items.slice(row * columns, (row + 1) * columns),
  );
  return rows.map((row) => ({
    height: Math.max(...row.map(({ height }) => height)) + gap,
    marks: (left, top) => row.flatMap(({ marks }, at) => marks(left + at * wide, top)),
  }));
}

/** How many columns cells of this width fit in, at least one and at most `most`. */
export function columnsFor(widest: number, most: number, look: SheetLook): number {
  return Math.max(1, Math.min(most, Math.floor(blockWidth(look) / widest)));
}

/** Cells one after another, the items of a list, in as many lines as a width takes, `gap` between them. */
export function lineUp(cells: readonly Cell[], width: number, gap: number): Cell {
  const placed: { readonly cell: Cell; readonly x: number; readonly y: number }[] = [];
  let [x, y, high] = [0, 0, 0];
  for (const cell of asItems(cells)) {
    if (x > 0 && x + cell.width > width) {
      x = 0;
      y += high + gap;
      high = 0;
    }
    placed.push({ cell, x, y });
    x += cell.width + gap;
    high = Math.max(high, cell.height);
  }
  return {
    width,
    height: y + high,
    marks: (left, top) => placed.flatMap((one) => one.cell.marks(left + one.x, top + one.y)),
  };
}

function asItems(cells: readonly Cell[]): readonly Cell[] {
  const items = listItems(cells.map(({ says }) => says));
  return cells.map((cell, at) => ({
    ...cell,
    marks: (x, y) => asPart(items[at]!, cell.marks(x, y)),
  }));
}

/** A box to tick, its upper left corner at (`x`, `y`). */
export function tickBox(x: number, y: number, { inks }: SheetLook, side = 4): PageMark {
  return box(x, y, { width: side, height: side }, { stroke: inks.ink, line: 0.3 }, 0.6);
}

/** Lines to write on, `apart` from each other. */
export function writingLines(count: number, apart: number, look: SheetLook): Block[] {
  const width = blockWidth(look);
  const { inks } = look;
  return Array.from({ length: count }, () => ({
    height: apart,
    marks: (left, top) => [
      line([left, top + apart], [left + width, top + apart], { stroke: inks.rule, line: 0.25 }),
    ],
  }));
}

/** Places to write in, named: `Name ______  Date ____`. `shares` of the width, one for each. */
export function blanks(names: readonly (readonly [string, number])[], look: SheetLook): Block {
  const { inks, typeface } = look;
  const width = blockWidth(look);
  return {
    height: 11,
    marks: (left, top) => {
      let x = left;
      const marks = names.flatMap(([name, share]): PageMark[] => {
        const from = x + typeface.lay(name, BODY).width + 2;
        const to = x + width * share - 4;
        const marks: PageMark[] = [
          { kind: 'text', text: name, x, y: top + 7, size: BODY, ink: inks.soft },
          line([from, top + 7.6], [to, top + 7.6], { stroke: inks.rule, line: 0.25 }),
        ];
        x += width * share;
        return marks;
      });
      return asParagraph(marks);
    },
  };
}

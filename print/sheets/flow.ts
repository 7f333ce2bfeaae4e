/**
 * Sheets as blocks that flow down a page and on to the next. A block is never
 * cut: it stands on the page where it still fits, and one that belongs to the
 * next (a heading) goes with it. All lengths are mm.
 */
import { type Page, type PageMark, pageSize } from '../page.ts';
import { type Paper, points } from '../paper.ts';
import type { SheetLook } from './sheet-look.ts';

/** Part of a sheet: its height, and its marks once it stands at (`left`, `top`). */
export interface Block {
  readonly height: number;
  readonly marks: (left: number, top: number) => readonly PageMark[];
  /** Stays on the page of the block after it. */
  readonly withNext?: boolean;
  /** Begins a page. */
  readonly newPage?: boolean;
}

/** Blank paper around what is printed; a printer’s own edge is narrower. */
const MARGIN = 15;
/** The baseline of a page’s foot, from the lower edge. */
const FOOT = 9;

/** The width that blocks have on a paper. */
export function blockWidth(paper: Paper): number {
  return pageSize({ paper }).width - 2 * MARGIN;
}

/** The pages of blocks; `foot` stands small at the foot of each, with the page’s number. */
export function flowPages(
  blocks: readonly Block[],
  { paper, foot }: { readonly paper: Paper; readonly foot: string },
  look: SheetLook,
): readonly Page[] {
  const { height } = pageSize({ paper });
  const floor = height - MARGIN - points(8);
  const sheets: PageMark[][] = [];
  let top = Number.POSITIVE_INFINITY;
  blocks.forEach((block, at) => {
    const isFirst = sheets.length === 0;
    if (isFirst || block.newPage || top + needed(blocks, at) > floor) {
      sheets.push([]);
      top = MARGIN;
    }
    sheets.at(-1)?.push(...block.marks(MARGIN, top));
    top += block.height;
  });
  return sheets.map((marks, at) => ({
    paper,
    marks: [...marks, ...footMarks(paper, foot, at + 1, sheets.length, look)],
  }));
}

/** The height of a block together with those that it must not be parted from. */
function needed(blocks: readonly Block[], at: number): number {
  const block = blocks[at];
  if (!block) return 0;
  return block.withNext ? block.height + needed(blocks, at + 1) : block.height;
}

function footMarks(
  paper: Paper,
  foot: string,
  page: number,
  pages: number,
  { inks, typeface }: SheetLook,
): readonly PageMark[] {
  const { width, height } = pageSize({ paper });
  const y = height - FOOT;
  const size = points(8);
  const room = width - 2 * MARGIN - 20;
  const wide = typeface.lay(foot, size).width;
  const look = { kind: 'text', y, ink: inks.soft } as const;
  return [
    { ...look, text: foot, x: MARGIN, size: size * Math.min(1, room / Math.max(wide, 1)) },
    ...(pages === 1
      ? []
      : [
          {
            ...look,
            text: `${page} of ${pages}`,
            x: width - MARGIN,
            size,
            align: 'right' as const,
          },
        ]),
  ];
}

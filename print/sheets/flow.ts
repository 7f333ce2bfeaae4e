/**
 * Sheets as blocks that flow down a page and on to the next. A block is never
 * cut: it stands on the page where it still fits, and one that belongs to the
 * next (a heading) goes with it; what goes on under a heading has it again on the next page. All lengths are mm.
 */
import { type Page, type PageMark, pageSize, type ShapeMark } from '../page.ts';
import { points } from '../paper.ts';
import type { SheetLook } from './sheet-look.ts';

/** Part of a sheet: its height, and its marks once it stands at (`left`, `top`). */
export interface Block {
  readonly height: number;
  readonly marks: (left: number, top: number) => readonly PageMark[];
  /** Stays on the page of the block after it. */
  readonly withNext?: boolean;
  /** Stands above it where a page begins with it: its heading, said again. */
  readonly under?: Block;
  /** Begins a page. */
  readonly newPage?: boolean;
}

/** Blank paper around what is printed; a printer’s own edge is narrower. */
const MARGIN = 15;
/** The baseline of a page’s foot, from the lower edge. */
const FOOT = 9;

/** The width that blocks have on a sheet, as they are laid out. */
export function blockWidth({ paper, zoom = 1 }: SheetLook): number {
  return (pageSize({ paper }).width - 2 * MARGIN) / zoom;
}

/** Blocks on pages: the marks of each page, and how much of the last one they fill, from 0 to 1. */
export interface Flowed {
  readonly pages: readonly Page[];
  readonly filled: number;
}

/** The pages of blocks; `foot` stands small at the foot of each, with the page’s number. */
export function flowPages(blocks: readonly Block[], foot: string, look: SheetLook): Flowed {
  const { paper, zoom = 1 } = look;
  const room = (pageSize({ paper }).height - 2 * MARGIN - points(8)) / zoom;
  const sheets: PageMark[][] = [];
  let top = Number.POSITIVE_INFINITY;
  blocks.forEach((block, at) => {
    const isFirst = sheets.length === 0;
    if (isFirst || block.newPage || top + needed(blocks, at) > room) {
      const again = isFirst ? undefined : block.under;
      sheets.push([...(again?.marks(0, 0) ?? [])]);
      top = again?.height ?? 0;
    }
    sheets.at(-1)?.push(...block.marks(0, top));
    top += block.height;
  });
  return {
    filled: sheets.length === 0 ? 0 : top / room,
    pages: sheets.map((marks, at) => ({
      paper,
      marks: [
        ...marks.map((mark) => printed(mark, zoom)),
        ...footMarks(foot, at + 1, sheets.length, look),
      ],
    })),
  };
}

/** A mark in the place and size in which it is printed. */
function printed(mark: PageMark, zoom: number): PageMark {
  const [x, y] = [MARGIN + (mark.x ?? 0) * zoom, MARGIN + (mark.y ?? 0) * zoom];
  if (mark.kind === 'text') return { ...mark, x, y, size: mark.size * zoom };
  const { scale = 1, line, dash } = mark;
  return {
    ...mark,
    x,
    y,
    scale: scale * zoom,
    ...(line === undefined ? {} : { line: line * zoom }),
    ...(dash ? { dash: [dash[0] * zoom, dash[1] * zoom] } : {}),
  } satisfies ShapeMark;
}

/** The height of a block together with those that it must not be parted from. */
function needed(blocks: readonly Block[], at: number): number {
  const block = blocks[at];
  if (!block) return 0;
  return block.withNext ? block.height + needed(blocks, at + 1) : block.height;
}

function footMarks(
  foot: string,
  page: number,
  pages: number,
  { paper, inks, typeface }: SheetLook,
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

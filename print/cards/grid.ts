import type { Box } from '../box.ts';
import { INCH, type Paper, paperSize, type Size } from '../paper.ts';

/** The kinds of single cards: 3 × 5 in index cards, half sheets for the whole group, small ones for a desk. */
export const CARD_KINDS = ['index', 'half', 'desk'] as const;
export type CardKind = (typeof CARD_KINDS)[number];

/** How the cards of a kind lie on a sheet. Lengths in mm from the top left. */
export interface Grid {
  readonly landscape: boolean;
  readonly page: Size;
  readonly columns: number;
  readonly rows: number;
  readonly left: number;
  readonly top: number;
  /** A card as it is cut. */
  readonly cell: Size;
  /** From the cut to the frame. */
  readonly inset: number;
}

/** The grid of a kind on a paper: index 76.2 × 127 mm and desk 48 × 60 mm on both papers, half half of the sheet. */
export function gridOf(kind: CardKind, paper: Paper): Grid {
  const upright = paperSize[paper];
  if (kind === 'half') {
    const page = { width: upright.height, height: upright.width };
    const cell = { width: page.width / 2, height: page.height };
    return { landscape: true, page, columns: 2, rows: 1, left: 0, top: 0, cell, inset: 11 };
  }
  const [columns, rows, cell, inset] =
    kind === 'index'
      ? ([2, 2, { width: 3 * INCH, height: 5 * INCH }, 5] as const)
      : ([4, 4, { width: 48, height: 60 }, 3] as const);
  const left = (upright.width - columns * cell.width) / 2;
  const top = (upright.height - rows * cell.height) / 2;
  return { landscape: false, page: upright, columns, rows, left, top, cell, inset };
}

/** How many cards a sheet holds. */
export function cardsPerPage({ columns, rows }: Grid): number {
  return columns * rows;
}

/** The frame of the card at a place of the sheet, counted along the rows. */
export function frameAt(grid: Grid, place: number): Box {
  const { left, top, cell, inset, columns } = grid;
  const column = place % columns;
  const row = Math.floor(place / columns);
  return {
    x: left + column * cell.width + inset,
    y: top + row * cell.height + inset,
    width: cell.width - 2 * inset,
    height: cell.height - 2 * inset,
  };
}

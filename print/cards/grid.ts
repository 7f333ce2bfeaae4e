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

/**
 * The grid of a kind on a paper: index 127 × 76.2 mm and desk 48 × 60 mm on both papers, half half of the
 * sheet. Cards for a group lie on their long side, where letters are larger by half: on index cards
 * they can be read from 4 m, on half sheets from 8 m.
 */
export function gridOf(kind: CardKind, paper: Paper): Grid {
  const upright = paperSize[paper];
  if (kind === 'half') {
    const cell = { width: upright.width, height: upright.height / 2 };
    const page = upright;
    return { landscape: false, page, columns: 1, rows: 2, left: 0, top: 0, cell, inset: 6.5 };
  }
  const landscape = kind === 'index';
  const page = landscape ? { width: upright.height, height: upright.width } : upright;
  const [columns, rows, cell, inset] = landscape
    ? ([2, 2, { width: 5 * INCH, height: 3 * INCH }, 4.5] as const)
    : ([4, 4, { width: 48, height: 60 }, 3] as const);
  const left = (page.width - columns * cell.width) / 2;
  const top = (page.height - rows * cell.height) / 2;
  return { landscape, page, columns, rows, left, top, cell, inset };
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

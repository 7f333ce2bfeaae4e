/** A field of the grid: a child's row and a word's column, from 0. */
export interface GridSpot {
  readonly row: number;
  readonly column: number;
}

/** How large the grid is. */
export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

/**
 * The field after this one: down the column and on with the next word, or, paper by paper, along the row
 * and on with the next child. The last field stays.
 */
export function nextSpot(
  { row, column }: GridSpot,
  { rows, columns }: GridSize,
  byPaper: boolean,
): GridSpot {
  if (byPaper) {
    if (column + 1 < columns) return { row, column: column + 1 };
    return row + 1 < rows ? { row: row + 1, column: 0 } : { row, column };
  }
  if (row + 1 < rows) return { row: row + 1, column };
  return column + 1 < columns ? { row: 0, column: column + 1 } : { row, column };
}

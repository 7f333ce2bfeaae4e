/** Where one of many things stands: its row and its column, from 0. Several may share a place. */
export interface RovingPlace {
  readonly row: number;
  readonly column: number;
}

/** How the arrow keys go. */
export interface Ways {
  /** Left and right go on into the next row, as one reads. Otherwise a row ends. */
  readonly wraps?: boolean;
  /** Up and down go as left and right do: there is but one row. */
  readonly inLine?: boolean;
}

/**
 * Which of things in reading order a key leads to from the one at `from`: the arrows to its neighbors, Home
 * and End along its row. At an edge it stays where it is; null for any other key.
 */
export function leadsTo(
  key: string,
  from: number,
  places: readonly RovingPlace[],
  { wraps = false, inLine = false }: Ways = {},
): number | null {
  const here = places[from];
  if (!here) return null;
  const inRow = (row: number) => places.flatMap((place, at) => (place.row === row ? [at] : []));
  if (key === 'Home') return inRow(here.row)[0] ?? from;
  if (key === 'End') return inRow(here.row).at(-1) ?? from;
  const along = ALONG[key] ?? (inLine ? ACROSS[key] : undefined);
  if (along !== undefined) {
    const line = wraps ? places.map((_, at) => at) : inRow(here.row);
    return line[line.indexOf(from) + along] ?? from;
  }
  const across = ACROSS[key];
  if (across === undefined) return null;
  const columnOf = (at: number) => places[at]?.column ?? 0;
  const beyond = inRow(here.row + across).filter((at) => columnOf(at) <= here.column);
  const column = Math.max(...beyond.map(columnOf));
  return beyond.find((at) => columnOf(at) === column) ?? from;
}

/** The places of a full grid, row by row. */
export function gridOf(rows: number, columns: number): readonly RovingPlace[] {
  return Array.from({ length: rows * columns }, (_, at) => ({
    row: Math.floor(at / columns),
    column: at % columns,
  }));
}

const ALONG: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 };
const ACROSS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };

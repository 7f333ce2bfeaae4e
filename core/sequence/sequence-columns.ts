import type { CsvRecord } from './csv-records.ts';
import { isItem } from './item.ts';

/** The columns of an order as a table. */
export const SEQUENCE_COLUMNS = ['step', 'stage', 'grade', 'title', 'items', 'why'] as const;
export type Column = (typeof SEQUENCE_COLUMNS)[number];

/** The cells of a line by their columns. */
export type NamedCells = Partial<Record<Column, string>>;

/** Other names that people give to our columns. */
const columnNames: ReadonlyMap<string, Column> = new Map([
  ...SEQUENCE_COLUMNS.map((column): [string, Column] => [column, column]),
  ['#', 'step'],
  ['no', 'step'],
  ['number', 'step'],
  ['lesson', 'step'],
  ['week', 'step'],
  ['unit', 'stage'],
  ['phase', 'stage'],
  ['level', 'stage'],
  ['year', 'grade'],
  ['name', 'title'],
  ['focus', 'title'],
  ['skill', 'title'],
  ['item', 'items'],
  ['card', 'items'],
  ['cards', 'items'],
  ['spelling', 'items'],
  ['spellings', 'items'],
  ['grapheme', 'items'],
  ['graphemes', 'items'],
  ['letters', 'items'],
  ['sounds', 'items'],
  ['reason', 'why'],
  ['notes', 'why'],
]);

/** The columns that a first line names, null for each it does not; null when it is no header. */
export function headerOf(record: CsvRecord): readonly (Column | null)[] | null {
  const columns = record.cells.map((cell) => columnNames.get(cell.trim().toLowerCase()) ?? null);
  const named = columns.filter((column) => column !== null).length;
  return named > 0 && !record.cells.some(isItem) ? columns : null;
}

/** The cells of a line under a header; cells of one column are joined. */
export function byHeader(record: CsvRecord, header: readonly (Column | null)[]): NamedCells {
  const row: NamedCells = {};
  for (const [place, cell] of record.cells.entries()) {
    const column = header[place];
    if (column) row[column] = row[column] ? `${row[column]} ${cell.trim()}` : cell.trim();
  }
  return row;
}

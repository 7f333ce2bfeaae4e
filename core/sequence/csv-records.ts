/** One record: its cells, the number of the line it begins on (from 1), the text as it stood. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
  readonly text: string;
  /** A quote was opened and never closed: the line was read as plain text. */
  readonly openQuote: boolean;
}

export const DELIMITERS = ['\t', ';', ','] as const;
export type Delimiter = (typeof DELIMITERS)[number];

/**
 * Reads delimited text as RFC 4180 has it: cells may be quoted, a quoted cell
 * may hold delimiters, line ends and doubled quotes. Also takes a byte-order
 * mark, any of the three line ends, and quotes inside an unquoted cell. A quote
 * that never closes would swallow the rest of the file: that line alone is then
 * read as plain text and marked. Blank lines are left out.
 */
export function readCsv(text: string, delimiter: Delimiter): readonly CsvRecord[] {
  const source = text.replace(/^\uFEFF/, '');
  const records: CsvRecord[] = [];
  let at = 0;
  let line = 1;
  while (at < source.length) {
    const read = readQuoted(source, at, delimiter) ?? readPlain(source, at, delimiter);
    const recordText = source.slice(at, read.end);
    if (recordText.trim() !== '') {
      records.push({ line, cells: read.cells, text: recordText, openQuote: read.openQuote });
    }
    line += lineEnds(source.slice(at, read.next));
    at = read.next;
  }
  return records;
}

/** Writes records as RFC 4180 has it, with commas and CR LF. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((cells) => `${cells.map(quote).join(',')}\r\n`).join('');
}

/**
 * The delimiter that parts cells on the most lines; of equals the rarer sign in
 * prose (tab, then semicolon). Null when no line holds any: a single column.
 */
export function findDelimiter(text: string): Delimiter | null {
  const bare = text.replace(/"(?:[^"]|"")*"/g, '').split(/\r\n|\n|\r/);
  let best: Delimiter | null = null;
  let most = 0;
  for (const delimiter of DELIMITERS) {
    const lines = bare.filter((line) => line.includes(delimiter)).length;
    if (lines > most) {
      best = delimiter;
      most = lines;
    }
  }
  return best;
}

interface ReadRecord {
  readonly cells: readonly string[];
  /** Where the record's own text ends, and where the next record begins. */
  readonly end: number;
  readonly next: number;
  readonly openQuote: boolean;
}

function readQuoted(source: string, from: number, delimiter: Delimiter): ReadRecord | null {
  const cells: string[] = [];
  let at = from;
  while (true) {
    const start = at;
    let cell = '';
    if (source[at] === '"') {
      at += 1;
      while (true) {
        const close = source.indexOf('"', at);
        if (close < 0) return null;
        cell += source.slice(at, close);
        at = close + 1;
        if (source[at] !== '"') break;
        cell += '"';
        at += 1;
      }
    }
    const quoted = at > start;
    const stop = endOfCell(source, at, delimiter);
    const rest = source.slice(at, stop);
    if (quoted && rest.trim() !== '') return null;
    cells.push(quoted ? cell : rest);
    if (source[stop] !== delimiter) {
      return { cells, end: stop, next: stop + lineEndLength(source, stop), openQuote: false };
    }
    at = stop + 1;
  }
}

function readPlain(source: string, from: number, delimiter: Delimiter): ReadRecord {
  let end = from;
  while (end < source.length && source[end] !== '\n' && source[end] !== '\r') end += 1;
  const cells = source
    .slice(from, end)
    .split(delimiter)
    .map((cell) => cell.replace(/^"|"$/g, ''));
  return { cells, end, next: end + lineEndLength(source, end), openQuote: true };
}

function endOfCell(source: string, from: number, delimiter: Delimiter): number {
  let at = from;
  while (at < source.length && !['\n', '\r', delimiter].includes(source[at] as string)) at += 1;
  return at;
}

function lineEndLength(source: string, at: number): number {
  if (source[at] === '\r') return source[at + 1] === '\n' ? 2 : 1;
  return source[at] === '\n' ? 1 : 0;
}

function lineEnds(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}

function quote(cell: string): string {
  return /[",;\t\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

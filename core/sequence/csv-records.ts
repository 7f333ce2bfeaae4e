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
 * read as plain text and marked, as is one whose record would go on for more than
 * 50 lines, so that no line is looked at more than 50 times. Blank lines are left out.
 */
export function readCsv(text: string, delimiter: Delimiter): readonly CsvRecord[] {
  const source = text.replace(/^\uFEFF/, '');
  const records: CsvRecord[] = [];
  let at = 0;
  let line = 1;
  while (at < source.length) {
    const read =
      readBare(source, at, delimiter) ??
      readQuoted(source, at, delimiter) ??
      readPlain(source, at, delimiter);
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
 * A cell that no spreadsheet runs: one that begins with =, +, - or @, also behind a tab or line end, gets an
 * apostrophe in front (OWASP, "CSV Injection").
 */
export function safeCell(text: string): string {
  return LOOKS_RUN.test(text) ? `'${text}` : text;
}

/** A cell as it was before `safeCell`. */
export function plainCell(text: string): string {
  return text.startsWith("'") && LOOKS_RUN.test(text.slice(1)) ? text.slice(1) : text;
}

const LOOKS_RUN = /^'*\s*[=+\-@＝＋－＠]/u;

/**
 * The delimiter that parts cells on the most lines; of equals the rarer sign in
 * prose (tab, then semicolon). Null when no line holds any: a single column.
 */
export function findDelimiter(text: string): Delimiter | null {
  const pieces = text.split('"');
  // Every other piece stands in quotes; the last one only seems to, when the quote never closes.
  const bare = pieces
    .filter((_, place) => place % 2 === 0 || place === pieces.length - 1)
    .join('')
    .split(LINE_END);
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

const LINE_END = /\r\n|\n|\r/;

/** Lines that one record may take. */
const MOST_LINES = 50;

interface ReadRecord {
  readonly cells: readonly string[];
  /** Where the record's own text ends, and where the next record begins. */
  readonly end: number;
  readonly next: number;
  readonly openQuote: boolean;
}

/** A line without any quote, or null. */
function readBare(source: string, from: number, delimiter: Delimiter): ReadRecord | null {
  const end = lineEnd(source, from);
  const text = source.slice(from, end);
  if (text.includes('"')) return null;
  const cells = text.split(delimiter);
  return { cells, end, next: end + lineEndLength(source, end), openQuote: false };
}

function readQuoted(source: string, from: number, delimiter: Delimiter): ReadRecord | null {
  let most = from;
  for (let lines = 0; lines < MOST_LINES && most < source.length; lines++) {
    const end = lineEnd(source, most);
    most = end + lineEndLength(source, end);
  }
  // Only so far is looked, so that the search for a quote that never closes ends too.
  const text = source.slice(from, most);
  const cells: string[] = [];
  let at = 0;
  while (true) {
    const start = at;
    let cell = '';
    if (text[at] === '"') {
      at += 1;
      while (true) {
        const close = text.indexOf('"', at);
        if (close < 0) return null;
        cell += text.slice(at, close);
        at = close + 1;
        if (text[at] !== '"') break;
        cell += '"';
        at += 1;
      }
    }
    const quoted = at > start;
    const stop = endOfCell(text, at, delimiter);
    const rest = text.slice(at, stop);
    if (quoted && rest.trim() !== '') return null;
    cells.push(quoted ? cell : rest);
    if (text[stop] !== delimiter) {
      const next = from + stop + lineEndLength(text, stop);
      return { cells, end: from + stop, next, openQuote: false };
    }
    at = stop + 1;
  }
}

function readPlain(source: string, from: number, delimiter: Delimiter): ReadRecord {
  const end = lineEnd(source, from);
  const cells = source
    .slice(from, end)
    .split(delimiter)
    .map((cell) => cell.replace(/^"|"$/g, ''));
  return { cells, end, next: end + lineEndLength(source, end), openQuote: true };
}

function endOfCell(source: string, from: number, delimiter: Delimiter): number {
  let at = from;
  for (; at < source.length; at += 1) {
    const sign = source[at];
    if (sign === delimiter || sign === '\n' || sign === '\r') break;
  }
  return at;
}

function lineEnd(source: string, from: number): number {
  let at = from;
  while (at < source.length && source[at] !== '\n' && source[at] !== '\r') at += 1;
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

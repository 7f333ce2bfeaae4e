/**
 * Reads a whole order of a teacher's own, line by line, so that each line can
 * be shown beside what was understood before anything changes.
 *
 * A spreadsheet is read by its columns and a list by its lines; what one of our
 * own files says is taken to the letter. A line that stands alone as a heading
 * (*Unit 2: Digraphs*, *First sounds:*) begins a stage. A piece that asks or is
 * unknown stays out of the order; the rest of its line is in it.
 */
import type { CardId } from '../../language/card-id.ts';
import { atOnce, type Paced, pacedEach } from '../../paced.ts';
import { type CsvRecord, findDelimiter, plainCell, readCsv } from '../csv-records.ts';
import { itemKey, parseItem, splitItems } from '../item.ts';
import { parseGrade } from '../parse-grade.ts';
import type { Grade, Item, Sequence, Step } from '../sequence.ts';
import { byHeader, headerOf, type NamedCells } from '../sequence-columns.ts';
import { type AssumedHabit, assumedHabits, withHabits } from './assumed-habits.ts';
import { type LinePiece, LONGEST_LINE, readLine } from './read-line.ts';
import type { Vocabulary } from './vocabulary.ts';

/** One line of the text: what she wrote, and what we read. */
export interface OrderLine {
  /** Numbered from 1, as an editor shows it. */
  readonly line: number;
  readonly text: string;
  readonly stage: string;
  readonly pieces: readonly LinePiece[];
  /** The step it went into; null while it teaches nothing (a heading, a question, a slip). */
  readonly step: number | null;
  readonly heading: boolean;
}

/** An order as it was read. */
export interface OrderDraft {
  readonly lines: readonly OrderLine[];
  /** What is clear, the assumed habits included. */
  readonly sequence: Sequence;
  readonly assumed: readonly AssumedHabit[];
}

export interface ReadOrderSpec {
  readonly name?: string;
  readonly vocabulary: Vocabulary;
  /** Whether a piece that asks is taken in its first sense, as a terminal must; otherwise it stays out. */
  readonly firstSense?: boolean;
  /** Habits that her class has not got yet, although the lines would suggest it. */
  readonly notYet?: ReadonlySet<string>;
}

/** Reads an order from a list, a table or a file as it was pasted. Never throws. */
export function readOrder(text: string, spec: ReadOrderSpec): OrderDraft {
  return atOnce(readOrderPaced(text, spec));
}

/** The same, paced. */
export function* readOrderPaced(
  text: string,
  { name = 'Our own order', vocabulary, firstSense = false, notYet = new Set() }: ReadOrderSpec,
): Paced<OrderDraft> {
  const records = readCsv(text, findDelimiter(text) ?? ',').map((record) => ({
    ...record,
    cells: record.cells.map((cell) => plainCell(cell).trim()),
  }));
  const header = records[0] ? headerOf(records[0]) : null;
  const ours = header !== null && OUR_COLUMNS.every((column) => header.includes(column));
  const before = new Set<CardId>();
  const lines: OrderLine[] = [];
  const steps: StepBegun[] = [];
  let stage = '';
  let grade: Grade = 'K';
  let written: string | null = null;
  const readRecord = (record: CsvRecord) => {
    const row: LineRow = header ? byHeader(record, header) : rowOf(record, before, vocabulary);
    const { line, text: as } = record;
    if (row.heading !== undefined) {
      stage = row.heading;
      lines.push({ line, text: as, stage, pieces: [], step: null, heading: true });
      return;
    }
    stage = row.stage || stage;
    grade = parseGrade(row.grade ?? '') ?? grade;
    const pieces = ours
      ? readExactly(row.items ?? '')
      : readLine(row.items ?? '', before, vocabulary);
    const items = itemsOf(pieces, firstSense);
    for (const item of items) if (item.kind === 'card') before.add(item.id);
    const number = /^\d+$/.test(row.step ?? '') ? (row.step as string) : null;
    const last = steps.at(-1);
    if (items.length > 0 && last && number !== null && number === written) {
      for (const item of items) last.byKey.set(itemKey(item), item);
    } else if (items.length > 0) {
      const title = row.title || titleOf(record, pieces);
      steps.push({ stage, grade, title, why: row.why ?? '', byKey: keyed(items) });
    }
    if (items.length > 0) written = number;
    const step = items.length > 0 ? steps.length : null;
    lines.push({ line, text: as, stage, pieces, step, heading: false });
  };
  yield* pacedEach(header ? records.slice(1) : records, readRecord, LINES_AT_A_TIME);
  const whole = steps.map(({ byKey, ...step }, place): Step => {
    return { ...step, number: place + 1, items: [...byKey.values()] };
  });
  const assumed = ours ? [] : assumedHabits(whole).filter(({ habit }) => !notYet.has(habit));
  return { lines, sequence: { name, steps: withHabits(whole, assumed) }, assumed };
}

/** Lines that take a few milliseconds. */
const LINES_AT_A_TIME = 100;

/** A step while further lines may add to it. */
interface StepBegun extends Omit<Step, 'number' | 'items'> {
  readonly byKey: Map<string, Item>;
}

/** A text with a piece of a line written otherwise, as the answer to a question has it. */
export function writeInstead(text: string, line: number, written: string, instead: string): string {
  const lines = text.split(/(\r\n|\n|\r)/);
  const at = (line - 1) * 2;
  const found = lines[at];
  if (found === undefined) return text;
  const place = placeOfPiece(found, written);
  if (place < 0) return text;
  lines[at] = found.slice(0, place) + instead + found.slice(place + written.length);
  return lines.join('');
}

/** Where a piece stands as a piece of its own, not inside another: the *th* of *the th*. */
function placeOfPiece(line: string, written: string): number {
  const isLetter = (sign: string | undefined) => sign !== undefined && /[a-z'=:_]/i.test(sign);
  for (let at = line.indexOf(written); at >= 0; at = line.indexOf(written, at + 1)) {
    const after = line.slice(at + written.length);
    if (!isLetter(line[at - 1]) && !isLetter(after[0]) && !/^\s+(?:as in|like)\b/i.test(after)) {
      return at;
    }
  }
  return -1;
}

const OUR_COLUMNS = ['step', 'stage', 'grade', 'title', 'items'] as const;

interface LineRow extends NamedCells {
  /** What a line that begins a stage says; it teaches nothing. */
  readonly heading?: string;
}

/** A line without a header: a heading, columns as we export them, number and title and items, or items. */
function rowOf(record: CsvRecord, before: ReadonlySet<CardId>, vocabulary: Vocabulary): LineRow {
  const cells = record.cells;
  const filled = cells.filter((cell) => cell !== '');
  if (cells.length >= 5 && parseGrade(cells[2] ?? '') !== null && /^\d+$/.test(cells[0] ?? '')) {
    const [step = '', stage = '', grade = '', title = '', items = '', why = ''] = cells;
    return { step, stage, grade, title, items, why };
  }
  const line = filled.join(', ');
  if (line.length > LONGEST_LINE) return { items: line };
  const isClear = (part: string) => {
    const pieces = readLine(part, before, vocabulary);
    return pieces.length > 0 && pieces.every(({ kind }) => kind !== 'unknown');
  };
  const numbered = filled.length > 1 && /^\d+$/.test(filled[0] as string);
  const cellsLeft = numbered ? filled.slice(1) : filled;
  const step = numbered ? { step: filled[0] as string } : {};
  if (cellsLeft.length > 1 && !cellsLeft.every(isClear) && isClear(cellsLeft.at(-1) as string)) {
    const titles = cellsLeft.slice(0, -1);
    if (titles.every((cell) => !isClear(cell) || cellsLeft.length === 2)) {
      return { ...step, title: titles.join(' '), items: cellsLeft.at(-1) as string };
    }
  }
  const colon = /^([^:=]{3,60}):\s*(.*)$/.exec(line);
  if (colon && !/\b(?:word|words|habit|by heart|by sight)\s*$/i.test(colon[1] as string)) {
    const [, title = '', rest = ''] = colon;
    if (rest === '') return { heading: title.trim() };
    if (!isClear(title) && isClear(rest)) return { ...step, title: title.trim(), items: rest };
  }
  const marked = /^(?:#+\s*|\*\*)(.+?)\**$/.exec(line);
  if (marked) return { heading: (marked[1] as string).trim() };
  if (HEADING.test(line) && readLine(line, before, vocabulary).length === 0)
    return { heading: line };
  return { ...step, items: cellsLeft.join(', ') };
}

/** *Unit 2*, *Kindergarten*, *Term 1*: nothing that is taught. */
const HEADING =
  /^(?:unit|stage|phase|term|part|level|grade|kindergarten|first grade|second grade)\b/i;

function readExactly(cell: string): readonly LinePiece[] {
  return splitItems(cell).map((written, place): LinePiece => {
    const read = parseItem(written);
    if ('item' in read) return { kind: 'items', written, items: [read.item], note: null };
    const near = place < MOST_MENDED ? read.error.nearMisses : [];
    return { kind: 'unknown', written, nearMisses: near };
  });
}

/** For so many items of a line it is looked what may have been meant; nobody mends more at once. */
const MOST_MENDED = 100;

function itemsOf(pieces: readonly LinePiece[], firstSense: boolean): readonly Item[] {
  return union(
    pieces.flatMap((piece) => {
      if (piece.kind === 'items') return piece.items;
      return piece.kind === 'asks' && firstSense ? (piece.question.answers[0]?.items ?? []) : [];
    }),
  );
}

function titleOf(record: CsvRecord, pieces: readonly LinePiece[]): string {
  const said = pieces.filter(({ kind }) => kind !== 'unknown').map(({ written }) => written);
  return said.length > 0 ? said.join(', ') : record.text.trim();
}

function union(items: readonly Item[]): readonly Item[] {
  return [...keyed(items).values()];
}

function keyed(items: readonly Item[]): Map<string, Item> {
  return new Map(items.map((item) => [itemKey(item), item]));
}

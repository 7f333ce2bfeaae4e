import {
  type CsvRecord,
  findDelimiter,
  plainCell,
  readCsv,
  safeCell,
  writeCsv,
} from './csv-records.ts';
import { isItem, itemKey, makeItem, makeItems, parseItem, splitItems } from './item.ts';
import { parseGrade } from './parse-grade.ts';
import { numberSteps } from './progress.ts';
import type { Grade, Item, Sequence, Step } from './sequence.ts';
import { byHeader, headerOf, type NamedCells, SEQUENCE_COLUMNS } from './sequence-columns.ts';

/** What is wrong with one line (numbered from 1 as an editor shows it), and how to mend it. */
export interface CsvProblem {
  readonly line: number;
  /** The line as it was given. */
  readonly text: string;
  readonly code:
    | 'unknown-item'
    | 'no-items'
    | 'unknown-grade'
    | 'steps-out-of-order'
    | 'open-quote'
    | 'no-items-column';
  readonly message: string;
  readonly mend: string;
}

/** Writes an order as CSV that a spreadsheet opens and `parseSequenceCsv` reads back. */
export function makeSequenceCsv(sequence: Sequence): string {
  const rows = sequence.steps.map((step) => [
    String(step.number),
    step.stage,
    step.grade,
    step.title,
    makeItems(step.items),
    step.why,
  ]);
  return writeCsv([SEQUENCE_COLUMNS, ...rows.map((cells) => cells.map(safeCell))]);
}

/**
 * Reads an order that a teacher pasted or imported. Forgives commas, tabs or
 * semicolons between cells, quotes, a byte-order mark, any line ends, a missing
 * header, missing columns, and a bare column or list of items. Lines keep their
 * order; lines in a row with one step number are one step. Every good item is
 * kept; each problem says where it is and what to write instead.
 */
export function parseSequenceCsv(
  text: string,
  name = 'Our own order',
): { readonly sequence: Sequence; readonly problems: readonly CsvProblem[] } {
  const records = readCsv(text, findDelimiter(text) ?? ',').map((record) => ({
    ...record,
    cells: record.cells.map(plainCell),
  }));
  const header = records[0] ? headerOf(records[0]) : null;
  const problems: CsvProblem[] = [];
  if (header && !header.includes('items')) {
    problems.push(problem(records[0] as CsvRecord, 'no-items-column'));
    return { sequence: { name, steps: [] }, problems };
  }
  const steps: StepBegun[] = [];
  let written: number | null = null;
  for (const record of header ? records.slice(1) : records) {
    if (record.openQuote) problems.push(problem(record, 'open-quote'));
    const row = header ? byHeader(record, header) : byPosition(record);
    const items = readItems(record, row.items ?? '', problems);
    if (items.length === 0) continue;
    const last = steps.at(-1);
    const number = /^\d+$/.test(row.step ?? '') ? Number(row.step) : null;
    if (last && number !== null && number === written) {
      for (const item of items)
        if (!last.byKey.has(itemKey(item))) last.byKey.set(itemKey(item), item);
      continue;
    }
    if (number !== null && written !== null && number < written) {
      problems.push(problem(record, 'steps-out-of-order', String(number), String(written)));
    }
    written = number;
    steps.push({
      stage: row.stage || last?.stage || '',
      grade: readGrade(record, row.grade ?? '', last?.grade ?? 'K', problems),
      title: row.title || items.map(makeItem).join(', '),
      byKey: new Map(items.map((item) => [itemKey(item), item])),
      why: row.why ?? '',
    });
  }
  const whole = steps.map(({ byKey, ...step }, place): Step => {
    return { ...step, number: place + 1, items: [...byKey.values()] };
  });
  return { sequence: { name, steps: numberSteps(whole) }, problems };
}

/** A step while further lines may add to it. */
interface StepBegun extends Omit<Step, 'number' | 'items'> {
  readonly byKey: Map<string, Item>;
}

/** Without a header: all cells are items; or the columns in their order; or number, title, items. */
function byPosition(record: CsvRecord): NamedCells {
  const cells = record.cells.map((cell) => cell.trim());
  const filled = cells.filter((cell) => cell !== '');
  if (filled.length === 1 || filled.every(isItemList)) return { items: filled.join(' ') };
  if (cells.length >= 5) {
    const [step = '', stage = '', grade = '', title = '', items = '', why = ''] = cells;
    return { step, stage, grade, title, items, why };
  }
  const numbered = /^\d+$/.test(filled[0] as string);
  const titles = filled.slice(numbered ? 1 : 0, -1);
  return {
    step: numbered ? (filled[0] as string) : '',
    title: titles.join(' '),
    items: filled.at(-1) as string,
  };
}

function isItemList(cell: string): boolean {
  return splitItems(cell).every(isItem);
}

/** For so many problems it is looked what may have been meant; nobody mends more at once. */
const MOST_MENDED = 100;

function readItems(record: CsvRecord, cell: string, problems: CsvProblem[]): readonly Item[] {
  const parts = splitItems(cell);
  if (parts.length === 0) problems.push(problem(record, 'no-items'));
  const items: Item[] = [];
  for (const part of new Set(parts)) {
    const read = parseItem(part);
    if ('item' in read) items.push(read.item);
    else {
      const { item } = read.error;
      const near = problems.length < MOST_MENDED ? read.error.nearMisses : [];
      problems.push(problem(record, 'unknown-item', item, near.join(', ')));
    }
  }
  return [...new Map(items.map((item) => [itemKey(item), item])).values()];
}

function readGrade(
  record: CsvRecord,
  cell: string,
  otherwise: Grade,
  problems: CsvProblem[],
): Grade {
  if (cell === '') return otherwise;
  const grade = parseGrade(cell);
  if (grade === null) problems.push(problem(record, 'unknown-grade', cell, otherwise));
  return grade ?? otherwise;
}

function problem(record: CsvRecord, code: CsvProblem['code'], said = '', instead = ''): CsvProblem {
  return { line: record.line, text: record.text, code, ...sentences[code](said, instead) };
}

const itemForms =
  'Write cards by their letters (sh) or letters and sound (ea=EH), words as word:said, habits as habit:schwa, with spaces between.';

const sentences: Readonly<
  Record<CsvProblem['code'], (said: string, instead: string) => { message: string; mend: string }>
> = {
  'unknown-item': (said, near) => ({
    message: `We know no item “${said}”. The rest of the line was kept.`,
    mend: near === '' ? itemForms : `Did you mean one of these: ${near}? ${itemForms}`,
  }),
  'no-items': () => ({
    message: 'This line teaches nothing, so it was left out.',
    mend: itemForms,
  }),
  'unknown-grade': (said, otherwise) => ({
    message: `“${said}” is no grade from K to 3. The step was kept under ${otherwise}.`,
    mend: 'Write K, 1, 2 or 3.',
  }),
  'steps-out-of-order': (said, before) => ({
    message: `Step ${said} stands after step ${before}. The lines were kept in their own order.`,
    mend: 'To go by the numbers, sort the lines by step and import again.',
  }),
  'open-quote': () => ({
    message: 'A quotation mark was opened and not closed. The line was read without it.',
    mend: 'Close the quotation mark, or take it out.',
  }),
  'no-items-column': () => ({
    message: 'The first line names columns, but none of them holds the items.',
    mend: `Name one column “items”. ${itemForms}`,
  }),
};

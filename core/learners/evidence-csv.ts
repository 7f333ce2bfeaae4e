import { childId, groupId } from '../ids.ts';
import { type Paced, pacedEach } from '../paced.ts';
import { type CsvRecord, findDelimiter, readCsv } from '../sequence/csv-records.ts';
import { parseDay } from './day.ts';
import type { Observation } from './observation.ts';
import { parseHeard, readCards } from './written-cards.ts';

/** The columns of an evidence table. `heard` may be missing; they may stand in any order. */
const EVIDENCE_COLUMNS = ['date', 'pupil', 'cards', 'sounds', 'outcome', 'broke', 'heard'] as const;
type Column = (typeof EVIDENCE_COLUMNS)[number];

/** A row that was left out: its line, counted from 1, and what to mend. */
export interface EvidenceProblem {
  readonly line: number;
  readonly code:
    | 'no-column'
    | 'open-quote'
    | 'no-date'
    | 'no-pupil'
    | 'no-cards'
    | 'unknown-card'
    | 'other-sounds'
    | 'no-outcome'
    | 'no-broke';
  readonly message: string;
}

/** All pupils of a table are one group. */
export const TABLE_GROUP = groupId('table');

/** May be left out of a table altogether. */
const OPTIONAL: ReadonlySet<Column> = new Set(['sounds', 'broke', 'heard']);

/** What was read of a table. */
export interface ReadEvidence {
  readonly observations: readonly Observation[];
  readonly problems: readonly EvidenceProblem[];
}

/**
 * Reads what single children read: one word a row. Every good row is kept; of
 * each other one it is said where it is and what to write instead. Without its
 * named columns nothing can be read. Paced, since a table of a year takes seconds.
 */
export function* parseEvidence(text: string): Paced<ReadEvidence> {
  const [header, ...records] = readCsv(text, findDelimiter(text) ?? ',');
  const names = header?.cells.map((cell) => cell.trim().toLowerCase()) ?? [];
  const missing = EVIDENCE_COLUMNS.filter((name) => !names.includes(name) && !OPTIONAL.has(name));
  if (missing.length > 0) {
    const message = `The first line must name the columns ${EVIDENCE_COLUMNS.join(',')}; ${missing.join(', ')} is not there.`;
    return { observations: [], problems: [{ line: 1, code: 'no-column', message }] };
  }
  const observations: Observation[] = [];
  const problems: EvidenceProblem[] = [];
  yield* pacedEach(records, (record) => {
    const read = readRow(record, names);
    if ('code' in read) problems.push({ line: record.line, ...read });
    else observations.push(read);
  });
  return { observations, problems };
}

type RowError = Omit<EvidenceProblem, 'line'>;

function readRow(record: CsvRecord, names: readonly string[]): Observation | RowError {
  if (record.openQuote) {
    return problem('open-quote', 'A quotation mark was opened and not closed. Close it.');
  }
  const cell = (name: Column): string => record.cells[names.indexOf(name)]?.trim() ?? '';
  const day = parseDay(cell('date'));
  if (day === null) {
    return problem('no-date', `“${cell('date')}” is no date. Write it as 2026-03-02.`);
  }
  if (cell('pupil') === '') {
    return problem('no-pupil', 'No pupil is named. Write who read it.');
  }
  const cards = readCards(cell('cards'), cell('sounds'));
  if ('code' in cards) return cards;
  const outcome = cell('outcome').toLowerCase();
  if (outcome !== 'right' && outcome !== 'wrong') {
    return problem('no-outcome', `The outcome is right or wrong; “${cell('outcome')}” is neither.`);
  }
  const broke = cell('broke') === '' ? null : Number(cell('broke'));
  const right = outcome === 'right';
  if (broke !== null && (right || !Number.isInteger(broke) || broke < 1)) {
    const message = right
      ? 'It is right and yet a card broke. Empty “broke”, or write wrong.'
      : `“${cell('broke')}” is no card. Count the cards from 1, or leave it empty.`;
    return problem('no-broke', message);
  }
  if (broke !== null && broke > cards.ids.length) {
    const message = `Card ${broke} broke, but there are only ${cards.ids.length}. Count them from 1.`;
    return problem('no-broke', message);
  }
  return {
    day,
    child: childId(cell('pupil')),
    groups: [TABLE_GROUP],
    task: 'read',
    cards: cards.ids,
    right,
    broke,
    heard: right ? null : parseHeard(cell('heard')),
  };
}

function problem(code: RowError['code'], message: string): RowError {
  return { code, message };
}

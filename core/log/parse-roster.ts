/**
 * Reads a class list: a pasted column of names, a table with or without a
 * heading, or the `users.csv` of the OneRoster CSV binding (1EdTech, 1.1 and
 * 1.2). Of each child only a first name is kept, and while it is needed to tell
 * two of one name apart, the first letter of the family name; all else in the
 * list is not looked at. What cannot be read is given back line by line with
 * what to do; nothing is left out unsaid.
 */

import { type CsvRecord, findDelimiter, readCsv } from '../sequence/csv-records.ts';
import { plainName } from '../words/name-sounds.ts';

/** How a list was read. */
export const ROSTER_FORMATS = ['names', 'table', 'oneroster'] as const;
export type RosterFormat = (typeof ROSTER_FORMATS)[number];

/** A child of the list. */
export interface RosterEntry {
  /** Where it stands, counted from 1. */
  readonly line: number;
  readonly name: string;
  /** The first letter of the family name, if the list has one; only to tell two apart. */
  readonly initial: string;
}

/** A line without a name that could be read. */
export interface RosterProblem {
  readonly line: number;
  readonly code: 'open-quote' | 'no-name';
  /** The line as it stood, shortened. */
  readonly text: string;
  readonly message: string;
}

/** A list, read. */
export interface ParsedRoster {
  readonly format: RosterFormat;
  readonly entries: readonly RosterEntry[];
  readonly problems: readonly RosterProblem[];
  /** How many were left out since the list says they are no students, or are to be deleted. */
  readonly leftOut: { readonly others: number; readonly deleted: number };
  /** Whether the list says who is a student; where it does not, grown-ups may be among them. */
  readonly saysRoles: boolean;
  /** Of a table without a heading, each column by an example; empty otherwise. */
  readonly columns: readonly string[];
}

/** The longest name that is kept, in letters. */
const LONGEST = 40;

/** Headings under which first names stand, the surest first; without spaces, points and capitals. */
const FIRST_NAMES = [
  'preferredgivenname',
  'preferredfirstname',
  'preferredname',
  'nickname',
  'givenname',
  'firstname',
  'first',
  'forename',
];
/** Headings under which whole names stand. */
const WHOLE_NAMES = ['name', 'studentname', 'student', 'fullname', 'pupil', 'child', 'children'];
const FAMILY_NAMES = ['familyname', 'lastname', 'surname', 'last'];

/** Reads a list; `column` (from 0) says where the first names stand in a table without a heading. */
export function parseRoster(text: string, column = 0): ParsedRoster {
  const delimiter = findDelimiter(text);
  const records = readCsv(text, delimiter ?? ',');
  const heading = (records[0]?.cells ?? []).map((cell) =>
    cell.toLowerCase().replace(/[^\p{L}]/gu, ''),
  );
  const first = FIRST_NAMES.flatMap((name) => indexesOf(heading, name));
  const whole = WHOLE_NAMES.flatMap((name) => indexesOf(heading, name));
  if (first.length + whole.length > 0) {
    const isRoster = heading.includes('sourcedid') && heading.includes('givenname');
    return readTable(records.slice(1), heading, first, whole, isRoster);
  }
  if (delimiter === null || records.length === 1 || records.every(isWhole)) {
    return readNames(records);
  }
  return {
    ...readTable(records, [], [], [column], false),
    columns: (records[0]?.cells ?? []).map((_, at) => exampleOf(records, at)),
  };
}

function indexesOf(heading: readonly string[], name: string): readonly number[] {
  const at = heading.indexOf(name);
  return at < 0 ? [] : [at];
}

/** Whether a record is one quoted cell: `"Ashdown, Wren"`. */
function isWhole({ cells }: CsvRecord): boolean {
  return cells.length === 1;
}

function exampleOf(records: readonly CsvRecord[], at: number): string {
  const cells = records.map(({ cells }) => cells[at]?.trim() ?? '');
  return cells.find((cell) => cell !== '') ?? '';
}

function readTable(
  records: readonly CsvRecord[],
  heading: readonly string[],
  first: readonly number[],
  whole: readonly number[],
  isRoster: boolean,
): ParsedRoster {
  const family = FAMILY_NAMES.flatMap((name) => indexesOf(heading, name))[0];
  const role = isRoster ? heading.indexOf('role') : -1;
  const status = isRoster ? heading.indexOf('status') : -1;
  const entries: RosterEntry[] = [];
  const problems: RosterProblem[] = [];
  let others = 0;
  let deleted = 0;
  for (const record of records) {
    const cell = (at: number): string => record.cells[at]?.trim() ?? '';
    if (record.openQuote) problems.push(problemOf(record, 'open-quote'));
    else if (cell(status).toLowerCase() === 'tobedeleted') deleted++;
    else if (role >= 0 && cell(role).toLowerCase() !== 'student') others++;
    else {
      const given = first.map(cell).find(hasLetter);
      const read = given === undefined ? firstOf(whole.map(cell).find(hasLetter) ?? '') : null;
      const name = given === undefined ? (read?.name ?? '') : tidy(given);
      if (name === '') problems.push(problemOf(record, 'no-name'));
      else {
        const initial = family === undefined ? (read?.initial ?? '') : initialOf(cell(family));
        entries.push({ line: record.line, name, initial });
      }
    }
  }
  return {
    format: isRoster ? 'oneroster' : 'table',
    entries,
    problems,
    leftOut: { others, deleted },
    saysRoles: role >= 0,
    columns: [],
  };
}

/** One name to a cell: a column, or one line of many. */
function readNames(records: readonly CsvRecord[]): ParsedRoster {
  const entries: RosterEntry[] = [];
  const problems: RosterProblem[] = [];
  for (const record of records) {
    if (record.openQuote) {
      problems.push(problemOf(record, 'open-quote'));
      continue;
    }
    const read = record.cells.map(firstOf).filter(({ name }) => name !== '');
    if (read.length === 0) problems.push(problemOf(record, 'no-name'));
    for (const each of read) entries.push({ line: record.line, ...each });
  }
  return {
    format: 'names',
    entries,
    problems,
    leftOut: { others: 0, deleted: 0 },
    saysRoles: false,
    columns: [],
  };
}

/**
 * The first name of a whole one: `Ashdown, Wren` and `Wren Ashdown` are Wren.
 * A letter behind the name tells two apart and stays: `Tam B`.
 */
function firstOf(text: string): Pick<RosterEntry, 'name' | 'initial'> {
  const [before = '', after] = text.split(',', 2);
  const words = tidy(after === undefined || !hasLetter(after) ? before : after).split(' ');
  const [name = '', second = ''] = words;
  if (!hasLetter(name)) return { name: '', initial: '' };
  const isLetter = words.length === 2 && /^\p{L}[.]?$/u.test(second);
  if (isLetter) return { name: tidy(`${name} ${second.replace('.', '')}`), initial: '' };
  const family = after === undefined ? (words.length > 1 ? (words.at(-1) ?? '') : '') : before;
  return { name, initial: initialOf(family) };
}

function tidy(text: string): string {
  return plainName(text).slice(0, LONGEST).trim();
}

function hasLetter(text: string): boolean {
  return /\p{L}/u.test(text);
}

function initialOf(family: string): string {
  return /\p{L}/u.exec(family)?.[0].toUpperCase() ?? '';
}

function problemOf({ line, text }: CsvRecord, code: RosterProblem['code']): RosterProblem {
  const message =
    code === 'open-quote'
      ? 'A quotation mark was opened and not closed.'
      : 'There is no name in this line.';
  return { line, code, text: text.length > 60 ? `${text.slice(0, 59)}…` : text, message };
}

/** A child of a list as it would be added. */
export interface RosterLine {
  readonly line: number;
  /** The name, with a letter or number where another child has the same. */
  readonly name: string;
  /** Whether a child of that name is in the class already. */
  readonly there: boolean;
}

/**
 * The children of a list with names that tell them apart: two of one name get
 * the first letter of their family names, or a number where that does not help.
 * One who is in the class already is marked, so that no child is doubled.
 */
export function tellApart(
  entries: readonly RosterEntry[],
  inClass: readonly string[],
): readonly RosterLine[] {
  const here = countsOf(inClass.map(keyOf));
  const same = countsOf(entries.map(({ name }) => keyOf(name)));
  const initials = countsOf(entries.map(({ name, initial }) => keyOf(`${name} ${initial}`)));
  const given = new Set<string>();
  const numbers = new Map<string, number>();
  return entries.map(({ line, name, initial }) => {
    const isShared = (same.get(keyOf(name)) ?? 0) > 1;
    const lettered = `${name} ${initial}`;
    const isApart = initial !== '' && initials.get(keyOf(lettered)) === 1;
    let own = isShared && isApart ? lettered : name;
    // Counted on from where the last of this name was left, or many of one name would ask for all before.
    let number = numbers.get(keyOf(name)) ?? 2;
    for (; given.has(keyOf(own)); number++) own = `${name} ${number}`;
    numbers.set(keyOf(name), number);
    given.add(keyOf(own));
    return {
      line,
      name: own,
      there: take(here, keyOf(own)) || (isShared && take(here, keyOf(name))),
    };
  });
}

function keyOf(name: string): string {
  return name.trim().toLowerCase();
}

function countsOf(keys: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

/** Takes one of these away; false when there is none. */
function take(counts: Map<string, number>, key: string): boolean {
  const count = counts.get(key) ?? 0;
  if (count > 0) counts.set(key, count - 1);
  return count > 0;
}

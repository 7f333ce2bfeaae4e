import { atOnce, type Paced, pacedEach } from '../paced.ts';
import { crc32 } from './crc32.ts';
import type { LogEvent } from './event.ts';
import { isObject } from './is-value.ts';
import { mergeEvents } from './merge.ts';
import { parseEvent } from './parse-event.ts';
import { understand } from './understand.ts';

/** What was read from a file of events. */
export interface ReadLog {
  /** Every good event, each once, in the order of events. */
  readonly events: readonly LogEvent[];
  /** Lines that could not be read, for her to keep. */
  readonly damaged: readonly DamagedLine[];
  /** How many of the events are of a newer version: kept, though nothing here shows them. */
  readonly notUnderstood: number;
  /**
   * Whether the file is as it was saved, by the count and the check number of its last line; null for a file
   * of a version that did not write such a line.
   */
  readonly isWhole: boolean | null;
}

/** A line that could not be read, numbered from 1 as an editor shows it, and why. */
export interface DamagedLine {
  readonly line: number;
  /** The line as it was given. */
  readonly text: string;
  readonly code: 'broken-off' | 'not-an-event';
  readonly message: string;
}

/** Why nothing can be read from a file, and what to do. */
export interface LogFileError {
  readonly code: 'empty' | 'not-a-log' | 'newer-version';
  readonly message: string;
}

/**
 * Writes events as one text: a first line that names the format, then an event
 * a line, in their order, as JSON (JSONL; RFC 8259 for each line), and a last line with their count and the
 * check number of their lines. Equal logs give equal texts.
 */
export function makeLog(events: readonly LogEvent[]): string {
  return atOnce(makeLogPaced(events));
}

/** The same, paced. */
export function* makeLogPaced(events: readonly LogEvent[]): Paced<string> {
  const lines: string[] = [];
  yield* pacedEach(mergeEvents(events, []), ({ id, classId, at, by, kind, body }) => {
    lines.push(JSON.stringify({ id, classId, at, by, kind, body }));
  });
  const end = JSON.stringify({ end: endOf(lines) });
  return `${[JSON.stringify({ format, version, ends: true }), ...lines, end].join('\n')}\n`;
}

/**
 * Reads a text that `makeLog` wrote. Good lines are taken and damaged ones
 * reported, the first line included, so that a file cut off or changed on its
 * way still gives what it has. Forgives a byte-order mark, any line ends and
 * empty lines.
 */
export function parseLog(text: string): ReadLog | { readonly error: LogFileError } {
  return atOnce(parseLogPaced(text));
}

/** The same, paced. */
export function* parseLogPaced(text: string): Paced<ReturnType<typeof parseLog>> {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((line, place) => ({ line: place + 1, text: line }))
    .filter((line) => line.text.trim() !== '');
  const [head, ...rest] = lines;
  if (head === undefined) return failure('empty');
  const header = parseHeader(head.text);
  if (header !== null && header.version > version) return failure('newer-version');
  const body = header === null ? lines : rest;
  const end = parseEnd(body.at(-1)?.text ?? '');
  if (end !== null) body.pop();
  const events: LogEvent[] = [];
  const damaged: DamagedLine[] = [];
  yield* pacedEach(body, (line) => {
    const read = parseLine(line.text);
    if ('event' in read) events.push(read.event);
    else damaged.push({ ...line, ...read });
  });
  if (header === null && events.length === 0) return failure('not-a-log');
  const merged = mergeEvents(events, []);
  const notUnderstood = merged.filter((event) => understand(event) === null).length;
  const isWhole =
    end === null
      ? header?.ends === true
        ? false
        : null
      : makeEnd(end) === makeEnd(endOf(body.map(({ text: line }) => line)));
  return { events: merged, damaged, notUnderstood, isWhole };
}

const format = 'sweepline-log';
const version = 1;

/** What the first line says, or null when it is no such line. */
function parseHeader(line: string): { readonly version: number; readonly ends: boolean } | null {
  const value = parseJson(line);
  return isObject(value) && value.format === format && typeof value.version === 'number'
    ? { version: value.version, ends: value.ends === true }
    : null;
}

/** What the last line says of those before it. */
interface End {
  readonly events: number;
  readonly crc32: number;
}

function endOf(lines: readonly string[]): End {
  return { events: lines.length, crc32: crc32(lines.join('\n')) };
}

function makeEnd({ events, crc32: sum }: End): string {
  return `${events} ${sum}`;
}

/** What a last line says, or null when it is no such line. */
function parseEnd(line: string): End | null {
  if (!line.startsWith('{"end":')) return null;
  const value = parseJson(line);
  const end = isObject(value) ? value.end : null;
  return isObject(end) && typeof end.events === 'number' && typeof end.crc32 === 'number'
    ? { events: end.events, crc32: end.crc32 }
    : null;
}

function parseLine(
  line: string,
): { readonly event: LogEvent } | Pick<DamagedLine, 'code' | 'message'> {
  const value = parseJson(line);
  if (value === undefined) return { code: 'broken-off', message: 'The line is not whole.' };
  const read = parseEvent(value);
  return 'event' in read ? read : { code: read.error.code, message: read.error.message };
}

/** The value of a JSON text; undefined when it is none. */
function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function failure(code: LogFileError['code']): { readonly error: LogFileError } {
  return { error: { code, message: sentences[code] } };
}

const sentences: Readonly<Record<LogFileError['code'], string>> = {
  empty: 'This file is empty. Choose the file that was saved from Sweepline.',
  'not-a-log':
    'This is not a file of class records. Choose one that was saved from Sweepline; its name ends in .jsonl.',
  'newer-version':
    'This file was saved by a newer Sweepline. Open the newest one on this device and bring the file in again.',
};

import { crc32 } from '../../../core/log/crc32.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { isEvent } from '../../../core/log/parse-event.ts';
import type { LooseRecord } from './database.ts';

/** An event as a record of its own, with the check number of what it says. */
export function looseRecord(event: LogEvent): LooseRecord {
  return { ...event, sum: sumOf(event) };
}

/** The event of a record, or null when the record is damaged. */
export function eventOf(record: unknown): LogEvent | null {
  if (!isEvent(record)) return null;
  const { sum, ...event }: LooseRecord = record;
  return sum === undefined || sum === sumOf(event) ? event : null;
}

function sumOf({ id, classId, at, by, kind, body }: LogEvent): number {
  return crc32(JSON.stringify([id, classId, at, by, kind, body]));
}

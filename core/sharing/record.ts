import type { ClassId } from '../ids.ts';
import { type Check, isOneOf, isShape, isText } from '../log/is-value.ts';
import { LANES } from './role.ts';
import { isCount, isId, isSignature } from './wire.ts';

/** The most that a record's body takes, in signs: 64 KB as base64url. */
export const MOST_SIGNS = 87_400;

/** One entry of a shared class, made on a device. */
export interface ClassRecord {
  /** Unlike that of any other; a record that comes again under its id has no effect. */
  readonly id: string;
  /** The device that made it. */
  readonly writer: string;
  /** Counts this writer's records of the class from 1, so that one held back leaves a hole. */
  readonly count: number;
  /** Under which epoch's keys it is sealed; 0 for one that says rights. */
  readonly epoch: number;
  readonly lane: (typeof RECORD_LANES)[number];
  /** Sealed events as base64url; of a record that says rights, its JSON (rights-said.ts). */
  readonly body: string;
  /** By the writer's key, over `signedText`. */
  readonly signature: string;
}

/** A record as the server has it. */
export interface KeptRecord extends ClassRecord {
  /** Its place in the class, counted from 1 without a gap. */
  readonly seq: number;
  /** When it came, by the server's clock in milliseconds. */
  readonly at: number;
}

/**
 * A run of places of which nothing is sent: what was there is in later records, deleted, or not for this
 * device to read.
 */
export interface EmptyRun {
  /** The first of them. */
  readonly seq: number;
  /** The last. */
  readonly to: number;
  /** The class's trace (follower.ts) up to the last. */
  readonly trace: number;
}

/** On which lane a record can be: rights can be read by all who are in the class, and by the server. */
export const RECORD_LANES = ['rights', ...LANES] as const;

/** What ties a sealed body to its class, writer and place; the seal holds for no other. */
export function headerOf(
  classId: ClassId,
  { id, writer, count, epoch, lane }: Omit<ClassRecord, 'body' | 'signature'>,
): string {
  return JSON.stringify(['sweepline/1', classId, id, writer, count, epoch, lane]);
}

/** The text that a record's signature signs. */
export function signedText(classId: ClassId, record: Omit<ClassRecord, 'signature'>): string {
  return `${headerOf(classId, record)}\n${record.body}`;
}

const fields = {
  id: isId,
  writer: isId,
  count: isCount,
  epoch: isCount,
  lane: isOneOf(RECORD_LANES),
  body: (value: unknown): value is string => isText(value) && value.length <= MOST_SIGNS,
  signature: isSignature,
};

/** Whether something that came over the wire is a record. */
export const isRecord: Check<ClassRecord> = isShape<ClassRecord>(fields);

/** Whether it is one as the server keeps it. */
export const isKept: Check<KeptRecord> = isShape<KeptRecord>({
  ...fields,
  seq: isCount,
  at: isCount,
});

/** Whether it is a run of places of which nothing is kept. */
export const isEmptyRun: Check<EmptyRun> = isShape<EmptyRun>({
  seq: isCount,
  to: isCount,
  trace: isCount,
});

import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import type { ClassId, EventId } from '../../../core/ids.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import type { SharedRecord, Unsent } from './shared-record.ts';

/** What the database holds; the records of a class stand together in each store. */
export interface LogSchema extends DBSchema {
  /** An event a record. */
  loose: { key: [classId: ClassId, id: EventId]; value: LooseRecord };
  /** Sealed events (page.ts); pages count from 0, and no event is on two of them. */
  pages: { key: [classId: ClassId, page: number]; value: PageRecord };
  /** Copies of the events that a list of classes needs. */
  heads: { key: [classId: ClassId, id: EventId]; value: LogEvent };
  /** Which classes were forgotten, for good. */
  forgotten: { key: [classId: ClassId]; value: { readonly classId: ClassId } };
  /** What was removed of a class for good, by ids (core/log/erased.ts). */
  erased: { key: [classId: ClassId, id: string]; value: Erased };
  /** Records that could not be read, for whoever wants to rescue them (set-aside.ts). */
  aside: { key: number; value: AsideRecord };
  /** How this device takes part in the classes that are shared. */
  shared: { key: [classId: ClassId]; value: SharedRecord };
  /** What is still to be sent of them. */
  outbox: { key: [classId: ClassId, id: EventId]; value: Unsent };
}

/** Something that was removed for good. */
export interface Erased {
  readonly classId: ClassId;
  readonly id: string;
}

/** A record that could not be read, as it was found; the second version put it there bare. */
export interface AsideRecord {
  readonly classId: ClassId;
  readonly record: unknown;
}

/** Whether a value of the store `aside` says whose it is. */
export function isAsideRecord(value: unknown): value is AsideRecord {
  return typeof value === 'object' && value !== null && 'record' in value && 'classId' in value;
}

/** An event with the check number of what it says; records of the first version have none. */
export interface LooseRecord extends LogEvent {
  readonly sum?: number;
}

/** A page of sealed events. */
export interface PageRecord {
  readonly classId: ClassId;
  readonly page: number;
  readonly text: string;
}

/** Every store there is. */
export const STORES = [
  'loose',
  'pages',
  'heads',
  'forgotten',
  'aside',
  'shared',
  'outbox',
  'erased',
] as const;

/** Those that hold the events of classes. */
export const CLASS_STORES = ['loose', 'pages', 'heads'] as const;

/**
 * The version of the database. Each step of the upgrade stands by itself and only adds, so that one that
 * began at any earlier version ends the same; a further step is a further `if`.
 */
const VERSION = 4;

function upgrade(db: IDBPDatabase<LogSchema>, from: number): void {
  if (from < 1) {
    db.createObjectStore('loose', { keyPath: ['classId', 'id'] });
    db.createObjectStore('pages', { keyPath: ['classId', 'page'] });
    db.createObjectStore('heads', { keyPath: ['classId', 'id'] });
  }
  if (from < 2) {
    db.createObjectStore('forgotten', { keyPath: ['classId'] });
    db.createObjectStore('aside', { autoIncrement: true });
  }
  if (from < 3) {
    db.createObjectStore('shared', { keyPath: ['classId'] });
    db.createObjectStore('outbox', { keyPath: ['classId', 'id'] });
  }
  if (from < 4) db.createObjectStore('erased', { keyPath: ['classId', 'id'] });
}

/** A transaction that changes something. */
export type Change = IDBPTransaction<LogSchema, (typeof STORES)[number][], 'readwrite'>;

/** A connection to the database. */
export interface Connection {
  /** Opens it when it is not open. Rejects with what the browser gave as reason. */
  open(): Promise<IDBPDatabase<LogSchema>>;
  close(): Promise<void>;
}

/**
 * One connection, opened when first needed, and again after the browser ended
 * it. It gives way to a newer version in another window.
 */
export function connect(name = 'sweepline-log'): Connection {
  let opened: Promise<IDBPDatabase<LogSchema>> | null = null;
  const forget = () => {
    opened = null;
  };
  return {
    open() {
      if (opened) return opened;
      opened = openDB<LogSchema>(name, VERSION, {
        upgrade,
        blocking(_now, _next, event) {
          (event.target as IDBDatabase).close();
          forget();
        },
        terminated: forget,
      });
      opened.catch(forget);
      return opened;
    },
    async close() {
      const db = await opened?.catch(() => null);
      db?.close();
      forget();
    },
  };
}

/**
 * Does all of something or nothing, and resolves once it is on the disk
 * (`durability: 'strict'`, Indexed Database API 3.0). Rejects with what the
 * browser gave as reason.
 */
export async function change(
  db: IDBPDatabase<LogSchema>,
  work: (tx: Change) => Promise<unknown>,
): Promise<void> {
  const tx = db.transaction([...STORES], 'readwrite', { durability: 'strict' });
  const done = tx.done;
  done.catch(() => {});
  try {
    await work(tx);
  } catch (thrown) {
    abort(tx);
    throw tx.error ?? thrown;
  }
  commit(tx);
  await done;
}

/** The keys of all records of a class, in whichever store. */
export function ofClass(classId: ClassId): IDBKeyRange {
  return IDBKeyRange.bound([classId], [classId, []]);
}

/** Ends a transaction now, which otherwise waits to see whether more is asked of it. */
function commit(tx: Change): void {
  try {
    tx.commit();
  } catch {
    // It has ended by itself.
  }
}

function abort(tx: Change): void {
  try {
    tx.abort();
  } catch {
    // It has ended by itself.
  }
}

import type { ClassId, EventId } from '../../../core/ids.ts';
import { type Connection, change, ofClass } from './database.ts';
import type { SharedRecord, Unsent } from './shared-record.ts';

/** How this device takes part in shared classes, and what it has still to send. What fails rejects. */
export interface SharedRecords {
  /** Of one class; null when it is not shared. */
  of(classId: ClassId): Promise<SharedRecord | null>;
  /** Of all classes that are shared. */
  all(): Promise<readonly SharedRecord[]>;
  /** From now on the class is shared: whatever is here already is to be sent, and whatever is recorded. */
  begin(record: SharedRecord, events: readonly EventId[]): Promise<void>;
  /** Changes some of what is noted of a class; of one that is no longer shared, nothing. */
  note(classId: ClassId, some: Partial<Omit<SharedRecord, 'classId'>>): Promise<void>;
  /** The class is shared no more on this device; its events stay. */
  end(classId: ClassId): Promise<void>;
  /** What is still to be sent, and what was not taken. */
  unsent(classId: ClassId): Promise<readonly Unsent[]>;
  /** Notes events as to be sent, or with why they were not taken. */
  noteUnsent(classId: ClassId, ids: readonly EventId[], why?: string | null): Promise<void>;
  /** The server has them. */
  noteSent(classId: ClassId, ids: readonly EventId[]): Promise<void>;
}

/** What this browser's database holds of shared classes. */
export function createSharedRecords(connection: Connection): SharedRecords {
  return {
    of: async (classId) => (await (await connection.open()).get('shared', [classId])) ?? null,
    all: async () => (await connection.open()).getAll('shared'),
    begin: async (record, events) => {
      const { classId } = record;
      await change(await connection.open(), (tx) => {
        const outbox = tx.objectStore('outbox');
        return Promise.all([
          tx.objectStore('shared').put(record),
          ...events.map((id) => outbox.put({ classId, id, why: null })),
        ]);
      });
    },
    note: async (classId, some) =>
      change(await connection.open(), async (tx) => {
        const shared = tx.objectStore('shared');
        const before = await shared.get([classId]);
        if (before) await shared.put({ ...before, ...some });
      }),
    end: async (classId) =>
      change(await connection.open(), (tx) =>
        Promise.all([
          tx.objectStore('shared').delete([classId]),
          tx.objectStore('outbox').delete(ofClass(classId)),
        ]),
      ),
    unsent: async (classId) => (await connection.open()).getAll('outbox', ofClass(classId)),
    noteUnsent: async (classId, ids, why = null) => {
      if (ids.length === 0) return;
      await change(await connection.open(), (tx) => {
        const outbox = tx.objectStore('outbox');
        return Promise.all(ids.map((id) => outbox.put({ classId, id, why })));
      });
    },
    noteSent: async (classId, ids) => {
      if (ids.length === 0) return;
      await change(await connection.open(), (tx) => {
        const outbox = tx.objectStore('outbox');
        return Promise.all(ids.map((id) => outbox.delete([classId, id])));
      });
    },
  };
}

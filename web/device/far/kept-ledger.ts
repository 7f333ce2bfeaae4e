import type { ClassId } from '../../../core/ids.ts';
import { NOTHING } from '../../../core/sharing/follower.ts';
import type { SharedRecords } from '../log/shared-records.ts';
import type { Ledger } from './ledger.ts';

/** The ledger of one class in this browser's database. */
export function createKeptLedger(shared: SharedRecords, classId: ClassId): Ledger {
  return {
    async read() {
      const record = await shared.of(classId);
      const unsent = await shared.unsent(classId);
      return {
        followed: record?.followed ?? NOTHING,
        rights: record?.rights ?? [],
        seen: record?.seen ?? {},
        unsent: unsent.filter(({ why }) => why === null).map(({ id }) => id),
        aside: new Map(unsent.flatMap(({ id, why }) => (why === null ? [] : [[id, why]]))),
      };
    },
    noteFollowed: (followed, rights, seen) => shared.note(classId, { followed, rights, seen }),
    noteUnsent: (events) =>
      shared.noteUnsent(
        classId,
        events.map(({ id }) => id),
      ),
    async noteAside(aside) {
      for (const [id, why] of aside) await shared.noteUnsent(classId, [id], why);
    },
    noteSent: (ids) => shared.noteSent(classId, ids),
  };
}

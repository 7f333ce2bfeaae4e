import type { ClassId, EventId } from '../core/ids.ts';
import { erasedWith, isErased } from '../core/log/erased.ts';
import type { LogEvent } from '../core/log/event.ts';
import type { KeptRecord } from '../core/sharing/record.ts';
import type { OwnDevice } from '../web/device/far/own-device.ts';
import { createSharedClass } from '../web/device/far/shared-class.ts';

/** What a school reads of a class. */
export interface OpenedClass {
  readonly events: readonly LogEvent[];
  /** How many records it could not read: what came after its key was taken back, or is damaged. */
  readonly closed: number;
}

/**
 * Opens a class from its records, in the order of their places, judged as every device judges them; null
 * when its owner never let the school in, or the class was deleted. A copy of a database has no other
 * witness of who began a class than its first record, so that is believed.
 */
export async function openClass(
  classId: ClassId,
  own: OwnDevice,
  records: readonly KeptRecord[],
): Promise<OpenedClass | null> {
  const founder = records[0]?.writer ?? '';
  const newId = () => '';
  const shared = createSharedClass({ classId, own, founder, invitation: null, newId });
  const events = new Map<EventId, LogEvent>();
  let closed = 0;
  for (const record of records) {
    for (const one of await shared.take(record, (id) => events.get(id)?.by)) {
      if (one.kind === 'aside') closed += 1;
      else for (const event of one.admitted.events) events.set(event.id, event);
    }
  }
  const rights = shared.rights();
  if (!rights || rights.gone || rights.members.get(own.id)?.role !== 'school') return null;
  const erased = erasedWith([...events.values()], rights.erased);
  return { events: [...events.values()].filter((event) => !isErased(event, erased)), closed };
}

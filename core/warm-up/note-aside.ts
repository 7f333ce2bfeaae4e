import type { ClassId, EventId } from '../ids.ts';
import { tick } from '../log/clock.ts';
import type { DrillEvent, EventOf, EventSpec } from '../log/event.ts';

/** With what an event is stamped: the class, the window, the time in milliseconds, and new ids. */
export interface Stamp {
  readonly classId: ClassId;
  readonly by: string;
  readonly now: number;
  readonly newId: () => EventId;
}

/**
 * What a warm-up would have told the log, kept apart from it: `noted` with these events more. What
 * an undoing takes back is gone, since nobody else knows of it.
 */
export function noteAside(
  noted: readonly DrillEvent[],
  specs: readonly EventSpec[],
  { classId, by, now, newId }: Stamp,
): readonly DrillEvent[] {
  let all = [...noted];
  for (const spec of specs) {
    if (spec.kind === 'undone') all = all.filter(({ id }) => id !== spec.body.event);
    else if ('drillId' in spec.body && spec.kind !== 'noted') {
      const at = tick(all.at(-1)?.at ?? 0, now);
      all.push({ id: newId(), classId, at, by, ...spec } as EventOf<DrillEvent['kind']>);
    }
  }
  return all;
}

import type { ClassId, EventId } from '../ids.ts';
import { inTime, timesSaid } from '../log/dating.ts';
import type { LogEvent } from '../log/event.ts';
import { understand } from '../log/understand.ts';
import type { KeptRecord } from './record.ts';
import type { Member } from './rights.ts';
import { laneOf, maySay } from './role.ts';

/** What a record brings into a class, and what of it is set aside. */
export interface Admitted {
  readonly events: readonly LogEvent[];
  readonly aside: readonly { readonly event: LogEvent; readonly why: AsideReason }[];
}

/**
 * Why an event is set aside: it is of another class; it is not for its writer to say; it came on a lane
 * that others read; it bears a time that has not come yet.
 */
export type AsideReason = 'other-class' | 'not-allowed' | 'wrong-lane' | 'ahead';

/** Events may bear times so far after they came, in milliseconds: clocks differ. */
const LENIENCE = 10 * 60 * 1000;

/**
 * Looks at the events of a record whose writer is a member, by that member's right. `writtenBy` says which
 * device wrote an event that is here already. What bears a time ahead comes in when the same record says
 * when it really was.
 */
export function admit(
  classId: ClassId,
  { lane, at }: Pick<KeptRecord, 'lane' | 'at'>,
  { role, by }: Pick<Member, 'role' | 'by'>,
  events: readonly LogEvent[],
  writtenBy: (event: EventId) => string | undefined,
): Admitted {
  const times = timesSaid(events);
  const own = new Map(events.map((event) => [event.id, event.by]));
  const reasonFor = (event: LogEvent): AsideReason | null => {
    if (event.classId !== classId) return 'other-class';
    if (!maySay(role, event.kind)) return 'not-allowed';
    if (role === 'aide' && event.by !== by) return 'not-allowed';
    const target = targetOf(event);
    if (role === 'aide' && target !== null && (own.get(target) ?? writtenBy(target)) !== by) {
      return 'not-allowed';
    }
    // What is said of a time goes with the event that it is said of.
    if (event.kind !== 'dated' && laneOf(event.kind) !== lane) return 'wrong-lane';
    return inTime(event, times).at > at + LENIENCE ? 'ahead' : null;
  };
  const judged = events.map((event) => ({ event, why: reasonFor(event) }));
  return {
    events: judged.filter(({ why }) => why === null).map(({ event }) => event),
    aside: judged.flatMap(({ event, why }) => (why === null ? [] : [{ event, why }])),
  };
}

/** The event that another takes back or dates; null when it does neither. */
function targetOf(event: LogEvent): EventId | null {
  const known = understand(event);
  if (known?.kind === 'undone' || known?.kind === 'dated') return known.body.event;
  return known?.kind === 'amended' ? known.body.mark : null;
}

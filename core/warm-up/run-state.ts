import type { Drill } from '../drills/drill.ts';
import type { ClassId, DrillId, EventId, GroupId } from '../ids.ts';
import type { DrillEvent } from '../log/event.ts';
import type { Calling } from './calling.ts';
import type { Blending, Standing } from './standing.ts';

/** A warm-up under way. */
export interface Running {
  readonly classId: ClassId;
  readonly groupId: GroupId;
  readonly drillId: DrillId;
  readonly drill: Drill;
  readonly standing: Standing;
  readonly blending: Blending;
  readonly calling: Calling;
  /** The words to dictate after the sounds, once they are at hand. */
  readonly dictated: readonly string[];
  /** The mark of which it is asked what was heard instead, by its event's id; null for none. */
  readonly asking: EventId | null;
  /**
   * While she is just looking: what would have been noted, which no log is told; null when all is
   * noted.
   */
  readonly rehearsed: readonly DrillEvent[] | null;
  /**
   * Grows with each act, in whichever window, and is never behind the clock in milliseconds: what is
   * begun again counts for more than what another window still shows.
   */
  readonly count: number;
  /** The window that leads and alone notes what was shown (lead.ts). */
  readonly by: string;
}

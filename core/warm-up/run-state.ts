import type { Drill } from '../drills/drill.ts';
import type { Calling } from './calling.ts';
import type { Blending, Standing } from './standing.ts';

/** A warm-up under way. */
export interface Running {
  readonly classId: string;
  readonly groupId: string;
  readonly drillId: string;
  readonly drill: Drill;
  readonly standing: Standing;
  readonly blending: Blending;
  readonly calling: Calling;
  /** The words to dictate after the sounds, once they are at hand. */
  readonly dictated: readonly string[];
  /** The mark of which it is asked what was heard instead, by its event's id; null for none. */
  readonly asking: string | null;
  /** Grows with each act, in whichever window. */
  readonly count: number;
  /** The window that leads and alone notes what was shown (lead.ts). */
  readonly by: string;
}

import type { GroupId } from '../ids.ts';
import type { Running } from './run-state.ts';

/** How this device stands to warm-ups on others. */
export interface Following {
  /** The group at work here. */
  readonly groupId: GroupId;
  /** Whether this screen was asked to show whatever is led elsewhere. */
  readonly showsAny: boolean;
}

/**
 * Whether a warm-up that another device tells of is to be shown here: the one that is under way here, or
 * that of the group at work when none is. An aide's group never takes the place of the class's; only a
 * screen that was asked to show whatever is led elsewhere turns to another.
 */
export function isToFollow(
  own: Pick<Running, 'drillId'> | null,
  other: Pick<Running, 'drillId' | 'groupId' | 'rehearsed'>,
  { groupId, showsAny }: Following,
): boolean {
  if (other.rehearsed !== null) return false;
  if (showsAny || own?.drillId === other.drillId) return true;
  return own === null && other.groupId === groupId;
}

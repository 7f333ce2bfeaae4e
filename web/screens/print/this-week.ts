import type { GroupId } from '../../../core/ids.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { eventsIn } from '../../../core/log/class-events.ts';
import type { ClassState } from '../../../core/log/class-state.ts';
import { replay } from '../../../core/log/replay.ts';
import { type Progress, taughtOf } from '../../../core/sequence/progress.ts';
import { allTaught } from '../../../core/sequence/teach.ts';
import { newestCards, newestSight } from '../../state/newest-cards.ts';
import { progressAt } from '../../state/progress.ts';

const WEEK = 7 * 86_400_000;

/**
 * The cards and words that a group has learned in the seven days before `now` (milliseconds since 1970): what is
 * taught and was not, by the log of the class. Where the log does not reach back so far, and where nothing
 * is new, the cards that were taught last.
 */
export function newThisWeek(
  state: ClassState,
  groupId: GroupId,
  progress: Progress,
  now: number,
): readonly CardId[] {
  const before = replay(
    state.id,
    eventsIn(state).filter(({ at }) => at <= now - WEEK),
  );
  const standing = before.groups.get(groupId)?.standing ?? null;
  const newest = [...newestCards(progress), ...newestSight(progress)];
  if (!standing) return newest;
  const known = new Set(allTaught(taughtOf(progressAt(standing))));
  const fresh = allTaught(taughtOf(progress)).filter((id) => !known.has(id));
  return fresh.length > 0 ? fresh : newest;
}

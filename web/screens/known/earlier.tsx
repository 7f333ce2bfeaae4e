import type { GroupId } from '../../../core/ids.ts';
import { type GroupMove, groupMoves } from '../../../core/log/group-history.ts';
import { nameOf } from '../../state/class-now.ts';
import { today } from '../../state/day.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { whenSaid } from '../../wording/day-name.ts';

/** So many moves are told; the log keeps them all. */
const MOST = 40;

/** Who moved from which group to which, and when. */
export function Earlier() {
  const moves = groupMoves(classState.value);
  if (moves.length === 0) return null;
  return (
    <details>
      <summary>Earlier groups</summary>
      <ul class="earlier-groups">
        {moves.slice(0, MOST).map((move) => (
          <li key={`${move.at} ${move.child}`}>
            {nameOf({ of: 'child', id: move.child })}{' '}
            <span class="quiet">
              {moveSaid(move)} {whenSaid(today(new Date(move.at)), today())}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function moveSaid({ from, to }: GroupMove): string {
  if (from === null) return `came to ${groupSaid(to)}`;
  if (to === null) return `left ${groupSaid(from)}`;
  return `went from ${groupSaid(from)} to ${groupSaid(to)}`;
}

function groupSaid(id: GroupId | null): string {
  const group = id === null ? undefined : classState.value.groups.get(id);
  if (!group) return 'a group';
  return group.removed
    ? group.name || 'a group that is gone'
    : nameOfGroup(group, classState.value);
}

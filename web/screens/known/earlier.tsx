import type { GroupId } from '../../../core/ids.ts';
import { type GroupMove, groupMoves } from '../../../core/log/group-history.ts';
import { nameOf } from '../../state/class-now.ts';
import { today } from '../../state/day.ts';
import { classState, nameOfGroup } from '../../state/open-class.ts';
import { whenSaid } from '../../wording/day-name.ts';
import { say } from './wording.ts';

/** So many moves are told; the log keeps them all. */
const MOST = 40;

/** Who moved from which group to which, and when. */
export function Earlier() {
  const moves = groupMoves(classState.value);
  if (moves.length === 0) return null;
  return (
    <details>
      <summary>{say.earlier.earlierGroups}</summary>
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
  if (from === null) return say.earlier.cameTo(groupSaid(to));
  if (to === null) return say.earlier.left(groupSaid(from));
  return say.earlier.wentFromTo(groupSaid(from), groupSaid(to));
}

function groupSaid(id: GroupId | null): string {
  const group = id === null ? undefined : classState.value.groups.get(id);
  if (!group) return say.earlier.aGroup;
  return group.removed
    ? group.name || say.earlier.aGroupThatIsGone
    : nameOfGroup(group, classState.value);
}

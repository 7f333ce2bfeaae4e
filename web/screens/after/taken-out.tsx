import type { GroupId } from '../../../core/ids.ts';
import { today } from '../../state/day.ts';
import { putBack } from '../../state/discarded.ts';
import { classState } from '../../state/open-class.ts';
import { dayName } from '../../wording/day-name.ts';
import { timeName } from '../../wording/time-name.ts';
import { say } from './wording.ts';

/** The group's warm-ups that were taken out of the record, each with the way back; nothing where there are none. */
export function TakenOut({ groupId }: { readonly groupId: GroupId }) {
  const out = [...classState.value.discarded.values()].filter((one) => one.groupId === groupId);
  if (out.length === 0) return null;
  return (
    <details class="taken-out-warm-ups">
      <summary>{say.takenOut.takenOut(out.length)}</summary>
      <ul>
        {out.toReversed().map((record) => (
          <li key={record.id}>
            <button type="button" class="button" onClick={() => putBack(record)}>
              {say.takenOut.putBack(
                record.day === today() ? say.takenOut.todays : dayName(record.day, today()),
                timeName(record.at),
              )}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}

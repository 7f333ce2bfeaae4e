import { drillsOf } from '../../../core/log/recent.ts';
import { childrenOf } from '../../../core/log/roster.ts';
import { groupDay } from '../../../core/warm-up/group-day.ts';
import { today } from '../../state/day.ts';
import { chooseGroup, classState, group, nameOfGroup } from '../../state/open-class.ts';
import { placeOf } from '../../state/place-of.ts';
import { groupsInOrder } from '../../state/running-order.ts';
import { counted } from '../../wording/counted.ts';
import { timeName } from '../../wording/time-name.ts';

/** The day as a running order: each group, and how far it has come. */
export function DayGroups() {
  const state = classState.value;
  const groups = groupsInOrder(state);
  if (groups.length < 2) return null;
  const days = groups.map(({ id }) => groupDay(drillsOf(state, id), today()));
  const next = days.findIndex(({ kind }) => kind !== 'done');
  return (
    <section aria-labelledby="day-groups">
      <h2 id="day-groups">Today’s groups</h2>
      <ol class="day-groups">
        {groups.map((each, at) => {
          const day = days[at] ?? { kind: 'fresh' };
          const count = childrenOf(state, each.id).length;
          return (
            <li key={each.id}>
              <button
                type="button"
                aria-current={each.id === group.value.id ? 'true' : undefined}
                onClick={() => chooseGroup(each.id)}
              >
                <b>{nameOfGroup(each, state)}</b>
                <span class={`day-state ${day.kind}`}>
                  {day.kind === 'fresh' ? (at === next ? 'next' : 'then') : daySaid(day)}
                </span>
                <span class="quiet small day-group-size">
                  {count > 0 && `${counted(count, 'child', 'children')} · `}
                  {placeOf(each)}
                </span>
              </button>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function daySaid(day: Exclude<ReturnType<typeof groupDay>, { kind: 'fresh' }>): string {
  const { ended, shown, at } = day.record;
  return ended ? `done ${timeName(ended.at)}` : `stopped ${timeName(shown.at(-1)?.at ?? at)}`;
}

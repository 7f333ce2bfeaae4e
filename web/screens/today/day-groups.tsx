import { drillsOf } from '../../../core/log/recent.ts';
import { childrenOf } from '../../../core/log/roster.ts';
import { groupDay } from '../../../core/warm-up/group-day.ts';
import { today } from '../../state/day.ts';
import { isOutToday, setOutToday } from '../../state/groups-out.ts';
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
  const next = days.findIndex(
    ({ kind }, at) => kind !== 'done' && !isOutToday(groups[at]?.id ?? ''),
  );
  return (
    <section aria-labelledby="day-groups">
      <h2 id="day-groups">Today’s groups</h2>
      <ol class="day-groups">
        {groups.map((each, at) => {
          const day = days[at] ?? { kind: 'fresh' };
          const count = childrenOf(state, each.id).length;
          const isOut = day.kind === 'fresh' && isOutToday(each.id);
          const name = nameOfGroup(each, state);
          return (
            <li key={each.id}>
              <button
                type="button"
                aria-current={each.id === group.value.id ? 'true' : undefined}
                onClick={() => chooseGroup(each.id)}
              >
                <b class={isOut ? 'struck-out' : undefined}>{name}</b>
                <span class={`day-state ${day.kind}`}>
                  {isOut
                    ? 'not today'
                    : day.kind === 'fresh'
                      ? at === next
                        ? 'next'
                        : 'then'
                      : daySaid(day)}
                </span>
                <span class="quiet small day-group-size">
                  {count > 0 && `${counted(count, 'child', 'children')} · `}
                  {placeOf(each)}
                </span>
              </button>
              {day.kind === 'fresh' && (
                <button
                  type="button"
                  class="day-out"
                  aria-label={`${isOut ? 'Today after all' : 'Not today'}: ${name}`}
                  onClick={() => setOutToday(each.id, !isOut, name)}
                >
                  {isOut ? 'Today after all' : 'Not today'}
                </button>
              )}
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

import { drillsOf } from '../../../core/log/recent.ts';
import { childrenOf } from '../../../core/log/roster.ts';
import { groupDay } from '../../../core/warm-up/group-day.ts';
import { today } from '../../state/day.ts';
import { isOutToday, setOutToday } from '../../state/groups-out.ts';
import { chooseGroup, classState, group, nameOfGroup } from '../../state/open-class.ts';
import { placeOf } from '../../state/place-of.ts';
import { groupsInOrder } from '../../state/running-order.ts';
import { timeName } from '../../wording/time-name.ts';
import { say } from './wording.ts';

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
      <h2 id="day-groups">{say.dayGroups.todaysGroups}</h2>
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
                    ? say.dayGroups.notToday
                    : day.kind === 'fresh'
                      ? at === next
                        ? say.dayGroups.next
                        : say.dayGroups.afterThat
                      : daySaid(day)}
                </span>
                <span class="quiet small day-group-size">
                  {count > 0 && `${say.dayGroups.children(count)} · `}
                  {placeOf(each)}
                </span>
              </button>
              {day.kind === 'fresh' && (
                <button
                  type="button"
                  class="day-out"
                  aria-label={`${isOut ? say.dayGroups.todayAfterAll : say.dayGroups.leaveOutToday}: ${name}`}
                  onClick={() => setOutToday(each.id, !isOut, name)}
                >
                  {isOut ? say.dayGroups.todayAfterAll : say.dayGroups.leaveOutToday}
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
  return ended
    ? say.dayGroups.done(timeName(ended.at))
    : say.dayGroups.stopped(timeName(shown.at(-1)?.at ?? at));
}

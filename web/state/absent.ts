import { computed } from '@preact/signals';
import type { ChildId } from '../../core/ids.ts';
import { today } from './day.ts';
import { children, classState, record } from './open-class.ts';

/** Who is away today, by id; tomorrow begins with nobody. */
export const absent = computed<ReadonlySet<ChildId>>(
  () => new Set(classState.value.calendar.away.get(today())),
);

/** The children of the group at work who are there today, by id. */
export const present = computed<readonly ChildId[]>(() =>
  children.value.map(({ id }) => id).filter((id) => !absent.value.has(id)),
);

/** Says that a child is away today, or that it has come. */
export function setAbsent(child: ChildId, away: boolean): void {
  record({ kind: 'away', body: { child, day: today(), away } });
}

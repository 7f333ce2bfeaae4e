import { computed } from '@preact/signals';
import { array, custom, object, optional, record, string } from 'valibot';
import { type ChildId, isChildId } from '../../core/ids.ts';
import { remembered } from '../device/remembered.ts';
import { today } from './day.ts';
import { children } from './open-class.ts';

/** `children` are those of `day`; `before` has those of earlier days. */
const kept = remembered(
  'absent',
  object({
    day: string(),
    children: array(custom<ChildId>(isChildId)),
    before: optional(record(string(), array(custom<ChildId>(isChildId))), {}),
  }),
  { day: '', children: [], before: {} },
);

/** Who is away today, by id; tomorrow begins with nobody. */
export const absent = computed<ReadonlySet<ChildId>>(() => new Set(awayOn.value(today())));

/** Who was away on a day, `YYYY-MM-DD`, by id, as far as it was said on this device. */
export const awayOn = computed(() => {
  const { day, children: those, before } = kept.value;
  return (asked: string): readonly ChildId[] => (asked === day ? those : (before[asked] ?? []));
});

/** The children of the group at work who are there today, by id. */
export const present = computed<readonly ChildId[]>(() =>
  children.value.map(({ id }) => id).filter((id) => !absent.value.has(id)),
);

/** Says that a child is away today, or that it has come. */
export function setAbsent(child: ChildId, away: boolean): void {
  const others = [...absent.peek()].filter((other) => other !== child);
  const { day, children: those, before } = kept.peek();
  const now = today();
  kept.value = {
    day: now,
    children: away ? [...others, child] : others,
    before: day === now || those.length === 0 ? before : { ...before, [day]: those },
  };
}

/** What the page of today shows: the plan, what is under way, what is done, or tomorrow's plan. */
import { computed, signal } from '@preact/signals';
import type { Drill } from '../../../core/drills/drill.ts';
import { drillsOf } from '../../../core/log/recent.ts';
import { type CameThrough, cameThrough } from '../../../core/warm-up/came-through.ts';
import type { GroupDay } from '../../../core/warm-up/group-day.ts';
import { usualSeconds } from '../../../core/warm-up/usual-time.ts';
import { classState, group } from '../../state/open-class.ts';
import { drill } from '../../state/plan.ts';
import { dayNow } from '../../warm-up/running.ts';

/** What the page is about. */
export interface DayView {
  readonly kind: GroupDay['kind'] | 'tomorrow';
  /** The plan that is shown; null until there is one. */
  readonly drill: Drill | null;
  /** What has come of its places so far; empty for a plan. */
  readonly came: ReadonlyMap<string, CameThrough>;
}

/** Whether she looks at the plan of the next day, once today's warm-up is done. */
export const looksAhead = signal(false);

/** What the page is about now. */
export const dayView = computed<DayView>(() => {
  const now = dayNow.value;
  const planned = drill.value;
  if (now.kind === 'fresh') return { kind: now.kind, drill: planned, came: new Map() };
  const { record } = now;
  if (now.kind === 'under-way') {
    const isSame = planned?.seed === record.drill.seed;
    return { kind: now.kind, drill: isSame ? planned : record.drill, came: cameThrough(record) };
  }
  if (looksAhead.value && planned && planned.seed !== record.drill.seed) {
    return { kind: 'tomorrow', drill: planned, came: new Map() };
  }
  return { kind: now.kind, drill: record.drill, came: cameThrough(record) };
});

/** How long the group usually takes for one card, sound or word of each part, in seconds. */
export const usual = computed(() => usualSeconds(drillsOf(classState.value, group.value.id)));

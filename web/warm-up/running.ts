/**
 * The warm-up that is being run, the same in every window of this browser: the stage before the class, the
 * desk before the teacher. How it is begun or taken up again stands in begin.ts, what is done in it in
 * acts.ts, and which window leads and notes it in lead-here.ts.
 */

import { computed, signal } from '@preact/signals';
import type { DrillRecord } from '../../core/log/class-state.ts';
import { readDrill } from '../../core/log/drill-record.ts';
import { drillsOf } from '../../core/log/recent.ts';
import { mannerOf } from '../../core/warm-up/deed.ts';
import { type GroupDay, groupDay } from '../../core/warm-up/group-day.ts';
import { type Moment, momentsOf } from '../../core/warm-up/moments.ts';
import type { Running } from '../../core/warm-up/run-state.ts';
import { hiddenOf } from '../../core/warm-up/standing.ts';
import { today } from '../state/day.ts';
import { classState, group } from '../state/open-class.ts';

/** The warm-up under way; null when there is none. */
export const running = signal<Running | null>(null);

const drill = computed(() => running.value?.drill ?? null);

/** Its moments. */
export const moments = computed<readonly Moment[]>(() =>
  drill.value ? momentsOf(drill.value) : [],
);

/** What the log knows of it, or while she is just looking would know; null until something of it was recorded. */
export const recordNow = computed<DrillRecord | null>(() => {
  const now = running.value;
  if (now?.rehearsed) return readDrill(now.rehearsed);
  return (now && classState.value.drills.get(now.drillId)) ?? null;
});

/** How the warm-up of the group at work stands today. */
export const dayNow = computed<GroupDay>(() =>
  groupDay(drillsOf(classState.value, group.value.id), today()),
);

/** The group's drill of today that was begun and has not ended; null when there is none. */
export const unfinished = computed<DrillRecord | null>(() =>
  dayNow.value.kind === 'under-way' ? dayNow.value.record : null,
);

/** How many cards of the row are still face down. */
export function hiddenNow(now: Running): number {
  return hiddenOf(now.standing, mannerOf(now, moments.value));
}

/** Whether the warm-up under way has come to its end. */
export function isOver({ standing }: Pick<Running, 'standing'>): boolean {
  return standing.at >= standing.order.length;
}

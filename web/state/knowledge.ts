import { computed } from '@preact/signals';
import { type Day, parseDay } from '../../core/learners/day.ts';
import { observationsOf } from '../../core/learners/evidence-from-log.ts';
import { knowledgeFrom } from '../../core/learners/knowledge.ts';
import { today } from './day.ts';
import { classState } from './open-class.ts';

/** All that the drills of the class have shown, as they were begun. */
export const observations = computed(() => observationsOf(classState.value));

/** What the class knows by it. */
export const knowledge = computed(() => knowledgeFrom(observations.value));

/** Today as the model counts days; never before the last observation, should the clock have gone back. */
export function modelDay(): Day {
  const last = observations.value.reduce((latest, { day }) => Math.max(latest, day), 0);
  return Math.max(parseDay(today()) ?? 0, last);
}

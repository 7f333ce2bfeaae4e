import { computed } from '@preact/signals';
import type { CardId } from '../../core/language/card-id.ts';
import { type BringBack, toBringBack } from '../../core/log/after-drill.ts';
import { drillsOf } from '../../core/log/recent.ts';
import { classState, group } from './open-class.ts';

/** What the group's next warm-up should bring back, most needed first. */
export const brokenLately = computed(() => toBringBack(drillsOf(classState.value, group.value.id)));

/** So many cards at most come back in one warm-up, so that a day is not all mending (common practice, no source). */
const MOST_BACK = 6;

/** The cards that a warm-up practices of what it should bring back. */
export function practiced(those: readonly BringBack[]): readonly CardId[] {
  return [...new Set(those.flatMap(({ cards }) => cards))].slice(0, MOST_BACK);
}

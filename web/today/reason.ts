import { itemKey, type Progress, stepOf } from '../engine.ts';
import { dayBroken } from '../memory/broken-lately.ts';
import { today } from '../memory/day.ts';
import { whenSaid } from '../memory/day-name.ts';
import { newestCards } from '../memory/newest-cards.ts';

/** How many steps back still count as recent. */
const recentSteps = 5;

/** Why a card is in today's warm-up: that it broke, and when; else when it was taught. */
export function reasonSaid(id: string, progress: Progress): string {
  return brokenSaid([id]) ?? reasonOf(id, progress);
}

/** That a card broke lately, or a sound with these spellings, and when: `broke on Tuesday`; else null. */
export function brokenSaid(ids: readonly string[]): string | null {
  const day = dayBroken(ids);
  return day === null ? null : `broke ${whenSaid(day, today())}`;
}

/** When a card was taught. */
export function reasonOf(id: string, progress: Progress): 'new' | 'recent' | 'added' | 'review' {
  const { sequence, upTo, added } = progress;
  const item = { kind: 'card', id } as const;
  if (newestCards(progress).includes(id)) return 'new';
  if (added.some((other) => itemKey(other) === itemKey(item))) return 'added';
  const step = stepOf(sequence, item);
  return step !== null && step > upTo - recentSteps ? 'recent' : 'review';
}

import { itemKey, type Progress, stepOf } from '../engine.ts';
import { newestCards } from '../memory/newest-cards.ts';

/** How many steps back still count as recent. */
const recentSteps = 5;

/** Why a card is in today's warm-up, as far as it is known: when it was taught. */
export function reasonOf(id: string, progress: Progress): 'new' | 'recent' | 'added' | 'review' {
  const { sequence, upTo, added } = progress;
  const item = { kind: 'card', id } as const;
  if (newestCards(progress).includes(id)) return 'new';
  if (added.some((other) => itemKey(other) === itemKey(item))) return 'added';
  const step = stepOf(sequence, item);
  return step !== null && step > upTo - recentSteps ? 'recent' : 'review';
}

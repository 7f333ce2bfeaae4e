import type { CardId } from '../../core/language/card-id.ts';
import { itemKey, itemOfCard } from '../../core/sequence/item.ts';
import type { Progress } from '../../core/sequence/progress.ts';
import { stepOf } from '../../core/sequence/step-of.ts';
import { newestCards, newestSight } from '../state/newest-cards.ts';
import { reasonToRead, reasonToSpell } from '../state/review.ts';

/** How many steps back still count as recent. */
const recentSteps = 5;

/** Why a card is in today's warm-up: how it went lately; while nothing was noted, when it was taught. */
export function reasonSaid(id: CardId, progress: Progress): string {
  return reasonToRead(id) ?? reasonOf(id, progress);
}

/** Why a sound with these spellings is in today's warm-up; empty for no more than practice. */
export function soundReason(ids: readonly CardId[], progress: Progress): string {
  const isNew = ids.some((id) => reasonOf(id, progress) === 'new');
  return reasonToSpell(ids) ?? (isNew ? 'new' : '');
}

/** When a card was taught. */
export function reasonOf(id: CardId, progress: Progress): 'new' | 'recent' | 'added' | 'review' {
  const { sequence, upTo, added } = progress;
  const item = itemOfCard(id);
  if (newestCards(progress).includes(id) || newestSight(progress).includes(id)) return 'new';
  if (added.some((other) => itemKey(other) === itemKey(item))) return 'added';
  const step = stepOf(sequence, item);
  return step !== null && step > upTo - recentSteps ? 'recent' : 'review';
}

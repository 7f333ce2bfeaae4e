import { computed } from '@preact/signals';
import type { DayCards } from '../../core/boards/search/aims.ts';
import { brokenLately, practiced } from './broken-lately.ts';
import { newestCards } from './newest-cards.ts';
import { progress } from './progress.ts';
import { wantedOnBoard } from './review.ts';

/** What today's board is about for the group at work: what is new, what broke lately, what is due to come back. */
export const dayCards = computed<Required<DayCards>>(() => ({
  newest: newestCards(progress.value),
  broken: practiced(brokenLately.value),
  focus: wantedOnBoard.value,
}));

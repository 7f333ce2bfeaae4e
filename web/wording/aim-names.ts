import type { Aim } from '../../core/boards/search/aims.ts';

/** What a board is best for, as it is chosen. */
export const aimNames: Readonly<Record<Aim, string>> = {
  today: 'Best for today',
  'most-words': 'Most words',
  review: 'Best for review',
};

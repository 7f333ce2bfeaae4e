import type { Estimate } from '../learners/estimate.ts';
import { PUBLISHED_THRESHOLDS, type Thresholds } from '../learners/thresholds.ts';
import { type CardFacts, LAST_READINGS, missedLast } from './card-facts.ts';

/** What a teacher is told of a card. */
export const MASTERY_WORDS = ['secure', 'growing', 'shaky', 'not yet seen'] as const;
export type MasteryWord = (typeof MASTERY_WORDS)[number];

/**
 * The word for a card. What was seen goes before what is estimated (rules of
 * ours, common practice, no source):
 *
 * - never read clearly: not yet seen, whatever is expected of it;
 * - missed in two of the last three readings, or never yet right: shaky;
 * - missed in one of the last three: shaky or growing by the estimate, never secure;
 * - missed in none of them: growing, or secure after three readings and where
 *   even the low end of the interval reaches the threshold; never shaky.
 */
export function masteryWord(
  seen: Pick<CardFacts, 'right' | 'missed' | 'last'>,
  { p, low }: Pick<Estimate, 'p' | 'low'>,
  thresholds: Thresholds = PUBLISHED_THRESHOLDS,
): MasteryWord {
  if (seen.right + seen.missed === 0) return 'not yet seen';
  const missed = missedLast(seen);
  if (missed >= 2 || seen.right === 0) return 'shaky';
  if (missed === 1) return p < thresholds.shaky ? 'shaky' : 'growing';
  return seen.last.length === LAST_READINGS && low >= thresholds.secure ? 'secure' : 'growing';
}

/**
 * The word for a place of a word or a habit, which is never read by itself: the
 * estimate alone; `n` is the number of readings that told of it.
 */
export function estimateWord(
  { p, low, n }: Pick<Estimate, 'p' | 'low' | 'n'>,
  thresholds: Thresholds = PUBLISHED_THRESHOLDS,
): MasteryWord {
  if (n === 0) return 'not yet seen';
  if (p < thresholds.shaky) return 'shaky';
  return low >= thresholds.secure ? 'secure' : 'growing';
}

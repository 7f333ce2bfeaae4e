import type { ChildId } from '../ids.ts';
import { makeSightId } from '../language/card-id.ts';
import type { Taught } from '../language/taught.ts';
import type { Day } from './day.ts';
import { estimateCard } from './estimate.ts';
import type { Known } from './known.ts';
import { PUBLISHED_THRESHOLDS } from './thresholds.ts';

/**
 * What a child can be given to read alone: of what was taught, the cards that
 * are read correctly at least so often, by what is known today, and so of the words
 * known by sight those that it has read itself; habits are as they were taught.
 */
export function canRead(
  taught: Taught,
  known: Known,
  child: ChildId,
  day: Day,
  least: number = PUBLISHED_THRESHOLDS.secure,
): Taught {
  const who = { of: 'child', id: child } as const;
  const sure = [...taught.correspondences].filter(
    (card) => estimateCard(known, who, card, day).p >= least,
  );
  const words = [...taught.irregularWords].filter((word) => {
    const { p, n } = estimateCard(known, who, makeSightId(word), day);
    return n > 0 && p >= least;
  });
  return { ...taught, correspondences: new Set(sure), irregularWords: new Set(words) };
}

import type { Estimate } from './estimate.ts';

/** What a teacher is told of an estimate. */
export const MASTERY_WORDS = ['secure', 'growing', 'shaky', 'not yet seen'] as const;
export type MasteryWord = (typeof MASTERY_WORDS)[number];

/** Where the words begin; shares from 0 to 1, hers to change. */
export interface Thresholds {
  /** Secure from here on, surely: the low end of the interval must reach it. */
  readonly secure: number;
  /** Shaky where the estimate lies below this. */
  readonly shaky: number;
}

/**
 * The published thresholds. A state guide to the Texas standards calls 80% and
 * more mastery, 60–79% approaching, 59% and less in need of intervention, by
 * syllable type; the phonics check of England's Year 1 asks for 32 of 40, which
 * is 80% too. That the interval's low end must reach it, and not the estimate,
 * is ours: children who had stood at 80% had lost it at follow-up, those at 90%
 * kept it for a month (Longino, Richling, McDougale & Palmier 2021).
 */
export const PUBLISHED_THRESHOLDS: Thresholds = { secure: 0.8, shaky: 0.6 };

/** The word for an estimate; `not yet seen` where no reading has told anything of it. */
export function masteryWord(
  { p, low, n }: Pick<Estimate, 'p' | 'low' | 'n'>,
  thresholds: Thresholds = PUBLISHED_THRESHOLDS,
): MasteryWord {
  if (n === 0) return 'not yet seen';
  if (p < thresholds.shaky) return 'shaky';
  return low >= thresholds.secure ? 'secure' : 'growing';
}

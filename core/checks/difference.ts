import type { CheckKind } from './check-form.ts';

/**
 * How sure a score is: two forms read by a child that has not changed differ by
 * chance. Found by simulation (test/form-trial.ts, docs/checks.md): by item, the
 * standard deviation of the difference grows with the root of how many are read.
 */
const DEVIATION: Readonly<Record<CheckKind, number>> = {
  'nonsense-words': 0.61,
  'letter-sounds': 0.6,
  'sight-words': 0.6,
};

/** 90 of 100 differences by chance lie within so many standard deviations. */
const DEVIATIONS = 1.645;

/** A score, as two checks are compared by it. */
export interface ComparedScore {
  readonly asked: number;
  readonly right: number;
}

/** What two checks of one kind say beside each other. */
export interface Comparison {
  /** `more` or `fewer` right where the difference means something; `alike` where chance may make it. */
  readonly code: 'more' | 'fewer' | 'alike';
  /** Items right now beyond what the share before comes to, of as many as were asked now; rounded. */
  readonly by: number;
  readonly asked: number;
  /**
   * From which difference on, in items of as many, it means something: nine of ten differences by
   * chance alone are smaller.
   */
  readonly least: number;
}

/** Compares the later check with the earlier one, by share of items right; null where one asked nothing. */
export function compareScores(
  kind: CheckKind,
  now: ComparedScore,
  before: ComparedScore,
): Comparison | null {
  if (now.asked === 0 || before.asked === 0) return null;
  const by = now.right - (before.right * now.asked) / before.asked;
  // Both differ by chance: of a shorter check before, the more.
  const least = Math.ceil(
    DEVIATIONS * DEVIATION[kind] * Math.sqrt(now.asked * (0.5 + now.asked / before.asked / 2)),
  );
  const code = Math.abs(by) < least ? 'alike' : by > 0 ? 'more' : 'fewer';
  return { code, by: Math.round(by), asked: now.asked, least };
}

/** The comparison in a sentence: ‘3 of 30 more than before. A difference means something from 6 of 30 on.’ */
export function comparisonSaid({ code, by, asked, least }: Comparison): string {
  const from = `Two forms differ by chance: it means something from ${least} of ${asked} on`;
  if (by === 0) return `As many right as before. ${from}.`;
  const size = `${Math.abs(by)} of ${asked} ${by > 0 ? 'more' : 'fewer'} right than before`;
  return code === 'alike'
    ? `${size}, which may be chance. ${from}.`
    : `${size}, more than chance. ${from}.`;
}

import type { CheckKind } from './check-form.ts';

/**
 * How sure a score is: two forms read by a child that has not changed differ by
 * chance. Found by simulation (test/form-trial.ts, docs/checks.md): by item, the
 * standard deviation of the difference grows with the root of how many are read.
 */
const CHANCE: Readonly<
  Record<CheckKind, { readonly deviation: number; readonly reliability: number }>
> = {
  'nonsense-words': { deviation: 0.61, reliability: 0.88 },
  'letter-sounds': { deviation: 0.54, reliability: 0.8 },
};

/** 90 of 100 differences by chance lie within so many standard deviations. */
const DEVIATIONS = 1.645;

/** How alike two forms of 30 items order a class, 0 to 1: the correlation between its scores. */
export function reliabilityOf(kind: CheckKind): number {
  return CHANCE[kind].reliability;
}

/**
 * The smallest difference in items right that means something, between two
 * checks of one kind of so many items each: nine of ten differences by chance
 * alone are smaller.
 */
export function leastDifference(kind: CheckKind, asked: number): number {
  return Math.ceil(DEVIATIONS * CHANCE[kind].deviation * Math.sqrt(asked));
}

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
  /** From which difference on, in items of as many, it means something. */
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
    DEVIATIONS *
      CHANCE[kind].deviation *
      Math.sqrt(now.asked * (0.5 + now.asked / before.asked / 2)),
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

/**
 * What a run is worth, so that runs can be compared and a teacher or a test can
 * see how near one comes to what any run could reach.
 *
 * The weights say what is given up first: a flip more outweighs everything, then
 * the share of real words, no word of the last days, the focus cards as often as
 * asked, what the day is about often enough, each pair of look-alikes once and then often enough, every card shown, a
 * rise, uncommon words and awkward nonsense left out. The order is a teacher's, the numbers are ours.
 */

/** The counts that a run is scored by. */
export interface RunCounts {
  readonly flips: number;
  readonly real: number;
  /** Flips that show no word of the last days. */
  readonly fresh: number;
  /** Flips that show a focus card. */
  readonly focused: number;
  /** Flips that show a card which is to come in at least a share of them. */
  readonly due: number;
  /** Cards of the board that some flip shows. */
  readonly cards: number;
  /** Pairs of look-alikes turned one into the other at least once. */
  readonly contrasts: number;
  /** Flips that turn one card into its look-alike. */
  readonly contrastTurns: number;
  /** Flips but those that turn a pile a fourth time in a row. */
  readonly varied: number;
  /** Flips about as hard as their place in a run that rises; 0 when no rise is wished. */
  readonly risen: number;
  /** Flips that show neither an uncommon word nor awkward nonsense. */
  readonly good: number;
}

/** What is wished, as far as the board can give it. */
export interface RunGoal {
  readonly flips: number;
  readonly real: number;
  /** null when it does not matter how often. */
  readonly focused: number | null;
  /** The least number of flips that are to show such a card. */
  readonly due: number;
  readonly cards: number;
  readonly contrasts: number;
  readonly contrastTurns: number;
  /** Flips about as hard as their place asks: all of them, or 0 when no rise is wished. */
  readonly risen: number;
}

/**
 * `reached` is what the run is worth; `floor` what a walk by chance alone is
 * worth on the same board, which every run reaches at least; `bound` what no
 * run can exceed.
 */
export interface RunScore {
  readonly reached: number;
  readonly floor: number;
  readonly bound: number;
}

/** A pile is turned so often in a row, and no more where another one can be turned. */
export const MOST_IN_A_ROW = 3;

const FLIP = 500;
const KIND = 120;
const FRESH = 60;
const FOCUS = 40;
const DUE = 9;
const CARD = 5;
const CONTRAST = 30;
const CONTRAST_TURN = 20;
const RISEN = 4;
const VARIED = 3;
const GOOD = 6;

/** Whole points, none negative. */
export function pointsOf(counts: RunCounts, goal: RunGoal): number {
  return (
    VARIED * counts.varied +
    GOOD * counts.good +
    FRESH * counts.fresh +
    FLIP * counts.flips +
    KIND * ofTwo(counts.real, goal.real, counts.flips, goal.flips) +
    (goal.focused === null
      ? 0
      : FOCUS * ofTwo(counts.focused, goal.focused, counts.flips, goal.flips)) +
    DUE * Math.min(counts.due, goal.due) +
    CARD * Math.min(counts.cards, goal.cards) +
    RISEN * counts.risen +
    CONTRAST * Math.min(counts.contrasts, goal.contrasts) +
    CONTRAST_TURN * Math.min(counts.contrastTurns, goal.contrastTurns)
  );
}

/** The points that no run can exceed. */
export function mostPoints(goal: RunGoal): number {
  const { flips } = goal;
  const focused = goal.focused ?? 0;
  return pointsOf({ ...goal, focused, varied: flips, fresh: flips, good: flips }, goal);
}

/** Whether nothing was given up but uncommon words and the evenness of a rise. */
export function isAsWished(counts: RunCounts, goal: RunGoal): boolean {
  return (
    counts.flips === goal.flips &&
    counts.real === goal.real &&
    counts.fresh === goal.flips &&
    counts.varied === goal.flips &&
    (goal.focused === null || counts.focused === goal.focused) &&
    counts.due >= goal.due &&
    counts.cards >= goal.cards &&
    counts.contrasts >= goal.contrasts &&
    counts.contrastTurns >= goal.contrastTurns
  );
}

/** How many flips count when so many of one sort are wished and the rest of the other. */
function ofTwo(had: number, wished: number, flips: number, wishedFlips: number): number {
  return Math.min(had, wished) + Math.min(flips - had, wishedFlips - wished);
}

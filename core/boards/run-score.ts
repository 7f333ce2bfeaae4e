/**
 * What a run is worth, so that runs can be compared and a teacher or a test can
 * see how near one comes to what any run could reach.
 */

/** The counts that a run is scored by. */
export interface RunCounts {
  readonly flips: number;
  readonly real: number;
  /** Cards of the board that some flip shows. */
  readonly cards: number;
  /** Flips that change another pile than the flip before. */
  readonly turns: number;
  /** Flips that show neither an uncommon word nor one of the last days. */
  readonly fresh: number;
  /** Look-alikes turned one into the other. */
  readonly contrasts: number;
}

/** What is wished, as far as the board can give it. */
export interface RunGoal {
  readonly flips: number;
  readonly real: number;
  readonly cards: number;
  readonly contrasts: number;
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

const FLIP = 100;
const KIND = 20;
const CARD = 5;
const CONTRAST = 4;
const TURN = 1;
const FRESH = 1;

/** Whole points: length counts most, then the share of real words, the cards shown, the rest. */
export function pointsOf(counts: RunCounts, goal: RunGoal): number {
  const nonsense = counts.flips - counts.real;
  const kinds =
    Math.min(counts.real, goal.real) + Math.min(nonsense, Math.max(0, goal.flips - goal.real));
  return (
    FLIP * counts.flips +
    KIND * kinds +
    CARD * Math.min(counts.cards, goal.cards) +
    CONTRAST * Math.min(counts.contrasts, goal.contrasts) +
    TURN * counts.turns +
    FRESH * counts.fresh
  );
}

/** The points that no run can exceed. */
export function mostPoints(goal: RunGoal): number {
  const { flips } = goal;
  return pointsOf({ ...goal, turns: Math.max(0, flips - 2), fresh: flips }, goal);
}

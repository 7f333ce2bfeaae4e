import type { Moment } from './moments.ts';

/**
 * Where the stage stands: `at` is the moment (as many as there are means the
 * end), `shown` how many cards of the row lie open when sounds come one at a
 * time, and what she asked to see.
 */
export interface Standing {
  readonly at: number;
  readonly shown: number;
  /** How often the row was swept; the line runs anew at each count. */
  readonly sweeps: number;
  readonly answer: boolean;
  readonly spellings: boolean;
  readonly paused: boolean;
  readonly skipped: ReadonlySet<number>;
}

/** What she can do. */
export type Act = 'next' | 'back' | 'skip' | 'sweep' | 'answer' | 'spellings' | 'pause';

/** How the warm-up is run. */
export interface Manner {
  readonly moments: readonly Moment[];
  /** One sound at a time. */
  readonly successive: boolean;
}

/** The stage at the start of a moment. */
export function standingAt(at: number, skipped: ReadonlySet<number> = new Set()): Standing {
  return { at, shown: 1, sweeps: 0, answer: false, spellings: false, paused: false, skipped };
}

/** The stage after an act. Whatever is done, a blank sheet is lifted first. */
export function act(standing: Standing, what: Act, manner: Manner): Standing {
  const { at, skipped } = standing;
  const moment = manner.moments[at];
  if (what === 'pause') return { ...standing, paused: !standing.paused && moment !== undefined };
  if (standing.paused) return { ...standing, paused: false };
  if (what === 'back') return back(standing, manner);
  if (!moment) return standing;
  if (what === 'sweep') {
    if (moment.part !== 'blending') return standing;
    return { ...standing, shown: moment.pieces.length, sweeps: standing.sweeps + 1 };
  }
  if (what === 'answer') {
    if (moment.part === 'auditory') return act(standing, 'spellings', manner);
    return moment.part === 'blending' ? { ...standing, answer: !standing.answer } : standing;
  }
  if (what === 'spellings') {
    return moment.part === 'auditory' ? { ...standing, spellings: !standing.spellings } : standing;
  }
  if (what === 'skip') return standingAt(at + 1, new Set([...skipped, at]));
  if (hiddenOf(standing, manner) > 0) return { ...standing, shown: standing.shown + 1 };
  return standingAt(at + 1, skipped);
}

/** How many cards of the row are still to be opened. */
export function hiddenOf({ at, shown }: Standing, { moments, successive }: Manner): number {
  const moment = moments[at];
  if (!successive || moment?.part !== 'blending') return 0;
  return Math.max(moment.pieces.length - shown, 0);
}

function back({ at, skipped }: Standing, { moments }: Manner): Standing {
  const before = Math.max(at - 1, 0);
  const pieces = moments[before]?.pieces.length ?? 1;
  const rest = new Set([...skipped].filter((other) => other !== before));
  return { ...standingAt(before, rest), shown: pieces };
}

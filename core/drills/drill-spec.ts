import type { Taught } from '../language/taught.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { WordScreen } from '../words/screen.ts';

/** What a drill is made for. Everything but `taught` and `seed` has a default. */
export interface DrillSpec {
  readonly taught: Taught;
  readonly seed: number;
  /** How many flips the blending drill has; 30 by default. */
  readonly flips?: number;
  /** The share of real words, 0 to 1; half by default. */
  readonly realShare?: number;
  /** The cards taught last: always in, first of all. */
  readonly newest?: readonly string[];
  /** Cards that the board is to practise; they count as the newest do there. */
  readonly focus?: readonly string[];
  /** How many cards the visual drill has; 12 by default. */
  readonly visualCount?: number;
  /** How many sounds the auditory drill has; 6 by default. */
  readonly auditoryCount?: number;
  /** A shape's id; chosen from what is taught by default. */
  readonly shape?: string;
  /** Spellings to leave out of the run where the board allows it: those of the last days. */
  readonly avoid?: ReadonlySet<string>;
}

/** What a drill is made from. */
export interface DrillEngine {
  readonly lexicon: Lexicon;
  readonly screen: WordScreen;
}

export const DRILL_DEFAULTS = {
  flips: 30,
  realShare: 0.5,
  visualCount: 12,
  auditoryCount: 6,
} as const;

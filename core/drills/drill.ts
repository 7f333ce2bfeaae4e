import type { RunScore } from '../boards/runs/score.ts';
import type { Board, Flip } from '../boards/shapes/board.ts';
import type { CardId } from '../language/card-id.ts';
import type { Phoneme } from '../language/phonemes.ts';

/**
 * A sound said in the auditory drill and every taught spelling of it, commonest first; or a word known
 * by sight, its sounds and its one spelling (sight.ts).
 */
export interface AuditorySound {
  readonly phonemes: readonly Phoneme[];
  readonly spellings: readonly CardId[];
}

/** Why a drill is shorter than asked, in a teacher's words, and what was done instead. */
export interface Shortfall {
  readonly code: 'nothing-taught' | 'no-vowel' | 'few-letters' | 'few-words';
  readonly message: string;
}

/** Today's three parts. The same taught set, settings and seed give the same drill. */
export interface Drill {
  readonly seed: number;
  /** Cards, then words known by sight. */
  readonly visual: readonly CardId[];
  readonly auditory: readonly AuditorySound[];
  readonly board: Board;
  readonly run: readonly Flip[];
  readonly shortfall: Shortfall | null;
  /**
   * What the run was worth when it was made, between what chance gives and what
   * no run can exceed; a flip changed by hand is not counted. Not every drill has it.
   */
  readonly score?: RunScore;
}

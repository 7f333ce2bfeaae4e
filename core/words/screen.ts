import type { Phoneme } from '../language/phonemes.ts';

/** stop: never shown; ask: hidden until the teacher decides; clear: fit for class. */
export const VERDICTS = ['stop', 'ask', 'clear'] as const;
export type ScreenVerdict = (typeof VERDICTS)[number];

/** A verdict with its category and a reason in general words, safe for a child's eyes. */
export interface Screened {
  readonly verdict: ScreenVerdict;
  readonly category: string | null;
  readonly reason: string | null;
}

/** Judges a spelling together with how its cards say it. Pure; no state. */
export interface WordScreen {
  judge(word: string, sounds: readonly Phoneme[]): Screened;
}

import type { Place } from '../language/correspondence.ts';

/**
 * The numbers of the model in tracker.ts. All strengths are on the log-odds
 * scale; variances are of strengths; days are calendar days.
 */
export interface TrackerSettings {
  /** How strong a card of which nothing is known is expected to be, on the day it is taught. */
  readonly start: number;
  /** How often what is known goes wrong all the same. */
  readonly slip: number;
  /** How far cards, groups with a card, children, and children with a card differ: variances. */
  readonly cardSpread: number;
  readonly groupSpread: number;
  readonly childSpread: number;
  readonly ownSpread: number;
  /** What standing in a place of a word, or under a habit, adds to strength, and its variance. */
  readonly places: Readonly<Record<Place, number>>;
  readonly placeSpread: number;
  readonly habit: number;
  readonly habitSpread: number;
  /** What the first practice adds, together and alone; the nth adds an nth of it. */
  readonly groupGain: number;
  readonly ownGain: number;
  /** How uncertainty grows by the day, in a group and in a child. */
  readonly groupDrift: number;
  readonly ownDrift: number;
  /** Forgetting: strength lost is `forgetting · ln(1 + days / forgettingDays) / (1 + hold · n)`. */
  readonly forgetting: number;
  readonly forgettingDays: number;
  readonly hold: number;
  /** How much children differ in forgetting: a standard deviation, as a share of what is lost. */
  readonly forgettingSpread: number;
  /** A reading together counts this much of a child's own, from 0 to 1. */
  readonly togetherWeight: number;
  /** How a reading together sounds: its log-odds of sounding right are `ease + sharpness · a child's`. */
  readonly ease: number;
  readonly sharpness: number;
  /** Intervals are drawn this much wider, for the model takes its parts to be independent. */
  readonly widening: number;
}

/**
 * The settings in use. Fitted by bench/fit-mastery.ts to invented classes of the simulator in
 * test/classroom/, none of which is used to judge them: docs/mastery.md. No child was measured.
 */
export const TRACKER_SETTINGS: TrackerSettings = {
  start: 1.25,
  slip: 0.0159,
  cardSpread: 1.27,
  groupSpread: 0.0279,
  childSpread: 0.458,
  ownSpread: 0.308,
  places: { beginning: 0.649, middle: 0.0958, ending: -0.213 },
  placeSpread: 0.102,
  habit: -1.29,
  habitSpread: 0.57,
  groupGain: 0.23,
  ownGain: 0.44,
  groupDrift: 0.00231,
  ownDrift: 0.000935,
  forgetting: 0.719,
  forgettingDays: 21.1,
  hold: 0.0184,
  forgettingSpread: 0.0495,
  togetherWeight: 0.5,
  ease: -2.2,
  sharpness: 2,
  widening: 1.4,
};

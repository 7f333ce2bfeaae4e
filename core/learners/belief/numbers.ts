/**
 * The numbers of the model. Strengths are on the log-odds scale, variances are of strengths, days are
 * calendar days. All were settled by hand on invented classes (test/classroom/), none of which is used
 * to judge them; no child was measured. What differs from class to class is no number here: it is
 * learned from the class (fit.ts, shifts.ts, known-or-not.ts).
 */

/** Before a class has told anything: how strong its cards are on average, and how sure that is. */
export const START = { mean: 1.4, variance: 1 } as const;

/** Spreads to begin with, as variances: of children, of cards, of a child with a card. */
export const SPREAD = { child: 1, card: 1, pair: 1 } as const;

/** So many imagined children and cards hold to the spreads to begin with. */
export const IMAGINED = { children: 2, cards: 3 } as const;

/**
 * A share of pairs differ far more than the others, and rather downwards: a heavy tail, so that a card
 * of a child that is unlike its others is seen for what it is.
 */
export const TAIL = { share: 0.15, lowered: 0.3, least: 9, widening: 6.25 } as const;

/**
 * What is fitted to a class comes out further apart than it is, as the best of many always does: what
 * is usual of a child and card is drawn to the middle of the class by `usual`, and a forecast by
 * `forecast` of how far it lies from what goes right in the class, half of that after `held` readings.
 */
export const CAUTION = { usual: 0.2, forecast: 0.1, held: 20 } as const;

/** What time does by the day: to a pair's strength, the chance that it begins again, to children and cards. */
export const DRIFT = { pair: 0.006, renewal: 0.005, child: 0.005, card: 0.001 } as const;

/** Strength grows by `mean · ln(1 + practice)`; a practice together counts as half of one alone. */
export const GAIN = { mean: 0.4, variance: 0.15, together: 0.5 } as const;

/** What is lost in d days: `mean · ln(1 + d / days) / (1 + hold · days practiced)`. */
export const LOSS = { mean: 0.3, variance: 0.05, days: 14, hold: 0.05, spread: 0.7 } as const;

/** What standing in a place of a word adds to strength, in a class and in a child beside the class. */
export const PLACE = { mean: 0, variance: 0.15, own: 0.03 } as const;

/** What a habit adds to it. */
export const HABIT = { mean: -0.6, variance: 0.4, own: 0.15 } as const;

/** A reading together counts half, and its odds of sounding right are those of one child, squared. */
export const CHOIR = { weight: 0.5, slope: 2 } as const;

/** Where only mistakes are marked: of what went right beside the class so much is taken to be one child's, the rest everybody's. */
export const BESIDE_CLASS = { alone: 0.8 } as const;

/** The growth of a class as a whole, by the day: how fast it is learned, and its bounds. */
export const TREND = { rate: 0.15, full: 10, least: -0.03, most: 0.08 } as const;

/** How much of the correlation of surprises says that knowledge jumps more than is followed. */
export const RESTLESS = { held: 200, usual: 0.02, gain: 16, least: -1.4, most: 1.6 } as const;

/** Known or not: chances to begin with, and how many imagined readings hold to each. */
export const KNOWN_OR_NOT = {
  learn: { chance: 0.1, held: 40 },
  lose: { chance: 0.004, held: 400 },
  slip: { chance: 0.05, held: 40, ofChild: 30, most: 0.4 },
  guess: { chance: 0.25, held: 40, ofCard: 20, most: 0.7 },
  /** Whose forecasts are better: where the grid begins, how fast it gains in the class and in a pair, its bounds in log-odds. */
  lead: { start: 2.5, rate: 0.2, ofPair: 0.5, least: -1.5, most: 6 },
  /** How sharp a chance is that is only known as `known` or `not`: a standard deviation. */
  sharpness: 0.45,
} as const;

/** What an answer adds to the variance of what was read, for what no reading tells. */
export const DOUBT = {
  least: 0.1,
  neverRead: 0.6,
  away: 0.02,
  awayAfter: 4,
  awayMost: 60,
  besideClass: 0.35,
  onlyMistakes: 1.4,
} as const;

/**
 * A second belief beside the grid: a child knows a card or does not, slips where it does and guesses
 * where it does not (Bayesian knowledge tracing: Corbett & Anderson 1995), here with a loss by the day,
 * slips of each child and guesses of each card. Its chances are learned from the class by expected
 * counts (Baum et al. 1970, one step a reading). It counts as far as it forecasts this class better
 * than the grid does, by the ratio of what they gave to what happened.
 */
import { logOdds } from './grid.ts';
import { CAUTION, KNOWN_OR_NOT } from './numbers.ts';
import { KNOWN, KNOWN_BEFORE, KNOWN_DAY, LEAD } from './pair.ts';

const { learn, lose, slip, guess, lead } = KNOWN_OR_NOT;

/** What a class has shown of it: each chance as a count of what happened over one of what could have. */
export interface KnownOrNot {
  learned: number;
  couldLearn: number;
  lost: number;
  couldLose: number;
  slipped: number;
  couldSlip: number;
  guessed: number;
  couldGuess: number;
  /** How much better the grid forecast: the sum of log-ratios. */
  lead: number;
}

/** Before any reading. */
export function openKnownOrNot(): KnownOrNot {
  return {
    learned: learn.chance * learn.held,
    couldLearn: learn.held,
    lost: lose.chance * lose.held,
    couldLose: lose.held,
    slipped: slip.chance * slip.held,
    couldSlip: slip.held,
    guessed: guess.chance * guess.held,
    couldGuess: guess.held,
    lead: 0,
  };
}

/** How often a child goes wrong at what it knows, from its own two counts. */
export function slipOf(all: KnownOrNot, slipped: number, could: number): number {
  const usual = all.slipped / all.couldSlip;
  return Math.min(slip.most, (slipped + slip.ofChild * usual) / (could + slip.ofChild));
}

/** How often a card goes right with one who does not know it, from its own two counts. */
export function guessOf(all: KnownOrNot, guessed: number, could: number): number {
  const usual = all.guessed / all.couldGuess;
  return Math.min(guess.most, (guessed + guess.ofCard * usual) / (could + guess.ofCard));
}

/** How likely a card is known of which only the chance of a right reading is given. */
export function knownFrom(chance: number, slips: number, guesses: number): number {
  return Math.min(0.97, Math.max(0.03, (chance - guesses) / (1 - slips - guesses)));
}

/** How likely a pair is known on a day; `otherwise` where it was never read. */
export function knownOn(
  all: KnownOrNot,
  pairs: Float64Array,
  pair: number,
  day: number,
  otherwise: number,
): number {
  const known = pairs[pair + KNOWN] as number;
  if (Number.isNaN(known)) return otherwise;
  return known * kept(all, day - (pairs[pair + KNOWN_DAY] as number));
}

/** The chance that what was known is not lost in so many days: a power, by squaring, which is faster. */
function kept(all: KnownOrNot, days: number): number {
  let product = 1;
  let factor = 1 - all.lost / all.couldLose;
  for (let left = days; left > 0; left >>= 1) {
    if ((left & 1) === 1) product *= factor;
    factor *= factor;
  }
  return product;
}

/**
 * How much the grid counts of a pair, 0 to 1; the rest is this belief's. What forecast the class better
 * goes before, and what forecast the pair itself: whichever belief a child with a card follows, it is
 * one of the two. −1 for a pair that nothing is known of.
 */
export function gridWeight(all: KnownOrNot, pairs: Float64Array, pair: number): number {
  const odds = Math.max(lead.least, Math.min(lead.most, lead.start + lead.rate * all.lead));
  const own = pair < 0 ? 0 : lead.ofPair * (pairs[pair + LEAD] as number);
  return 1 / (1 + Math.exp(-odds - own));
}

/**
 * A strength, in log-odds, drawn a little to what goes right in the class by all that children read
 * alone: less so the more readings told of it.
 */
export function cautious(all: KnownOrNot, strength: number, told: number): number {
  const { slipped, couldSlip, guessed, couldGuess } = all;
  const usual = logOdds((couldSlip - slipped + guessed) / (couldSlip + couldGuess));
  const pull = (CAUTION.forecast * CAUTION.held) / (CAUTION.held + told);
  return strength + pull * (usual - strength);
}

/** How a reading of one card went: its chances by both beliefs, and what came. */
export interface KnownReading {
  day: number;
  right: boolean;
  /** How surely this card was what went wrong, 1 where it is known how the card went. */
  weight: number;
  /** What the grid forecast. */
  chance: number;
  slips: number;
  guesses: number;
}

/** Learns from a reading; answers how likely the card was known, for the child's and the card's own counts. */
export function learnKnown(
  all: KnownOrNot,
  pairs: Float64Array,
  pair: number,
  { day, right, weight, chance, slips, guesses }: KnownReading,
): number {
  const before = pairs[pair + KNOWN] as number;
  const isFirst = Number.isNaN(before);
  const days = isFirst ? 0 : day - (pairs[pair + KNOWN_DAY] as number);
  const keeps = isFirst ? 1 : kept(all, days);
  const known = isFirst ? knownFrom(chance, slips, guesses) : before * keeps;
  const forecast = known * (1 - slips) + (1 - known) * guesses;
  const led = weight * Math.log(right ? chance / forecast : (1 - chance) / (1 - forecast));
  all.lead += led;
  pairs[pair + LEAD] = (pairs[pair + LEAD] as number) + led;
  const ifKnown = right ? 1 - slips : slips;
  const ifNot = right ? guesses : 1 - guesses;
  const whole = known * ifKnown + (1 - known) * ifNot;
  const now = (known * ifKnown) / whole;
  const after = known + weight * (now - known);
  if (weight > 0.99) {
    if (!isFirst) {
      const earlier = pairs[pair + KNOWN_BEFORE] as number;
      countSteps(all, earlier, days, keeps, ifKnown / whole, ifNot / whole);
    }
    all.couldSlip += now;
    all.couldGuess += 1 - now;
    if (right) all.guessed += 1 - now;
    else all.slipped += now;
  }
  pairs[pair + KNOWN_BEFORE] = after;
  pairs[pair + KNOWN] = after + (1 - after) * (all.learned / all.couldLearn);
  pairs[pair + KNOWN_DAY] = day;
  return now;
}

/** Expected counts of what was learned at the last reading and lost in the days since, kept with a chance of `keeps`, given this one. */
function countSteps(
  all: KnownOrNot,
  before: number,
  days: number,
  keeps: number,
  ifKnown: number,
  ifNot: number,
): void {
  const learns = all.learned / all.couldLearn;
  const loses = 1 - keeps;
  const learned = (1 - before) * learns * (1 - loses) * ifKnown;
  const stayed = (1 - before) * (1 - learns) * ifNot;
  const held = before + (1 - before) * learns;
  const lost = held * loses * ifNot;
  const stayedKnown = held * (1 - loses) * ifKnown;
  all.learned += learned;
  all.couldLearn += learned + stayed;
  all.lost += lost;
  all.couldLose += (lost + stayedKnown) * Math.max(0.2, days);
}

/** Where those who know and those who do not stand on the scale of strengths. */
export function standsAt(
  slips: number,
  guesses: number,
): { readonly known: number; readonly not: number } {
  return { known: logOdds(1 - slips), not: logOdds(guesses) };
}

/**
 * What is known, followed through time.
 *
 * **Problem.** Each child reads each card only a few times in weeks. How likely
 * is it to read it rightly today, and how sure can one be?
 *
 * **Model.** How likely a card is read rightly is the logistic of a sum of strengths, each
 * a normal belief with a mean and a variance:
 *
 *     the card in this class  +  the card in the group  +  the child  +  the card in the child
 *     +  the place in the word  +  its habits  −  what was forgotten
 *
 * below a ceiling, since what is known slips too;
 * so that a child of whom little is known is taken to be like the group, and a
 * group like others with that card: shrinkage. What is forgotten grows with the
 * logarithm of the days since practice, a power law of the odds (Wixted &
 * Ebbesen 1991), and more slowly the more days the card was practised on
 * (spacing: Cepeda et al. 2006). Strength grows with the logarithm of practice, a
 * power law too (Newell & Rosenbloom 1981); time adds variance.
 *
 * **Method.** Assumed-density filtering: after every reading one Newton step of
 * the log-likelihood in each strength, shared by variance, as an extended Kalman
 * filter does (Fahrmeir 1992); predictions integrate the uncertainty by MacKay's
 * approximation (1992). Blame within a word: blame.ts. A reading together moves
 * only what is common, and by a weight below 1. Strengths are taken to be independent, which they are not quite:
 * intervals are widened by a fitted factor.
 *
 * **Cost.** A few multiplications a card a reading, no pass over the past.
 *
 * **Rejected.** Bayesian knowledge tracing (no forgetting, no uncertainty of its
 * figures, nothing shared between cards or children; it is a baseline in the
 * tests); full Markov-chain Monte Carlo (exact, but seconds where a page has
 * milliseconds).
 */
import type { Place } from '../language/correspondence.ts';
import type { Habit } from '../language/taught.ts';
import { type Blame, shareBlame } from './blame.ts';
import type { Day } from './day.ts';
import { type Known, openBook, type Person } from './known.ts';
import type { Observation } from './observation.ts';
import { chanceOf, lossOf, moveStrength, type Strength, slopeAt } from './strength.ts';
import { TRACKER_SETTINGS, type TrackerSettings } from './tracker-settings.ts';
import { type WordParts, wordParts } from './word-parts.ts';

/** Follows readings, which must come in the order of their days. */
export interface Tracker {
  readonly observe: (reading: Observation) => void;
  /** The chance that each card of a reading is read rightly, from what was observed before it. */
  readonly expect: (reading: Observation) => readonly number[];
  /** What is known by now; it goes on changing with every reading. */
  readonly known: Known;
}

/** A card of a word as the tracker needs it. */
interface Spot {
  readonly card: number;
  readonly place: Place | null;
  readonly habits: readonly Habit[];
}

/** Longer words are read too, but only so many cards count. */
const MOST_CARDS = 32;

/** A tracker that has seen nothing yet; `partsOf` tells where the cards of a reading stand. */
export function startTracker(
  settings: TrackerSettings = TRACKER_SETTINGS,
  partsOf: (cards: readonly string[]) => WordParts = wordParts,
): Tracker {
  const { known, numberOf, groupOf, childOf, strengthOf, placeOf, habitOf } = openBook(settings);
  const words = new Map<string, readonly Spot[]>();
  const scratch = makeScratch();

  return {
    observe(reading) {
      const spots = spotsOf(reading.cards);
      if (reading.child === null) observeTogether(reading, spots);
      else observeAlone(reading, reading.child, spots);
    },
    expect(reading) {
      const spots = spotsOf(reading.cards);
      const group = groupOf(reading.groups[0] as string);
      const child = reading.child === null ? null : childOf(reading.child, group);
      layAll(spots, child, group, reading.day, null);
      return spots.map((_, at) => scratch.chance[at] as number);
    },
    known,
  };

  function observeAlone(reading: Observation, name: string, spots: readonly Spot[]): void {
    const { day, groups: names, right, broke } = reading;
    const { chance, blame } = scratch;
    for (let at = 0; at < names.length; at++) {
      const group = groupOf(names[at] as string);
      const child = at === 0 ? childOf(name, group) : null;
      // What a child reads tells of a second group through that group's own strengths alone.
      layAll(spots, child, group, day, at === 0 ? null : settings.childSpread + settings.ownSpread);
      shareBlame(blame, spots.length, chance, right, broke);
      for (let spot = 0; spot < spots.length; spot++) {
        const well = blame.well[spot] as number;
        const wrong = blame.wrong[spot] as number;
        if (well + wrong === 0) continue;
        const p = chance[spot] as number;
        const slope = slopeAt(settings, p);
        const certainty = ((well + wrong) * slope * slope) / (p * (1 - p));
        move(spot, slope * (well / p - wrong / (1 - p)), certainty);
      }
      if (child !== null) practise(spots, child, day, settings.ownGain);
    }
  }

  /**
   * Many voices average out: where most can read a word it sounds right almost
   * surely, where few can it sounds wrong. The log-odds of sounding right are
   * those of one child reading all its cards rightly, sharpened.
   */
  function observeTogether(reading: Observation, spots: readonly Spot[]): void {
    const { day, groups: names, right, broke } = reading;
    const { sharpness, ease, togetherWeight } = settings;
    const { chance } = scratch;
    for (let at = 0; at < names.length; at++) {
      const group = groupOf(names[at] as string);
      layAll(spots, null, group, day, at === 0 ? null : 0);
      let all = 1;
      for (let spot = 0; spot < spots.length; spot++) all *= chance[spot] as number;
      const sounds = 1 / (1 + Math.exp(-ease - sharpness * Math.log(all / (1 - all))));
      for (let spot = 0; spot < spots.length; spot++) {
        if (broke !== null && spot !== broke - 1) continue;
        const p = chance[spot] as number;
        // How much the log-odds of the word, or of the card that broke, hang on this card.
        const hangs = slopeAt(settings, p) / (p * (1 - (broke === null ? all : p)));
        const gradient = sharpness * (right ? 1 - sounds : -sounds) * hangs;
        const certainty = sharpness * sharpness * sounds * (1 - sounds) * hangs * hangs;
        move(spot, togetherWeight * gradient, togetherWeight * certainty);
      }
      practise(spots, group, day, settings.groupGain);
    }
  }

  /** One Newton step of the log-likelihood in each strength that a card here asks for. */
  function move(spot: number, gradient: number, certainty: number): void {
    const parts = scratch.parts[spot] as Strength[];
    const count = scratch.counts[spot] as number;
    const held = 1 + certainty * (scratch.variance[spot] as number);
    for (let part = 0; part < count; part++) {
      moveStrength(parts[part] as Strength, gradient / held, certainty / held);
    }
  }

  /**
   * Lays out the cards of a word for a child, or for a group as a whole. `aside`
   * is null where the reading tells of the cards themselves too; else they stay
   * as they are, and it is a variance that comes in beside.
   */
  function layAll(
    spots: readonly Spot[],
    child: Person | null,
    group: Person,
    day: Day,
    aside: number | null,
  ): void {
    const { mean, variance, chance } = scratch;
    for (let at = 0; at < spots.length; at++) {
      lay(at, spots[at] as Spot, child, group, day, aside);
      chance[at] = chanceOf(settings, mean[at] as number, variance[at] as number);
    }
  }

  /** Lays out the strengths that one card here asks for, drift and forgetting counted in. */
  function lay(
    at: number,
    { card, place, habits }: Spot,
    child: Person | null,
    group: Person,
    day: Day,
    aside: number | null,
  ): void {
    const parts = scratch.parts[at] as Strength[];
    let count = 0;
    const common = known.cards[card] as Strength;
    const shared = strengthOf(group, card, settings.groupSpread, day, settings.groupDrift);
    if (aside === null) parts[count++] = common;
    parts[count++] = shared;
    const reader = child ?? group;
    let last = shared.practised;
    let days = shared.days;
    if (child !== null) {
      const own = strengthOf(child, card, settings.ownSpread, day, settings.ownDrift);
      parts[count++] = own;
      if (child.ability) parts[count++] = child.ability;
      last = Math.max(last, own.practised);
      days += own.days;
    }
    if (place !== null) parts[count++] = placeOf(reader, place);
    for (let habit = 0; habit < habits.length; habit++) {
      parts[count++] = habitOf(reader, habits[habit] as Habit);
    }
    const loss = lossOf(settings, day - last, days);
    let mean = (aside === null ? 0 : common.mean) - loss;
    let variance =
      (aside === null ? 0 : common.variance + aside) + (loss * settings.forgettingSpread) ** 2;
    for (let part = 0; part < count; part++) {
      mean += (parts[part] as Strength).mean;
      variance += (parts[part] as Strength).variance;
    }
    scratch.counts[at] = count;
    scratch.mean[at] = mean;
    scratch.variance[at] = variance;
  }

  /** The nth practice adds the nth part of the first: strength grows with its logarithm. */
  function practise(spots: readonly Spot[], reader: Person, day: Day, gain: number): void {
    for (let at = 0; at < spots.length; at++) {
      const strength = reader.cards[(spots[at] as Spot).card] as Strength;
      strength.times += 1;
      strength.mean += gain / strength.times;
      if (strength.practised < day) strength.days += 1;
      strength.practised = day;
    }
  }

  function spotsOf(ids: readonly string[]): readonly Spot[] {
    const key = ids.join(' ');
    const before = words.get(key);
    if (before) return before;
    const { places, habits } = partsOf(ids);
    const spots = ids.slice(0, MOST_CARDS).map((id, at) => ({
      card: numberOf(id),
      place: places[at] ?? null,
      habits: habits[at] ?? [],
    }));
    words.set(key, spots);
    return spots;
  }
}

/** Room for one reading, used again for the next. */
function makeScratch() {
  const blame: Blame = {
    well: new Float64Array(MOST_CARDS),
    wrong: new Float64Array(MOST_CARDS),
  };
  return {
    mean: new Float64Array(MOST_CARDS),
    variance: new Float64Array(MOST_CARDS),
    chance: new Float64Array(MOST_CARDS),
    // The strengths of each card, of which `counts` are in use: emptied arrays would be made anew.
    parts: Array.from({ length: MOST_CARDS }, (): Strength[] => []),
    counts: new Uint8Array(MOST_CARDS),
    blame,
  };
}

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
import { HABITS } from '../language/taught.ts';
import { type Blame, shareBlame } from './blame.ts';
import type { Day } from './day.ts';
import { type Known, openBook, type Person } from './known.ts';
import type { Observation } from './observation.ts';
import { cardOf, contextsOf, lowestOf, MOST_CARDS, openWords, type Spot } from './spots.ts';
import {
  chanceOf,
  DAYS,
  lossOf,
  MEAN,
  moveStrength,
  PRACTISED,
  practiseStrength,
  slopeAt,
  VARIANCE,
} from './strength.ts';
import type { Row } from './strength-table.ts';
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

/** A tracker that has seen nothing yet; `partsOf` tells where the cards of a reading stand. */
export function startTracker(
  settings: TrackerSettings = TRACKER_SETTINGS,
  partsOf: (cards: readonly string[]) => WordParts = wordParts,
): Tracker {
  const { known, table, numberOf, groupOf, childOf, strengthOf, contextOf } = openBook(settings);
  const readWord = openWords(partsOf, numberOf);
  const scratch = makeScratch();

  return {
    observe(reading) {
      const count = readWord(reading.cards, scratch.spots);
      if (reading.child === null) observeTogether(reading, count);
      else observeAlone(reading, reading.child, count);
    },
    expect(reading) {
      const count = readWord(reading.cards, scratch.spots);
      const group = groupOf(reading.groups[0] as string);
      const child = reading.child === null ? null : childOf(reading.child, group);
      layAll(count, child, group, reading.day, null);
      return [...scratch.chance.subarray(0, count)];
    },
    known,
  };

  function observeAlone(reading: Observation, name: string, count: number): void {
    const { day, groups: names, right, broke } = reading;
    const { chance, blame } = scratch;
    for (let at = 0; at < names.length; at++) {
      const group = groupOf(names[at] as string);
      const child = at === 0 ? childOf(name, group) : null;
      // What a child reads tells of a second group through that group's own strengths alone.
      layAll(count, child, group, day, at === 0 ? null : settings.childSpread + settings.ownSpread);
      shareBlame(blame, count, chance, right, broke);
      for (let spot = 0; spot < count; spot++) {
        const well = blame.well[spot] as number;
        const wrong = blame.wrong[spot] as number;
        if (well + wrong === 0) continue;
        const p = chance[spot] as number;
        const slope = slopeAt(settings, p);
        const certainty = ((well + wrong) * slope * slope) / (p * (1 - p));
        move(spot, slope * (well / p - wrong / (1 - p)), certainty);
      }
      if (child !== null) practise(count, child, day, settings.ownGain);
    }
  }

  /**
   * Many voices average out: where most can read a word it sounds right almost
   * surely, where few can it sounds wrong. The log-odds of sounding right are
   * those of one child reading all its cards rightly, sharpened.
   */
  function observeTogether(reading: Observation, count: number): void {
    const { day, groups: names, right, broke } = reading;
    const { sharpness, ease, togetherWeight } = settings;
    const { chance } = scratch;
    for (let at = 0; at < names.length; at++) {
      const group = groupOf(names[at] as string);
      layAll(count, null, group, day, at === 0 ? null : 0);
      let all = 1;
      for (let spot = 0; spot < count; spot++) all *= chance[spot] as number;
      const sounds = 1 / (1 + Math.exp(-ease - sharpness * Math.log(all / (1 - all))));
      for (let spot = 0; spot < count; spot++) {
        if (broke !== null && spot !== broke - 1) continue;
        const p = chance[spot] as number;
        // How much the log-odds of the word, or of the card that broke, hang on this card.
        const hangs = slopeAt(settings, p) / (p * (1 - (broke === null ? all : p)));
        const gradient = sharpness * (right ? 1 - sounds : -sounds) * hangs;
        const certainty = sharpness * sharpness * sounds * (1 - sounds) * hangs * hangs;
        move(spot, togetherWeight * gradient, togetherWeight * certainty);
      }
      practise(count, group, day, settings.groupGain);
    }
  }

  /** One Newton step of the log-likelihood in each strength that a card here asks for. */
  function move(spot: number, gradient: number, certainty: number): void {
    const { parts, ends, variance } = scratch;
    const { numbers } = table;
    const held = 1 + certainty * (variance[spot] as number);
    for (let part = spot * MOST_PARTS; part < (ends[spot] as number); part++) {
      moveStrength(numbers, parts[part] as number, gradient / held, certainty / held);
    }
  }

  /**
   * Lays out the cards of a word for a child, or for a group as a whole. `aside`
   * is null where the reading tells of the cards themselves too; else they stay
   * as they are, and it is a variance that comes in beside.
   */
  function layAll(
    count: number,
    child: Person | null,
    group: Person,
    day: Day,
    aside: number | null,
  ): void {
    const { spots, mean, variance, chance } = scratch;
    for (let at = 0; at < count; at++) {
      lay(at, spots[at] as Spot, child, group, day, aside);
      chance[at] = chanceOf(settings, mean[at] as number, variance[at] as number);
    }
  }

  /** Lays out the strengths that one card here asks for, drift and forgetting counted in. */
  function lay(
    at: number,
    spot: Spot,
    child: Person | null,
    group: Person,
    day: Day,
    aside: number | null,
  ): void {
    const { parts } = scratch;
    const card = cardOf(spot);
    const first = at * MOST_PARTS;
    let end = first;
    const common = known.cards[card] as Row;
    const shared = strengthOf(group, card, settings.groupSpread, day, settings.groupDrift);
    let own = shared;
    if (aside === null) parts[end++] = common;
    parts[end++] = shared;
    if (child !== null) {
      own = strengthOf(child, card, settings.ownSpread, day, settings.ownDrift);
      parts[end++] = own;
      parts[end++] = child.ability as Row;
    }
    for (let left = contextsOf(spot); left !== 0; left &= left - 1) {
      parts[end++] = contextOf(child ?? group, lowestOf(left));
    }
    // Taken now, for the table may have grown.
    const { numbers } = table;
    const last = Math.max(
      numbers[shared + PRACTISED] as number,
      numbers[own + PRACTISED] as number,
    );
    const days =
      (numbers[shared + DAYS] as number) + (child === null ? 0 : (numbers[own + DAYS] as number));
    const loss = lossOf(settings, day - last, days);
    let mean = (aside === null ? 0 : (numbers[common + MEAN] as number)) - loss;
    let variance =
      (aside === null ? 0 : (numbers[common + VARIANCE] as number) + aside) +
      (loss * settings.forgettingSpread) ** 2;
    for (let part = first; part < end; part++) {
      const row = parts[part] as Row;
      mean += numbers[row + MEAN] as number;
      variance += numbers[row + VARIANCE] as number;
    }
    scratch.ends[at] = end;
    scratch.mean[at] = mean;
    scratch.variance[at] = variance;
  }

  function practise(count: number, reader: Person, day: Day, gain: number): void {
    const { spots } = scratch;
    for (let at = 0; at < count; at++) {
      const row = reader.cards[cardOf(spots[at] as Spot)] as Row;
      practiseStrength(table.numbers, row, day, gain);
    }
  }
}

/** No card asks for more strengths: its own in class, group and child, the child, a place, habits. */
const MOST_PARTS = 5 + HABITS.length;

/** Room for one reading, used again for the next. */
function makeScratch() {
  const blame: Blame = {
    well: new Float64Array(MOST_CARDS),
    wrong: new Float64Array(MOST_CARDS),
  };
  return {
    spots: new Int32Array(MOST_CARDS),
    mean: new Float64Array(MOST_CARDS),
    variance: new Float64Array(MOST_CARDS),
    chance: new Float64Array(MOST_CARDS),
    // The strengths that each card asks for: those of the nth begin at n · MOST_PARTS.
    parts: new Int32Array(MOST_CARDS * MOST_PARTS),
    ends: new Int32Array(MOST_CARDS),
    blame,
  };
}

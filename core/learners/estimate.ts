import type { Place } from '../language/correspondence.ts';
import type { Habit } from '../language/taught.ts';
import type { Day } from './day.ts';
import type { Known, Person } from './known.ts';
import { contextNumber } from './spots.ts';
import { chanceOf, lossOf, reached, type Strength } from './strength.ts';
import type { Row } from './strength-table.ts';
import { usualPlace } from './word-parts.ts';

/** How likely something is read rightly on a day, and how sure that is. */
export interface Estimate {
  /** The chance of a right reading, 0 to 1. */
  readonly p: number;
  /** The 90% interval: nine of ten true chances should lie from `low` to `high`. */
  readonly low: number;
  readonly high: number;
  /** How many readings of their own told something of it. */
  readonly n: number;
  /** The last day on which they had it themselves; null when never. */
  readonly last: Day | null;
}

/** Whose figures are asked for. */
export interface Who {
  readonly of: 'child' | 'group';
  readonly id: string;
}

/**
 * A card, where it usually stands in a word or in the place that is asked for,
 * on a day not before the last reading. For a child or group that never met it,
 * what is known of the others stands in, with an interval to match.
 */
export function estimateCard(
  known: Known,
  who: Who,
  card: string,
  day: Day,
  place: Place = usualPlace(card),
): Estimate {
  const { alone, shared, own } = partsOfCard(known, who, card, day, place);
  return estimateOf(known, [...alone, ...shared], own);
}

/** How many of some cards are read rightly on a day, and how sure that is. */
export interface CountEstimate {
  /** How many of the cards they had themselves. */
  readonly met: number;
  /** Of these: how many are expected to be read rightly. */
  readonly known: number;
  /** The 90% interval of that number. */
  readonly low: number;
  readonly high: number;
}

/**
 * How many of those cards that they have met are read rightly. What a card's interval owes to the
 * child itself, to forgetting and to places in a word errs to one side in all cards together; what it
 * owes to the card alone errs to either side. So the first adds up as it is, and the second as
 * independent errors do, by its squares.
 */
export function estimateCount(
  known: Known,
  who: Who,
  cards: readonly string[],
  day: Day,
): CountEstimate {
  let met = 0;
  let sum = 0;
  const below = { together: 0, alone: 0 };
  const above = { together: 0, alone: 0 };
  for (const card of cards) {
    const { alone, shared, own } = partsOfCard(known, who, card, day, usualPlace(card));
    const parts = [...alone, ...shared];
    const { p, low, high, n } = estimateOf(known, parts, own);
    if (n === 0) continue;
    met += 1;
    sum += p;
    const shareShared = varianceOf(shared) / varianceOf(parts);
    for (const [reach, side] of [
      [p - low, below],
      [high - p, above],
    ] as const) {
      side.together += reach * Math.sqrt(shareShared);
      side.alone += reach ** 2 * (1 - shareShared);
    }
  }
  const reachOf = ({ together, alone }: typeof below) => Math.sqrt(together ** 2 + alone);
  return { met, known: sum, low: sum - reachOf(below), high: sum + reachOf(above) };
}

/** What a card's strength is made of: what it shares with other cards, and what not. */
function partsOfCard(known: Known, who: Who, card: string, day: Day, place: Place) {
  const { settings, cards } = known;
  const person = personOf(known, who);
  const group = who.of === 'group' ? person : person?.home;
  const number = known.cardNumber.get(card) ?? -1;
  const ofGroup = known.strengthAt(group?.cards[number]);
  const own = known.strengthAt(person?.cards[number]);
  const alone = [
    known.strengthAt(cards[number]) ?? { mean: settings.start, variance: settings.cardSpread },
    drifted(ofGroup, settings.groupSpread, settings.groupDrift, day),
  ];
  const shared = [placePart(known, person, place)];
  if (who.of === 'child') {
    alone.push(drifted(own, settings.ownSpread, settings.ownDrift, day));
    shared.push(abilityPart(known, person));
  }
  const practised = [ofGroup, own].map((one) => one?.practised ?? Number.NEGATIVE_INFINITY);
  const days = (ofGroup?.days ?? 0) + (who.of === 'child' ? (own?.days ?? 0) : 0);
  const loss = lossOf(settings, day - Math.max(...practised), days);
  shared.push({ mean: -loss, variance: (loss * settings.forgettingSpread) ** 2 });
  return { alone, shared, own };
}

/** A card of middling strength for this child or group, standing in a place of a word. */
export function estimatePlace(known: Known, who: Who, place: Place): Estimate {
  const person = personOf(known, who);
  const parts = [...middling(known, person), placePart(known, person, place)];
  return estimateOf(known, parts, contextPart(known, person, place));
}

/** A card of middling strength for this child or group, where a habit is asked for. */
export function estimateHabit(known: Known, who: Who, habit: Habit): Estimate {
  const { settings } = known;
  const person = personOf(known, who);
  const own = contextPart(known, person, habit);
  const parts = [
    ...middling(known, person),
    own ?? { mean: settings.habit, variance: settings.habitSpread },
  ];
  return estimateOf(known, parts, own);
}

/** A normal belief about one part of a strength. */
type Part = Pick<Strength, 'mean' | 'variance'>;

/** 5 of 100 lie beyond this many standard deviations of a normal distribution, on either side. */
const DEVIATIONS = 1.6449;

function estimateOf({ settings }: Known, parts: readonly Part[], own?: Strength): Estimate {
  const mean = parts.reduce((sum, part) => sum + part.mean, 0);
  const variance = varianceOf(parts);
  const reach = DEVIATIONS * settings.widening * Math.sqrt(variance);
  const low = reached(settings, mean - reach);
  const high = reached(settings, mean + reach);
  return {
    p: Math.min(high, Math.max(low, chanceOf(settings, mean, variance))),
    low,
    high,
    n: own?.told ?? 0,
    last: own && Number.isFinite(own.practised) ? own.practised : null,
  };
}

function varianceOf(parts: readonly Part[]): number {
  return parts.reduce((sum, part) => sum + part.variance, 0);
}

/** What the cards of a child or group come to on average, and the child itself. */
function middling(known: Known, person: Person | undefined): readonly Part[] {
  const { settings, cards } = known;
  const meanIn = (row: Row | undefined) => known.strengthAt(row)?.mean ?? 0;
  const met = person?.cards.flatMap((own, number) => {
    if (own === undefined) return [];
    return meanIn(cards[number]) + meanIn(own) + meanIn(person.home?.cards[number]);
  });
  const mean =
    met === undefined || met.length === 0
      ? settings.start
      : met.reduce((sum, one) => sum + one, 0) / met.length;
  const ability = known.strengthAt(person?.ability);
  return [{ mean, variance: 0 }, ...(ability ? [ability] : [])];
}

function placePart(known: Known, person: Person | undefined, place: Place): Part {
  const { places, placeSpread } = known.settings;
  return contextPart(known, person, place) ?? { mean: places[place], variance: placeSpread };
}

function abilityPart(known: Known, person: Person | undefined): Part {
  return known.strengthAt(person?.ability) ?? { mean: 0, variance: known.settings.childSpread };
}

/** What is known of a place or habit in a child or group; undefined before any reading with it. */
function contextPart(
  known: Known,
  person: Person | undefined,
  of: Place | Habit,
): Strength | undefined {
  return known.strengthAt(person?.contexts[contextNumber(of)]);
}

/** A strength with the drift of the days since it was last looked at; its spread if unknown. */
function drifted(strength: Strength | undefined, spread: number, drift: number, day: Day): Part {
  if (strength === undefined) return { mean: 0, variance: spread };
  const { mean, variance } = strength;
  const grown = variance + drift * Math.max(0, day - strength.day);
  return { mean, variance: Math.min(Math.max(spread, variance), grown) };
}

function personOf(known: Known, { of, id }: Who): Person | undefined {
  return of === 'child' ? known.children.get(id) : known.groups.get(id);
}

import type { CardId } from '../language/card-id.ts';
import type { Day } from './day.ts';
import type { Who } from './estimate.ts';
import type { Observation } from './observation.ts';

/** A card on one day. */
export interface DayOfCard {
  readonly day: Day;
  /** How often it is known how it went. */
  readonly asked: number;
  /** How often it went wrong, of those. */
  readonly missed: number;
  /** How often it may have been what went wrong: it was not said. */
  readonly unclear: number;
}

/**
 * Every day on which a child or group had each card, oldest first, by card id. One pass, in which a day
 * is counted where its cards stand together in memory, and written into their histories when it is over.
 */
export function historiesOf(
  observations: readonly Observation[],
  task: Observation['task'],
  who: Who,
): ReadonlyMap<CardId, readonly DayOfCard[]> {
  const counts = new Map<CardId, Count>();
  let counted: Day | null = null;
  for (const observation of observations) {
    if (observation.task !== task || !isOf(observation, who)) continue;
    const { day, cards, right, broke } = observation;
    if (day !== counted) {
      if (counted !== null) endDay(counts, counted);
      counted = day;
    }
    const known = right ? cards.length : (broke ?? (cards.length === 1 ? 1 : 0));
    for (let at = 0; at < cards.length; at++) {
      const count = countOf(counts, cards[at] as CardId);
      count.isHad = true;
      if (at < known) count.asked += 1;
      if (!right && at === known - 1) count.missed += 1;
      if (known === 0) count.unclear += 1;
    }
  }
  if (counted !== null) endDay(counts, counted);
  return new Map([...counts].map(([card, { days }]) => [card, days]));
}

/** A card on the day that is being counted, and its days before. */
type Count = { -readonly [Key in Exclude<keyof DayOfCard, 'day'>]: DayOfCard[Key] } & {
  /** Whether it came up that day at all; after the card that broke it is not known how it went. */
  isHad: boolean;
  readonly days: DayOfCard[];
};

function countOf(counts: Map<CardId, Count>, card: CardId): Count {
  let count = counts.get(card);
  if (count === undefined) {
    count = { isHad: false, asked: 0, missed: 0, unclear: 0, days: [] };
    counts.set(card, count);
  }
  return count;
}

/** Writes the day that was counted into the histories, and begins to count again. */
function endDay(counts: ReadonlyMap<CardId, Count>, day: Day): void {
  for (const count of counts.values()) {
    if (!count.isHad) continue;
    const { asked, missed, unclear, days } = count;
    addDay(days, { day, asked, missed, unclear });
    count.isHad = false;
    count.asked = 0;
    count.missed = 0;
    count.unclear = 0;
  }
}

/** Adds a day in its place, which is mostly the end, or to what was counted of it before. */
function addDay(days: DayOfCard[], fresh: DayOfCard): void {
  let end = days.length;
  while (end > 0 && (days[end - 1] as DayOfCard).day > fresh.day) end -= 1;
  const same = days[end - 1];
  if (same?.day !== fresh.day) {
    if (end === days.length) days.push(fresh);
    else days.splice(end, 0, fresh);
    return;
  }
  days[end - 1] = {
    day: fresh.day,
    asked: same.asked + fresh.asked,
    missed: same.missed + fresh.missed,
    unclear: same.unclear + fresh.unclear,
  };
}

/** Whether a reading tells of this child or group. */
export function isOf({ child, groups }: Observation, { of, id }: Who): boolean {
  return of === 'child' ? child === id : groups.includes(id);
}

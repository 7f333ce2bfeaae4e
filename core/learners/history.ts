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

/** Every day on which a child or group had each card, oldest first, by card id. */
export function historiesOf(
  observations: readonly Observation[],
  task: Observation['task'],
  who: Who,
): ReadonlyMap<string, readonly DayOfCard[]> {
  const histories = new Map<string, Tally[]>();
  for (const observation of observations) {
    if (observation.task !== task || !isOf(observation, who)) continue;
    const { day, cards, right, broke } = observation;
    const known = right ? cards.length : (broke ?? (cards.length === 1 ? 1 : 0));
    for (let at = 0; at < cards.length; at++) {
      const tally = tallyOf(histories, cards[at] as string, day);
      if (at < known) tally.asked += 1;
      if (!right && at === known - 1) tally.missed += 1;
      if (known === 0) tally.unclear += 1;
    }
  }
  return histories;
}

/** A day that is still being counted. */
type Tally = { -readonly [Key in keyof DayOfCard]: DayOfCard[Key] };

/** The count of a card on a day, which is mostly the last one. Days are kept in their order. */
function tallyOf(histories: Map<string, Tally[]>, card: string, day: Day): Tally {
  let days = histories.get(card);
  if (days === undefined) {
    days = [];
    histories.set(card, days);
  }
  let end = days.length;
  while (end > 0 && (days[end - 1] as Tally).day > day) end -= 1;
  const known = days[end - 1];
  if (known?.day === day) return known;
  const fresh = { day, asked: 0, missed: 0, unclear: 0 };
  days.splice(end, 0, fresh);
  return fresh;
}

/** Whether a reading tells of this child or group. */
export function isOf({ child, groups }: Observation, { of, id }: Who): boolean {
  return of === 'child' ? child === id : groups.includes(id);
}

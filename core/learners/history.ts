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
  const histories = new Map<string, Map<Day, DayOfCard>>();
  for (const observation of observations) {
    if (observation.task !== task || !isOf(observation, who)) continue;
    const { day, cards, right, broke } = observation;
    const known = right ? cards.length : (broke ?? (cards.length === 1 ? 1 : 0));
    for (let at = 0; at < cards.length; at++) {
      const card = cards[at] as string;
      let days = histories.get(card);
      if (!days) {
        days = new Map();
        histories.set(card, days);
      }
      const before = days.get(day) ?? { day, asked: 0, missed: 0, unclear: 0 };
      days.set(day, {
        day,
        asked: before.asked + (at < known ? 1 : 0),
        missed: before.missed + (!right && at === known - 1 ? 1 : 0),
        unclear: before.unclear + (known === 0 ? 1 : 0),
      });
    }
  }
  return new Map(
    [...histories].map(([card, days]) => [
      card,
      [...days.values()].sort((one, other) => one.day - other.day),
    ]),
  );
}

/** Whether a reading tells of this child or group. */
export function isOf({ child, groups }: Observation, { of, id }: Who): boolean {
  return of === 'child' ? child === id : groups.includes(id);
}

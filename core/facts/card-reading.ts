import type { ChildId, GroupId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { Day } from '../learners/day.ts';
import type { Observation } from '../learners/observation.ts';

/** One card as it was read in one word, or alone. */
export interface CardAsRead {
  readonly day: Day;
  /** `unclear`: the word went wrong, and it was not said at which card. */
  readonly outcome: 'right' | 'missed' | 'unclear';
  /** Of a missed one: what was heard instead, as an observation has it; null if unsaid. */
  readonly heard: string | null;
  /** The cards of the word, and where this one stands among them, from 0. */
  readonly word: readonly CardId[];
  readonly at: number;
  /** In a short check; else in a warm-up. */
  readonly inCheck: boolean;
}

/** Readings by card id, each list oldest first. */
export type ReadingsByCard = ReadonlyMap<CardId, readonly CardAsRead[]>;

/**
 * What a reading says of each of its cards. Those before the one that broke
 * went well; of those behind it nothing is known, so they are left out.
 */
export function cardReadings({
  day,
  cards,
  right,
  broke,
  heard,
  from,
}: Observation): readonly CardAsRead[] {
  const end = right ? cards.length : (broke ?? (cards.length === 1 ? 1 : null));
  return cards.flatMap((_, at): readonly CardAsRead[] => {
    const where = { day, word: cards, at, inCheck: from === 'check' };
    if (end === null) return [{ ...where, outcome: 'unclear', heard: null }];
    if (at >= end) return [];
    const isMissed = !right && at === end - 1;
    return [{ ...where, outcome: isMissed ? 'missed' : 'right', heard: isMissed ? heard : null }];
  });
}

/**
 * What every child read alone, by child and card: with the whole class, with its
 * group and in checks alike, for a child is one child. Linear in the observations.
 */
export function readingsByChild(
  observations: readonly Observation[],
  task: Observation['task'],
): ReadonlyMap<ChildId, ReadingsByCard> {
  const byChild = new Map<ChildId, Map<CardId, CardAsRead[]>>();
  for (const observation of observations) {
    const { child } = observation;
    if (child === null || observation.task !== task) continue;
    let byCard = byChild.get(child);
    if (byCard === undefined) {
      byCard = new Map();
      byChild.set(child, byCard);
    }
    addReadings(byCard, observation);
  }
  return byChild;
}

/** What a group read, together and one by one, by card. */
export function readingsOfGroup(
  observations: readonly Observation[],
  task: Observation['task'],
  group: GroupId,
): ReadingsByCard {
  const byCard = new Map<CardId, CardAsRead[]>();
  for (const observation of observations) {
    if (observation.task === task && observation.groups.includes(group)) {
      addReadings(byCard, observation);
    }
  }
  return byCard;
}

function addReadings(byCard: Map<CardId, CardAsRead[]>, observation: Observation): void {
  for (const reading of cardReadings(observation)) {
    const card = reading.word[reading.at] as CardId;
    const list = byCard.get(card);
    if (list === undefined) byCard.set(card, [reading]);
    else insertByDay(list, reading);
  }
}

/** Adds a reading in its place, which is nearly always the end; those of one day keep their order. */
function insertByDay(list: CardAsRead[], reading: CardAsRead): void {
  let end = list.length;
  while (end > 0 && (list[end - 1] as CardAsRead).day > reading.day) end -= 1;
  if (end === list.length) list.push(reading);
  else list.splice(end, 0, reading);
}

import type { CardId } from '../language/card-id.ts';
import type { Day } from '../learners/day.ts';
import type { CardAsRead } from './card-reading.ts';

/** What was heard instead of a card, and how often. */
export interface HeardInstead {
  readonly heard: string;
  readonly count: number;
}

/**
 * What was seen of a card: counts and nothing that is estimated. All of them are
 * of the same readings, so that no two can contradict each other.
 */
export interface CardFacts {
  readonly card: CardId;
  /** How often it was read right and missed; what is unclear counts as neither. */
  readonly right: number;
  readonly missed: number;
  /** In how many words that went wrong, not said where, it stood besides. */
  readonly unclear: number;
  /** The last three that are clear, oldest first; fewer when there are no more. */
  readonly last: readonly ('right' | 'missed')[];
  /** Most often first. */
  readonly heard: readonly HeardInstead[];
  /** The days of the first and last reading that is counted; null for none. */
  readonly since: Day | null;
  readonly until: Day | null;
  /** The readings that are counted, oldest first. */
  readonly readings: readonly CardAsRead[];
}

/** So many calendar days before today are counted: four weeks (common practice, no source). */
export const LATELY_DAYS = 28;

/** The last so many readings are looked at one by one, and are counted however old they are. */
export const LAST_READINGS = 3;

/**
 * The facts of a card from its readings, oldest first. Counted is what was read
 * since a day, and the last three clear readings in any case: a card that rested
 * for a term is still told of by how it went then.
 */
export function cardFacts(
  card: CardId,
  readings: readonly CardAsRead[] | undefined,
  since: Day,
): CardFacts {
  const counted = countedOf(readings ?? [], since);
  const clear = counted.filter(({ outcome }) => outcome !== 'unclear');
  const missed = clear.filter(({ outcome }) => outcome === 'missed');
  return {
    card,
    right: clear.length - missed.length,
    missed: missed.length,
    unclear: counted.length - clear.length,
    last: clear.slice(-LAST_READINGS).map(({ outcome }) => outcome as 'right' | 'missed'),
    heard: countHeard(missed),
    since: counted[0]?.day ?? null,
    until: counted.at(-1)?.day ?? null,
    readings: counted,
  };
}

/** How many of the last three were missed. */
export function missedLast({ last }: Pick<CardFacts, 'last'>): number {
  return last.filter((outcome) => outcome === 'missed').length;
}

function countedOf(readings: readonly CardAsRead[], since: Day): readonly CardAsRead[] {
  let from = readings.length;
  let clear = 0;
  while (from > 0) {
    const before = readings[from - 1] as CardAsRead;
    if (before.day < since && clear >= LAST_READINGS) break;
    if (before.outcome !== 'unclear') clear += 1;
    from -= 1;
  }
  return readings.slice(from);
}

function countHeard(missed: readonly CardAsRead[]): readonly HeardInstead[] {
  const counts = new Map<string, number>();
  for (const { heard } of missed) {
    if (heard !== null) counts.set(heard, (counts.get(heard) ?? 0) + 1);
  }
  return [...counts]
    .map(([heard, count]) => ({ heard, count }))
    .sort((one, other) => other.count - one.count || (one.heard < other.heard ? -1 : 1));
}

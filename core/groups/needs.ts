import { missedLast } from '../facts/card-facts.ts';
import type { MapRow } from '../facts/class-map.ts';
import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { WhoChild } from '../learners/estimate.ts';

/** A card that some children need next, with what was seen of it. */
export interface GroupNeed {
  readonly card: CardId;
  /** Who missed it in one of its last three readings, by child id. */
  readonly missedBy: readonly ChildId[];
  /** How many have read it alone at all, of how many children. */
  readonly readers: number;
  readonly size: number;
  /** Of the last three readings of each of them together: how many there are, how many were missed. */
  readonly asked: number;
  readonly missed: number;
  /** The share of right readings to expect of them, 0 to 1. */
  readonly expected: number;
}

/** How many cards a group is told at most. */
const MOST_NEEDS = 6;

/**
 * What these children need next, from their rows of the class map, six cards at
 * most. What was seen goes first: what was missed lately by the most children,
 * then most often, then what most words need by `weight`; what is expected only
 * breaks ties. Cards that nobody missed lately come after all of those, and only
 * where some have not read them and less than `enough` is expected.
 */
export function needsOf(
  rows: readonly MapRow<WhoChild>[],
  enough: number,
  weight: (card: CardId) => number = () => 0,
): readonly GroupNeed[] {
  const cards = rows[0]?.cells.map(({ card }) => card) ?? [];
  return cards
    .map((card, at) => needOf(card, rows, at))
    .filter(
      ({ missedBy, readers, size, expected }) =>
        missedBy.length > 0 || (readers > 0 && readers < size && expected < enough),
    )
    .sort(
      (one, other) =>
        other.missedBy.length - one.missedBy.length ||
        other.missed - one.missed ||
        (one.missed === 0 ? one.expected - other.expected : 0) ||
        weight(other.card) - weight(one.card) ||
        one.expected - other.expected ||
        (one.card < other.card ? -1 : 1),
    )
    .slice(0, MOST_NEEDS);
}

/** Why it is needed, in words beside the card: `missed lately by 5 of 8, in 7 of 20 readings, the last three of each`. */
export function needSaid({ missedBy, missed, asked, readers, size, expected }: GroupNeed): string {
  if (missedBy.length === 0) {
    return `missed by nobody lately; ${readers} of ${size} have read it alone, about ${Math.round(expected * 10)} of 10 right is expected`;
  }
  if (size === 1) {
    return asked === 1
      ? 'missed in its only reading'
      : `missed in ${missed} of the last ${asked} readings`;
  }
  const who = `missed lately by ${missedBy.length} of ${size}`;
  return asked === 1
    ? `${who}, in the only reading`
    : `${who}, in ${missed} of ${asked} readings, the last three of each`;
}

function needOf(card: CardId, rows: readonly MapRow<WhoChild>[], at: number): GroupNeed {
  const cells = rows.flatMap(({ who, cells: row }) => {
    const cell = row[at];
    return cell === undefined ? [] : { id: who.id, ...cell };
  });
  const missers = cells.filter(({ seen }) => missedLast(seen) > 0);
  return {
    card,
    missedBy: missers.map(({ id }) => id),
    readers: cells.filter(({ seen }) => seen.last.length > 0).length,
    size: cells.length,
    asked: cells.reduce((sum, { seen }) => sum + seen.last.length, 0),
    missed: cells.reduce((sum, { seen }) => sum + missedLast(seen), 0),
    expected: cells.reduce((sum, { estimate }) => sum + estimate.p, 0) / Math.max(1, cells.length),
  };
}

import { missedLast } from '../facts/card-facts.ts';
import type { MapRow } from '../facts/class-map.ts';
import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
import type { SoundStyle } from '../language/phonemes.ts';
import type { WhoChild } from '../learners/estimate.ts';
import { cardsSaid } from '../story/card-said.ts';
import type { SlipPattern } from '../story/slip-pattern.ts';
import { waySaid } from '../story/way-said.ts';
import { type GroupNeed, needSaid, needsOf } from './needs.ts';
import { sharedWays } from './shared-ways.ts';

/** Something about a group that is worth saying aloud, with the children and cards it is about. */
export type StandsOut = {
  /** By child id, in the order of the rows. */
  readonly children: readonly ChildId[];
  readonly cards: readonly CardId[];
  /** How many children there are. */
  readonly size: number;
} & (
  | { readonly code: 'way'; readonly pattern: SlipPattern }
  | { readonly code: 'missed'; readonly need: GroupNeed }
  /** Taught last; `children` are those who have not read it alone yet. */
  | {
      readonly code: 'new';
      readonly read: number;
      /** How many of those who read it had it right each time. */
      readonly right: number;
    }
  /** These have read and missed nothing lately. */
  | { readonly code: 'clear' }
);

/** So many sentences are listened to. */
const MOST = 3;

/**
 * What stands out in these rows of the class map, three things at most: ways of going wrong that two
 * children or more share, then what was missed by the most, then how far what is `newest` has come, for
 * which there is always room; and where all that is too little, who missed nothing.
 */
export function standsOut(
  rows: readonly MapRow<WhoChild>[],
  newest: readonly CardId[],
  weight?: (card: CardId) => number,
): readonly StandsOut[] {
  const size = rows.length;
  const shared = sharedWays(rows).filter(({ children }) => children.length > 1);
  const told = new Set(shared.flatMap(({ cards }) => cards));
  const missed = needsOf(rows, 0, weight).filter(
    ({ card, missedBy }) => missedBy.length > 0 && !told.has(card),
  );
  const troubles: readonly StandsOut[] = [
    ...shared.map(({ pattern, children, cards }) => ({
      code: 'way' as const,
      pattern,
      children,
      cards,
      size,
    })),
    ...missed.map((need) => ({
      code: 'missed' as const,
      need,
      children: need.missedBy,
      cards: [need.card],
      size,
    })),
  ];
  const said = new Set(troubles.slice(0, MOST).flatMap(({ cards }) => cards));
  const fresh = newest
    .filter((card) => !said.has(card))
    .flatMap((card) => newCard(rows, card))
    .slice(0, 1);
  const clear = clearOf(rows);
  return [...troubles.slice(0, MOST - fresh.length), ...fresh, ...clear].slice(0, MOST);
}

/** It as a sentence up to the names, which follow where there are any: ‘6 of 20 drop the second consonant in st or bl’. */
export function standsOutSaid(one: StandsOut, style: SoundStyle): string {
  const { children, cards, size } = one;
  switch (one.code) {
    case 'way':
      return `${children.length} of ${size} ${waySaid(one.pattern, cardsSaid(cards, style, 'or'), 'many', style)}`;
    case 'missed':
      return `${capital(needSaid(one.need))}`;
    case 'new':
      return `New is ${cardsSaid(cards, style)}: ${newSaid(one)}`;
    case 'clear':
      return `${children.length} of ${size} missed nothing lately`;
  }
}

function newSaid({ read, right, size }: Extract<StandsOut, { code: 'new' }>): string {
  if (read === 0) return `none of ${size} has read it alone yet`;
  const well = `${right === 0 ? 'none' : right} of them right each time`;
  return read === size
    ? `all ${size} have read it alone, ${well}`
    : `${read} of ${size} have read it alone, ${well}; still to read it`;
}

/** A new card, while there is anyone who has not read it alone or missed it. */
function newCard(rows: readonly MapRow<WhoChild>[], card: CardId): readonly StandsOut[] {
  const cells = rows.map(({ who, cells }) => ({
    id: who.id,
    seen: cells.find((cell) => cell.card === card)?.seen,
  }));
  const readers = cells.filter(({ seen }) => seen !== undefined && seen.last.length > 0);
  const right = readers.filter(({ seen }) => seen?.missed === 0).length;
  if (right === rows.length) return [];
  const left = cells.filter((cell) => !readers.includes(cell)).map(({ id }) => id);
  const counts = { read: readers.length, right, size: rows.length };
  return [{ code: 'new', children: left, cards: [card], ...counts }];
}

function clearOf(rows: readonly MapRow<WhoChild>[]): readonly StandsOut[] {
  const clear = rows.filter(
    ({ cells }) =>
      cells.some(({ seen }) => seen.last.length > 0) &&
      cells.every(({ seen }) => missedLast(seen) === 0),
  );
  if (clear.length === 0) return [];
  return [
    { code: 'clear', children: clear.map(({ who }) => who.id), cards: [], size: rows.length },
  ];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

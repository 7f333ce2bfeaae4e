import type { Who } from '../learners/estimate.ts';
import { missedLast } from './card-facts.ts';
import type { MapCell, MapRow } from './class-map.ts';

/** A card, and who missed it lately. */
export interface Missed<Of extends Who = Who> {
  readonly card: MapCell['card'];
  /** Who missed it in one of its last three readings; who missed it most often of those goes first. */
  readonly by: readonly {
    readonly who: Of;
    /** Of how many readings, three at most, it was missed in how many. */
    readonly missed: number;
    readonly asked: number;
  }[];
  /** How many have read it alone at all. */
  readonly readers: number;
}

/**
 * Who lacks what, by what was seen: each card of these rows that somebody missed in one of its last three
 * readings. The card that most missed goes first, then the one that was missed most often, then as the cards stand.
 */
export function whoMissed<Of extends Who>(rows: readonly MapRow<Of>[]): readonly Missed<Of>[] {
  const cards = rows[0]?.cells.map(({ card }) => card) ?? [];
  const times = ({ by }: Missed) => by.reduce((sum, { missed }) => sum + missed, 0);
  return cards
    .map((card, at) => {
      const all = rows.flatMap(({ who, cells }) => {
        const seen = cells[at]?.seen;
        return seen && seen.last.length > 0
          ? { who, missed: missedLast(seen), asked: seen.last.length }
          : [];
      });
      const by = all
        .filter(({ missed }) => missed > 0)
        .sort((one, other) => other.missed - one.missed || one.asked - other.asked);
      return { card, by, readers: all.length };
    })
    .filter(({ by }) => by.length > 0)
    .sort((one, other) => other.by.length - one.by.length || times(other) - times(one));
}

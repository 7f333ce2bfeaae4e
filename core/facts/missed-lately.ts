import { type CardId, graphemeOf } from '../language/card-id.ts';
import { CLUSTER_FAMILIES } from '../language/clusters.ts';
import type { Habit } from '../language/taught.ts';
import type { CardAsRead } from './card-reading.ts';
import type { MapCell } from './class-map.ts';

/** What went wrong in one of the last three readings. */
export interface MissedLately {
  readonly cards: readonly CardId[];
  /** The habits of the clusters among them: who drops a sound of st will drop one of sp. */
  readonly habits: ReadonlySet<Habit>;
}

/** What a child missed lately, from its cells: no word with any of it is one that the child can read. */
export function missedLatelyOf(cells: readonly Pick<MapCell, 'card' | 'seen'>[]): MissedLately {
  const missed = cells.filter(({ seen }) => seen.last.includes('missed'));
  return {
    cards: missed.map(({ card }) => card),
    habits: new Set(
      missed.flatMap(({ card, seen }) => {
        const place = placeOf(seen.readings.findLast(({ outcome }) => outcome === 'missed'));
        return CLUSTER_FAMILIES.filter(
          (family) => family.letters.includes(graphemeOf(card)) && family.place === place,
        ).map(({ habit }) => habit);
      }),
    ),
  };
}

/** A cluster stands at the end of a word only where something stands before it. */
function placeOf(reading: CardAsRead | undefined): 'beginning' | 'ending' {
  return reading === undefined || reading.at === 0 ? 'beginning' : 'ending';
}

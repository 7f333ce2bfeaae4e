import type { CardId } from '../language/card-id.ts';
import type { DrillRecord } from '../log/class-state.ts';
import type { Part } from '../log/event.ts';
import { evidenceOf } from '../log/evidence.ts';
import { leftOver } from './left-over.ts';

/** How one card, sound or word of a warm-up stands by now. */
export interface CameThrough {
  readonly state: 'read' | 'up';
  /** The cards that broke here, by id, each once; where it was not said which, none. */
  readonly broke: readonly CardId[];
  readonly isMarked: boolean;
}

/**
 * What has come of each place of a warm-up's plan, by `placeKey`. What has not come up is not in it;
 * of a warm-up that has ended nothing is up.
 */
export function cameThrough(record: DrillRecord): ReadonlyMap<string, CameThrough> {
  const came = new Map<string, CameThrough>();
  for (const { part, place, marks } of evidenceOf(record)) {
    const broke = marks.flatMap(({ cards, broke }) => (broke ? (cards[broke - 1] ?? []) : []));
    came.set(placeKey(part, place), {
      state: 'read',
      broke: [...new Set(broke)],
      isMarked: marks.length > 0,
    });
  }
  const { up } = record.ended === null ? leftOver(record) : { up: undefined };
  if (up) {
    const key = placeKey(up.part, up.place);
    came.set(key, { broke: [], isMarked: false, ...came.get(key), state: 'up' });
  }
  return came;
}

/** A place of a plan as a key. */
export function placeKey(part: Part, place: number): string {
  return `${part} ${place}`;
}

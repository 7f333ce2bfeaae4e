import type { CardId } from '../language/card-id.ts';
import { PLACES, type Place } from '../language/correspondence.ts';
import { HABITS, type Habit } from '../language/taught.ts';
import { wordParts } from '../learners/word-parts.ts';
import type { MapCell } from './class-map.ts';

/** How cards went in one place of a word, or where one habit was asked for. */
export interface PlaceFacts {
  readonly of: Place | Habit;
  readonly right: number;
  readonly missed: number;
  /** What was missed there, most often first. */
  readonly cards: readonly CardId[];
}

/**
 * How a child's cards went by their place in a word, and by the habits that were asked for: counts of
 * the readings that its cells count, so that they add up to theirs. Cards that were read alone stand
 * in no place. What was never asked is left out.
 */
export function placeFacts(
  cells: readonly Pick<MapCell, 'card' | 'seen'>[],
): readonly PlaceFacts[] {
  const all = new Map<Place | Habit, { right: number; missed: Map<CardId, number> }>();
  for (const { card, seen } of cells) {
    for (const { outcome, word, at } of seen.readings) {
      if (outcome === 'unclear') continue;
      const { places, habits } = wordParts(word);
      for (const of of [places[at] ?? [], habits[at] ?? []].flat()) {
        const one = all.get(of) ?? { right: 0, missed: new Map<CardId, number>() };
        all.set(of, one);
        if (outcome === 'right') one.right += 1;
        else one.missed.set(card, (one.missed.get(card) ?? 0) + 1);
      }
    }
  }
  return [...PLACES, ...HABITS].flatMap((of): readonly PlaceFacts[] => {
    const one = all.get(of);
    if (one === undefined) return [];
    const missed = [...one.missed].sort(([, some], [, others]) => others - some);
    return [
      {
        of,
        right: one.right,
        missed: missed.reduce((sum, [, times]) => sum + times, 0),
        cards: missed.map(([card]) => card),
      },
    ];
  });
}

import { keepApart } from '../drills/keep-apart.ts';
import { type Random, shuffled } from '../random.ts';
import type { CheckItem } from './check-form.ts';

/**
 * Items in rounds, so that none comes more than once oftener than another; those that are near each other
 * do not follow each other where that can be helped, from round to round neither. As many as `count`; none
 * of none.
 */
export function inRounds(
  all: readonly CheckItem[],
  isNear: (one: CheckItem, other: CheckItem) => boolean,
  count: number,
  random: Random,
): readonly CheckItem[] {
  const items: CheckItem[] = [];
  while (all.length > 0 && items.length < count) {
    const round = keepApart(shuffled(all, random), isNear, items.at(-1));
    items.push(...round.slice(0, count - items.length));
  }
  return items;
}

import type { CardId } from '../language/card-id.ts';
import { markingOf } from './belief/marking.ts';
import type { Day } from './day.ts';
import { type CountEstimate, estimateCount, type Who } from './estimate.ts';
import { isOf } from './history.ts';
import type { Observation } from './observation.ts';
import { startTracker } from './tracker.ts';

/** What was known of some cards by the end of a day. */
export interface GrowthPoint extends CountEstimate {
  readonly day: Day;
}

/** On so many days at most growth is looked at. */
const MOST_POINTS = 40;

/**
 * How what someone knows of these cards grew, from the first day on which they are known to have
 * read one until `today`: only from what had been read by then, forgetting counted in. Oldest first;
 * empty when they have read none. Linear in the observations.
 */
export function growthOf(
  observations: readonly Observation[],
  task: Observation['task'],
  who: Who,
  cards: readonly CardId[],
  today: Day,
): readonly GrowthPoint[] {
  const own = observations
    .filter((one) => one.task === task && one.day <= today)
    .toSorted((one, other) => one.day - other.day);
  const first = own.find((one) => isOf(one, who) && one.cards.some((id) => cards.includes(id)));
  if (first === undefined) return [];
  const tracker = startTracker(markingOf(own, task));
  const points: GrowthPoint[] = [];
  let next = 0;
  for (const day of daysBetween(first.day, today)) {
    for (; (own[next]?.day ?? Number.POSITIVE_INFINITY) <= day; next++) {
      tracker.observe(own[next] as Observation);
    }
    points.push({ day, ...estimateCount(tracker.known, who, cards, day) });
  }
  return points;
}

/** The last day and days before it at even distances, the first one among them. */
function daysBetween(first: Day, last: Day): readonly Day[] {
  const count = Math.min(MOST_POINTS, last - first + 1);
  if (count <= 1) return [last];
  return Array.from({ length: count }, (_, at) =>
    Math.round(first + ((last - first) * at) / (count - 1)),
  );
}

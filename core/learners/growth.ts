import type { Day } from './day.ts';
import { estimateCard, type Who } from './estimate.ts';
import { isOf } from './history.ts';
import type { Observation } from './observation.ts';
import { startTracker } from './tracker.ts';

/** What was known of some cards by the end of a day. */
export interface GrowthPoint {
  readonly day: Day;
  /** How many of the cards they had read themselves by then. */
  readonly met: number;
  /**
   * Of those met: how many they are expected to read rightly, with the sums of the low and of the
   * high ends of the cards' 90% intervals. These would hold if all cards erred to one side together,
   * so that the sum is at least as sure as they say.
   */
  readonly known: number;
  readonly low: number;
  readonly high: number;
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
  cards: readonly string[],
  today: Day,
): readonly GrowthPoint[] {
  const own = observations
    .filter((one) => one.task === task && one.day <= today)
    .toSorted((one, other) => one.day - other.day);
  const first = own.find((one) => isOf(one, who) && one.cards.some((id) => cards.includes(id)));
  if (first === undefined) return [];
  const tracker = startTracker();
  const points: GrowthPoint[] = [];
  let next = 0;
  for (const day of daysBetween(first.day, today)) {
    for (; (own[next]?.day ?? Number.POSITIVE_INFINITY) <= day; next++) {
      tracker.observe(own[next] as Observation);
    }
    const met = cards
      .map((card) => estimateCard(tracker.known, who, card, day))
      .filter(({ n }) => n > 0);
    const sum = (share: 'p' | 'low' | 'high') => met.reduce((all, one) => all + one[share], 0);
    points.push({ day, met: met.length, known: sum('p'), low: sum('low'), high: sum('high') });
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

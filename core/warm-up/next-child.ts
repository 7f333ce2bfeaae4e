/**
 * Who reads next.
 *
 * Problem: every child reads about as often as the others and none is forgotten,
 * and yet nobody can count on having had her turn. Going round by a list is
 * fair and foreseen; drawing lots forgets some.
 *
 * Method: lots are drawn among those who have read the fewest times and those
 * who have read once more, the former weighing more; not the one who has just
 * read. So no child reads `k + 2` times before every other present child has
 * read `k` times, and one who has just read may be next but one. A child who
 * was away is not asked again and again to catch up: it is held to have read
 * as often as the fairness above would have made it. How the lots weigh is
 * ours.
 */
import type { ChildId } from '../ids.ts';
import type { Random } from '../random.ts';

/** The lot of one who has read least weighs so many times that of one who has read once more. */
const LEAST_WEIGHS = 6;

/** Whom the next readers are drawn from. */
export interface CallSpec {
  /** Who is there, by id; repeats count once. */
  readonly present: readonly ChildId[];
  /** Who has read so far, oldest first; those who are not there any more may be among them. */
  readonly calls: readonly ChildId[];
}

/** The next `count` children, were they all to read in that order. */
export function nextChildren(spec: CallSpec, count: number, random: Random): readonly ChildId[] {
  const queue: ChildId[] = [];
  while (queue.length < count) {
    const next = nextChild({ ...spec, calls: [...spec.calls, ...queue] }, random);
    if (next === null) break;
    queue.push(next);
  }
  return queue;
}

/** The child who reads next; null when none is there. */
function nextChild({ present, calls }: CallSpec, random: Random): ChildId | null {
  const there = [...new Set(present)];
  const turns = turnsOf(there, calls);
  const last = calls.at(-1);
  const others = there.length > 1 ? there.filter((child) => child !== last) : there;
  const least = Math.min(...there.map((child) => turns.get(child) ?? 0));
  const lots = others.flatMap((child) => {
    const more = (turns.get(child) ?? 0) - least;
    if (more > 1) return [];
    return Array.from({ length: more === 0 ? LEAST_WEIGHS : 1 }, () => child);
  });
  const drawn = lots.length > 0 ? lots : others;
  return drawn.length === 0 ? null : (drawn[random.below(drawn.length)] as ChildId);
}

/** How often each has read; one left behind by more than two was away, and is brought up to that. */
function turnsOf(
  there: readonly ChildId[],
  calls: readonly ChildId[],
): ReadonlyMap<ChildId, number> {
  const turns = new Map(there.map((child) => [child, 0]));
  for (const child of calls) {
    const now = turns.get(child);
    if (now === undefined) continue;
    turns.set(child, now + 1);
    for (const [other, count] of turns) turns.set(other, Math.max(count, now - 1));
  }
  return turns;
}

import type { ChildId } from '../ids.ts';
import type { CardId } from '../language/card-id.ts';
/**
 * Small groups of children who need the same next.
 *
 * **Problem.** Part the children into groups of given sizes so that those in one
 * group differ as little as can be in what they still need.
 *
 * **Method.** A child is the list of its gaps, card by card: how often it would
 * go wrong. A group costs the sum of squared distances from its mean (k-means
 * with fixed sizes; no fast exact method is known). Children are laid in order
 * of how much they need and cut into groups; then two children of different
 * groups change places as long as that lowers the cost. It ends, for the cost
 * falls each time; it is no proof of the best, and she moves them by hand.
 *
 * **Rejected.** Cutting by a total score alone: two children may lack as much
 * and nothing alike.
 */

/** A child, and its chance of reading each card correctly, 0 to 1; a card that is absent is not needed. */
export interface ChildChances {
  readonly id: ChildId;
  readonly chances: ReadonlyMap<CardId, number>;
}

/** Why no groups can be suggested. */
export interface GroupsError {
  readonly code: 'too-few-places' | 'twice';
  readonly message: string;
}

/**
 * Groups of at most the given sizes, filled in proportion; every child is in
 * exactly one. The same children, in any order, give the same groups. Groups
 * stand in the order of `sizes`, those who need most first; the children of a
 * group by id.
 */
export function suggestGroups(
  children: readonly ChildChances[],
  sizes: readonly number[],
): { readonly groups: readonly (readonly ChildId[])[] } | { readonly error: GroupsError } {
  const places = sizes.reduce((sum, size) => sum + Math.max(0, Math.floor(size)), 0);
  if (new Set(children.map(({ id }) => id)).size < children.length) {
    return failure('twice', 'One child is there twice. Take one out and try again.');
  }
  if (places < children.length) {
    const message = `These groups have ${places} places for ${children.length} children. Add a group or make one larger.`;
    return failure('too-few-places', message);
  }
  const cards = cardsOf(children);
  const all = children
    .map((child): Member => {
      const gaps = cards.map((card) => 1 - (child.chances.get(card) ?? 1));
      return { child, gaps, total: gaps.reduce((sum, gap) => sum + gap, 0) };
    })
    .sort((one, other) => other.total - one.total || (one.child.id < other.child.id ? -1 : 1));
  const groups: Member[][] = [];
  let from = 0;
  for (const size of filled(sizes, children.length)) {
    groups.push(all.slice(from, from + size));
    from += size;
  }
  exchange(groups);
  return { groups: groups.map((group) => group.map(({ child }) => child.id).sort()) };
}

/** Every card that one of them has a chance for, in the order of their ids. */
function cardsOf(children: readonly ChildChances[]): readonly CardId[] {
  return [...new Set(children.flatMap(({ chances }) => [...chances.keys()]))].sort();
}

interface Member {
  readonly child: ChildChances;
  /** By card. */
  readonly gaps: readonly number[];
  readonly total: number;
}

/** How many of `count` go into each group: sizes in proportion, by largest remainder, none above its size. */
export function filled(sizes: readonly number[], count: number): readonly number[] {
  const whole = sizes.map((size) => Math.max(0, Math.floor(size)));
  const places = whole.reduce((sum, size) => sum + size, 0);
  const exact = whole.map((size) => (places === 0 ? 0 : (size * count) / places));
  const given = exact.map(Math.floor);
  const byRest = exact
    .map((share, at) => ({ at, rest: share - Math.floor(share) }))
    .sort((one, other) => other.rest - one.rest || one.at - other.at);
  let left = count - given.reduce((sum, size) => sum + size, 0);
  for (const { at } of byRest) {
    if (left === 0) break;
    given[at] = (given[at] as number) + 1;
    left -= 1;
  }
  return given;
}

/** A change must be worth more than rounding. */
const WORTH = 1e-9;

function exchange(groups: Member[][]): void {
  let changed = true;
  while (changed) {
    changed = false;
    for (let first = 0; first < groups.length; first++) {
      for (let second = first + 1; second < groups.length; second++) {
        changed = exchangeBetween(groups[first] as Member[], groups[second] as Member[]) || changed;
      }
    }
  }
}

/**
 * Exchanging two members leaves the sizes as they are, so that the sum of
 * squared distances falls by what the squared sums of the groups, each over its
 * size, gain.
 */
function exchangeBetween(left: Member[], right: Member[]): boolean {
  const sums = [left, right].map(sumOf) as [number[], number[]];
  let changed = false;
  for (let one = 0; one < left.length; one++) {
    for (let other = 0; other < right.length; other++) {
      const goes = (left[one] as Member).gaps;
      const comes = (right[other] as Member).gaps;
      let gain = 0;
      for (let card = 0; card < goes.length; card++) {
        const step = (comes[card] as number) - (goes[card] as number);
        const [here, there] = [sums[0][card] as number, sums[1][card] as number];
        gain += (2 * here * step + step * step) / left.length;
        gain += (-2 * there * step + step * step) / right.length;
      }
      if (gain <= WORTH) continue;
      [left[one], right[other]] = [right[other] as Member, left[one] as Member];
      for (let card = 0; card < goes.length; card++) {
        const step = (comes[card] as number) - (goes[card] as number);
        sums[0][card] = (sums[0][card] as number) + step;
        sums[1][card] = (sums[1][card] as number) - step;
      }
      changed = true;
    }
  }
  return changed;
}

function sumOf(group: readonly Member[]): number[] {
  const cards = group[0]?.gaps.length ?? 0;
  return Array.from({ length: cards }, (_, card) =>
    group.reduce((sum, { gaps }) => sum + (gaps[card] as number), 0),
  );
}

function failure(code: GroupsError['code'], message: string): { readonly error: GroupsError } {
  return { error: { code, message } };
}

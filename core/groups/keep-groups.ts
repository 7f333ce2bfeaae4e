/**
 * Groups that stay: today's, with only those changes that are clearly worth it.
 *
 * **Problem.** Groups suggested from scratch each week tear most children apart, though
 * what they need has hardly changed: differences of a few readings decide.
 *
 * **Method.** Start from today's groups. Children without a place go where they
 * fit best; then two children of different groups change places when that
 * lessens the differences within the groups (the cost of suggest-groups.ts) in at
 * least `SURE` of the drawings of what may be true by the intervals. The change
 * with the greatest gain on average is made, then it is looked again, until none
 * is clear. Each lowers the average cost, so that it ends.
 */
import type { ChildId } from '../ids.ts';
import type { Random } from '../random.ts';
import { coverOf, cutByLevel, type Numbers, sumOf } from './cover.ts';
import { type ChildBeliefs, drawGaps, expectedGaps, type Gaps } from './gap-draws.ts';
import { type GroupsError, suggestGroups } from './suggest-groups.ts';

/** What groups are kept from. */
export interface KeepSpec {
  readonly children: readonly ChildBeliefs[];
  /** Today's groups, by child id; children in none of them have no place yet. */
  readonly today: readonly (readonly ChildId[])[];
  /** How many children each group takes at most. */
  readonly sizes: readonly number[];
  readonly random: Random;
}

/** A change that is suggested. */
export type GroupChange =
  /** Two children change places. `sure`: in what share of the drawings it is a gain, 0 to 1. */
  | {
      readonly kind: 'exchange';
      readonly children: readonly [ChildId, ChildId];
      readonly sure: number;
    }
  /** A child that had no place in these groups comes to one, by number from 0. */
  | { readonly kind: 'place'; readonly child: ChildId; readonly group: number };

/** The groups that are suggested, by child id, and what would change. */
export interface KeptGroups {
  readonly groups: readonly (readonly ChildId[])[];
  /** `nothing` where there were no such groups to start from; then no change is listed. */
  readonly from: 'today' | 'nothing';
  readonly changes: readonly GroupChange[];
  /** What share of the differences between children lies between groups, 0 to 1: of these, and of a plain cut by level. */
  readonly covered: number;
  readonly coveredByLevel: number;
}

/** A change must be a gain in so large a share of the drawings. */
const SURE = 0.8;
const DRAWINGS = 50;

/**
 * Suggests groups of at most these sizes. Today's are kept where as many groups
 * have children as there are sizes. The same spec gives the same groups; asked
 * again of its own answer, with the same chance, it changes nothing.
 */
export function keepGroups(spec: KeepSpec): KeptGroups | { readonly error: GroupsError } {
  const { children, sizes, random } = spec;
  const cards = [...new Set(children.flatMap(({ cards: known }) => [...known.keys()]))].sort();
  const chances = children.map(({ id, cards: known }) => ({
    id,
    chances: new Map([...known].map(([card, { p }]) => [card, p])),
  }));
  const fresh = suggestGroups(chances, sizes);
  if ('error' in fresh) return fresh;
  const draws = drawGaps(children, cards, DRAWINGS, random);
  const means = expectedGaps(children, cards);
  const numberOf = new Map(children.map(({ id }, at) => [id, at]));
  const named = (groups: Numbers) =>
    groups.map((group) => group.map((at) => children[at]?.id as ChildId).sort());
  const today = spec.today
    .map((ids) => ids.flatMap((id) => numberOf.get(id) ?? []))
    .filter((group) => group.length > 0);
  const coveredByLevel = coverOf(cutByLevel(means, sizes), draws);
  if (today.length !== sizes.length) {
    const groups = fresh.groups.map((ids) => ids.map((id) => numberOf.get(id) as number));
    const covered = coverOf(groups, draws);
    return { groups: fresh.groups, from: 'nothing', changes: [], covered, coveredByLevel };
  }
  const groups = today.map((group) => [...group]);
  const placed = placeAll(groups, sizesByRank(today, sizes), means).map(
    ({ child, group }): GroupChange => ({
      kind: 'place',
      child: children[child]?.id as ChildId,
      group,
    }),
  );
  const exchanged = exchangeClear(groups, draws).map(
    ({ one, other, sure }): GroupChange => ({
      kind: 'exchange',
      children: [children[one]?.id as ChildId, children[other]?.id as ChildId],
      sure,
    }),
  );
  return {
    groups: named(groups),
    from: 'today',
    changes: [...placed, ...exchanged],
    covered: coverOf(groups, draws),
    coveredByLevel,
  };
}

/** The largest size for the largest group, and so on, so that no order of the sizes moves anyone. */
function sizesByRank(groups: Numbers, sizes: readonly number[]): readonly number[] {
  const ordered = sizes.toSorted((one, other) => other - one);
  const ranked = groups
    .map((group, at) => ({ at, count: group.length }))
    .sort((one, other) => other.count - one.count || one.at - other.at);
  return groups.map((_, at) => ordered[ranked.findIndex((one) => one.at === at)] as number);
}

/** Takes out who fits least where a group is above its size, then gives everyone without a place one. */
function placeAll(
  groups: number[][],
  sizes: readonly number[],
  means: readonly Gaps[],
): readonly { readonly child: number; readonly group: number }[] {
  const there = new Set(groups.flat());
  const free = means.flatMap((_, child) => (there.has(child) ? [] : child));
  for (const [at, group] of groups.entries()) {
    while (group.length > (sizes[at] ?? 0)) {
      const costs = group.map((child) => distance(child, group, means));
      free.push(...group.splice(costs.indexOf(Math.max(...costs)), 1));
    }
  }
  return free.map((child) => {
    const open = groups.flatMap((group, at) => (group.length < (sizes[at] ?? 0) ? at : []));
    const costs = open.map((at) => distance(child, groups[at] ?? [], means));
    const group = open[costs.indexOf(Math.min(...costs))] as number;
    groups[group]?.push(child);
    return { child, group };
  });
}

/** The squared distance of a child from the mean of the others of a group; 0 when there are none. */
function distance(child: number, group: readonly number[], means: readonly Gaps[]): number {
  const others = group.filter((other) => other !== child);
  const own = means[child] as Gaps;
  if (others.length === 0) return 0;
  let sum = 0;
  for (let card = 0; card < own.length; card++) {
    const mean =
      others.reduce((all, other) => all + (means[other]?.[card] as number), 0) / others.length;
    sum += ((own[card] as number) - mean) ** 2;
  }
  return sum;
}

interface Exchange {
  readonly one: number;
  readonly other: number;
  readonly sure: number;
  readonly gain: number;
}

function exchangeClear(
  groups: number[][],
  draws: readonly (readonly Gaps[])[],
): readonly Exchange[] {
  const made: Exchange[] = [];
  for (;;) {
    const best = bestExchange(groups, draws);
    if (best === null) return made;
    for (const group of groups) {
      const [one, other] = [group.indexOf(best.one), group.indexOf(best.other)];
      if (one >= 0) group[one] = best.other;
      else if (other >= 0) group[other] = best.one;
    }
    made.push(best);
  }
}

/** The clear exchange with the greatest gain on average; null when none is clear. */
function bestExchange(
  groups: readonly (readonly number[])[],
  draws: readonly (readonly Gaps[])[],
): Exchange | null {
  const sums = draws.map((gaps) => groups.map((group) => sumOf(group, gaps)));
  let best: Exchange | null = null;
  for (let left = 0; left < groups.length; left++) {
    for (let right = left + 1; right < groups.length; right++) {
      for (const one of groups[left] ?? []) {
        for (const other of groups[right] ?? []) {
          const gains = draws.map((gaps, draw) =>
            gainOf(
              gaps[one] as Gaps,
              gaps[other] as Gaps,
              { sum: sums[draw]?.[left] as Gaps, count: groups[left]?.length as number },
              { sum: sums[draw]?.[right] as Gaps, count: groups[right]?.length as number },
            ),
          );
          const sure = gains.filter((gain) => gain > 0).length / gains.length;
          const gain = gains.reduce((all, each) => all + each, 0) / gains.length;
          if (sure >= SURE && gain > WORTH && gain > (best?.gain ?? 0)) {
            best = { one, other, sure, gain };
          }
        }
      }
    }
  }
  return best;
}

/** A change must be worth more than rounding. */
const WORTH = 1e-9;

interface Side {
  readonly sum: Gaps;
  readonly count: number;
}

/** By how much the cost falls when `goes` leaves the left side for the right, and `comes` the other way. */
function gainOf(goes: Gaps, comes: Gaps, left: Side, right: Side): number {
  let gain = 0;
  for (let card = 0; card < goes.length; card++) {
    const step = (comes[card] as number) - (goes[card] as number);
    gain += (2 * (left.sum[card] as number) * step + step * step) / left.count;
    gain += (-2 * (right.sum[card] as number) * step + step * step) / right.count;
  }
  return gain;
}

import type { Gaps } from './gap-draws.ts';
import { filled } from './suggest-groups.ts';

/** Groups of children by number. */
export type Numbers = readonly (readonly number[])[];

/**
 * What share of the differences between children lies between groups and not
 * within them, 0 to 1: by sums of squares, on average over drawings of the gaps.
 */
export function coverOf(groups: Numbers, draws: readonly (readonly Gaps[])[]): number {
  const shares = draws.map((gaps) => {
    const everyone = groups.flat();
    const all = spreadOf(everyone, gaps);
    const within = groups.reduce((sum, group) => sum + spreadOf(group, gaps), 0);
    return all > 0 ? 1 - within / all : 0;
  });
  return shares.reduce((sum, share) => sum + share, 0) / Math.max(1, shares.length);
}

/** The sum of squared distances from the mean. */
function spreadOf(group: readonly number[], gaps: readonly Gaps[]): number {
  if (group.length === 0) return 0;
  const sum = sumOf(group, gaps);
  let spread = 0;
  for (let card = 0; card < sum.length; card++) {
    for (const child of group) spread += (gaps[child]?.[card] as number) ** 2;
    spread -= (sum[card] as number) ** 2 / group.length;
  }
  return spread;
}

/** The sum of the gaps of some children, by card. */
export function sumOf(group: readonly number[], gaps: readonly Gaps[]): Gaps {
  const sum = new Float64Array(gaps[0]?.length ?? 0);
  for (const child of group) {
    const own = gaps[child] as Gaps;
    for (let card = 0; card < sum.length; card++) {
      sum[card] = (sum[card] as number) + (own[card] as number);
    }
  }
  return sum;
}

/** Children cut by how much they need in all: those who need most in the first group, and so on. */
export function cutByLevel(means: readonly Gaps[], sizes: readonly number[]): Numbers {
  const totals = means.map((gaps) => gaps.reduce((sum, gap) => sum + gap, 0));
  const order = means
    .map((_, child) => child)
    .sort((one, other) => (totals[other] as number) - (totals[one] as number) || one - other);
  let from = 0;
  return filled(sizes, means.length).map((size) => {
    from += size;
    return order.slice(from - size, from);
  });
}

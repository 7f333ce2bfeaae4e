import { EDITION, earlierOrder } from '../sequence/earlier-orders.ts';
import { intoOrder } from '../sequence/into-order.ts';
import { itemKey } from '../sequence/item.ts';
import { makeProgress, type Progress } from '../sequence/progress.ts';
import type { Item, Sequence } from '../sequence/sequence.ts';

/**
 * Where a group stands, as the log keeps it. The built-in order is not copied
 * into the log but named by its edition and by what was taught last, so that
 * what a later version changes in it neither moves the group nor changes what
 * the group was taught.
 */
export interface GroupPlace {
  /** Her own order; null for the built-in one. */
  readonly own: Sequence | null;
  /** Which edition of the built-in order was meant; the first where it is missing. */
  readonly edition?: number | undefined;
  /** The last step taught; 0 for none yet. */
  readonly upTo: number;
  /** `itemKey` of each item of that step; empty for none yet. */
  readonly at: readonly string[];
  readonly added: readonly Item[];
  readonly dropped: readonly Item[];
}

/** A group's place as the log keeps it. An order other than `builtIn` itself is her own. */
export function makeGroupPlace(progress: Progress, builtIn: Sequence): GroupPlace {
  const { sequence, upTo, added, dropped } = progress;
  return {
    own: sequence === builtIn ? null : sequence,
    edition: EDITION,
    upTo,
    at: (sequence.steps[upTo - 1]?.items ?? []).map(itemKey),
    added,
    dropped,
  };
}

/**
 * A group's place in the orders there are now. A place in an earlier edition of
 * the built-in order is carried over item by item. In this edition it is the
 * step with just the items that were taught last (of several, the nearest); where
 * there is none, the last step that holds any of them; when all are gone, the
 * step of the same number.
 */
export function progressOf(standing: GroupPlace, builtIn: Sequence): Progress {
  const { own, upTo, at, added, dropped } = standing;
  const earlier = own === null ? earlierOrder(standing.edition ?? 1) : null;
  if (earlier) {
    const then = at.length > 0 ? placeOf(at, upTo, earlier) : upTo;
    return intoOrder({ ...makeProgress(earlier, then), added, dropped }, builtIn);
  }
  const place = own === null && at.length > 0 ? placeOf(at, upTo, builtIn) : upTo;
  return { ...makeProgress(own ?? builtIn, place), added, dropped };
}

function placeOf(at: readonly string[], upTo: number, { steps }: Sequence): number {
  const keys = new Set(at);
  const same = steps.filter(
    ({ items }) => items.length === keys.size && items.every((item) => keys.has(itemKey(item))),
  );
  if (same.length > 0) {
    const away = same.map(({ number }) => Math.abs(number - upTo));
    return same[away.indexOf(Math.min(...away))]?.number ?? upTo;
  }
  const last = steps.findLast(({ items }) => items.some((item) => keys.has(itemKey(item))));
  return last?.number ?? upTo;
}

import { itemKey } from '../sequence/item.ts';
import { makeProgress, type Progress } from '../sequence/progress.ts';
import type { Item, Sequence } from '../sequence/sequence.ts';

/**
 * Where a group stands, as the log keeps it. The built-in order is not copied
 * into the log but named by what was taught last, so that a step that a later
 * version puts in or takes out does not move the group.
 */
export interface GroupPlace {
  /** Her own order; null for the built-in one. */
  readonly own: Sequence | null;
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
    upTo,
    at: (sequence.steps[upTo - 1]?.items ?? []).map(itemKey),
    added,
    dropped,
  };
}

/**
 * A group's place in the orders there are now. In the built-in order it is the
 * step with just the items that were taught last, wherever that has moved to
 * (of several, the nearest); when that was changed, the last step that holds
 * any of them; when all are gone, the step of the same number.
 */
export function progressOf(standing: GroupPlace, builtIn: Sequence): Progress {
  const { own, upTo, at, added, dropped } = standing;
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

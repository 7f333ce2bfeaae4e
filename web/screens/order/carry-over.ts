import { itemKey } from '../../../core/sequence/item.ts';
import type { Progress } from '../../../core/sequence/progress.ts';
import type { Item, Sequence } from '../../../core/sequence/sequence.ts';

/**
 * Where the class stands in another order: the line goes after the longest
 * beginning of it of which every step has been taught; whatever else was taught
 * is added singly, and what she took out stays out. Nothing that was taught is
 * lost, nothing is added.
 */
export function carryOver(now: Progress, next: Sequence): Progress {
  const taught = taughtItems(now);
  const firstUntaught = next.steps.findIndex(({ items }) =>
    items.some((item) => !taught.has(itemKey(item))),
  );
  const upTo = firstUntaught < 0 ? next.steps.length : firstUntaught;
  const reached = new Set(next.steps.slice(0, upTo).flatMap(({ items }) => items.map(itemKey)));
  const added = [...taught].filter(([key]) => !reached.has(key)).map(([, item]) => item);
  return { sequence: next, upTo, added, dropped: now.dropped };
}

function taughtItems({ sequence, upTo, added, dropped }: Progress): ReadonlyMap<string, Item> {
  const out = new Set(dropped.map(itemKey));
  const items = [...sequence.steps.slice(0, upTo).flatMap((step) => step.items), ...added];
  return new Map(
    items.map((item): [string, Item] => [itemKey(item), item]).filter(([key]) => !out.has(key)),
  );
}

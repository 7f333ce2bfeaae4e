import type { CardId } from '../../core/language/card-id.ts';
import { itemKey } from '../../core/sequence/item.ts';
import type { Progress } from '../../core/sequence/progress.ts';

/**
 * The cards that were taught last: those of the last step that has any, without
 * what she took out. A step of words or habits alone leaves the cards before it
 * the newest.
 */
export function newestCards({ sequence, upTo, dropped }: Progress): readonly CardId[] {
  const out = new Set(dropped.map(itemKey));
  const last = sequence.steps
    .slice(0, upTo)
    .findLast(({ items }) => items.some((item) => item.kind === 'card' && !out.has(itemKey(item))));
  return (last?.items ?? []).flatMap((item) =>
    item.kind === 'card' && !out.has(itemKey(item)) ? [item.id] : [],
  );
}

import type { CardId } from '../../core/language/card-id.ts';
import { cardOfItem, itemKey } from '../../core/sequence/item.ts';
import type { Progress } from '../../core/sequence/progress.ts';
import type { Item } from '../../core/sequence/sequence.ts';

/**
 * The cards that were taught last: those of the last step that has any, without
 * what she took out. A step of words or habits alone leaves the cards before it
 * the newest.
 */
export function newestCards(progress: Progress): readonly CardId[] {
  return newest(progress, (item) => (item.kind === 'card' ? item.id : null));
}

/** The words known by sight that were taught last, as cards: those of the last step that has any. */
export function newestSight(progress: Progress): readonly CardId[] {
  return newest(progress, (item) => (item.kind === 'word' ? cardOfItem(item) : null));
}

/** What stands in the last step that has anything of the kind, without what she took out. */
function newest(
  { sequence, upTo, dropped }: Progress,
  cardOf: (item: Item) => CardId | null,
): readonly CardId[] {
  const out = new Set(dropped.map(itemKey));
  const found = sequence.steps
    .slice(0, upTo)
    .map(({ items }) =>
      items.flatMap((item) => (out.has(itemKey(item)) ? [] : (cardOf(item) ?? []))),
    );
  return found.findLast((ids) => ids.length > 0) ?? [];
}

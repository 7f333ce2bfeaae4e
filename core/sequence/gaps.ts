import { itemKey } from './item.ts';
import type { Progress } from './progress.ts';
import type { Step } from './sequence.ts';

/**
 * The steps above the line of which no spelling was taught: what comes next for
 * a class that was carried over from another order. Steps of words alone are none.
 */
export function gapsOf({ sequence, upTo, added, dropped }: Progress): readonly Step[] {
  const known = new Set(added.map(itemKey));
  const out = new Set(dropped.map(itemKey).filter((key) => !known.has(key)));
  return sequence.steps.filter(({ number, items }) => {
    const spellings = items.filter(({ kind }) => kind !== 'word');
    return (
      number <= upTo && spellings.length > 0 && spellings.every((item) => out.has(itemKey(item)))
    );
  });
}

import type { Taught } from '../language/taught.ts';
import { itemKey } from './item.ts';
import { type Progress, taughtOf } from './progress.ts';
import type { Item, Sequence, Step } from './sequence.ts';

/**
 * The same group in another order, item by item: what was taught stays taught,
 * and nothing else becomes so. The line goes where the fewest steps lie on its
 * wrong side; what was taught beyond it is added singly and what was not before
 * it is dropped. `wasTaught` says of each step of `next` whether it counts as
 * taught; without it, a step does whose cards and habits all are (words known by
 * heart move between steps more freely than spellings do).
 */
export function intoOrder(
  progress: Progress,
  next: Sequence,
  wasTaught?: readonly boolean[],
): Progress {
  const taught = taughtOf(progress);
  const upTo = bestLine(wasTaught ?? next.steps.map((step) => isKnownStep(step, taught)));
  const before = next.steps.slice(0, upTo).flatMap(({ items }) => items);
  const reached = new Set(before.map(itemKey));
  const known = [
    ...progress.sequence.steps.slice(0, progress.upTo).flatMap(({ items }) => items),
    ...progress.added,
  ].filter((item) => isTaught(item, taught));
  return {
    sequence: next,
    upTo,
    added: unique(known.filter((item) => !reached.has(itemKey(item)))),
    dropped: unique([...progress.dropped, ...before.filter((item) => !isTaught(item, taught))]),
  };
}

function isKnownStep({ items }: Step, taught: Taught): boolean {
  const spellings = items.filter(({ kind }) => kind !== 'word');
  return (spellings.length > 0 ? spellings : items).every((item) => isTaught(item, taught));
}

/** How many steps stand before the line that has the fewest untaught before and taught after it. */
function bestLine(wasTaught: readonly boolean[]): number {
  let wrong = wasTaught.filter(Boolean).length;
  let best = 0;
  let fewest = wrong;
  wasTaught.forEach((taught, place) => {
    wrong += taught ? -1 : 1;
    if (wrong < fewest || (wrong === fewest && taught)) {
      fewest = wrong;
      best = place + 1;
    }
  });
  return best;
}

function isTaught(item: Item, taught: Taught): boolean {
  if (item.kind === 'card') return taught.correspondences.has(item.id);
  return item.kind === 'habit'
    ? taught.habits.has(item.habit)
    : taught.irregularWords.has(item.word);
}

function unique(items: readonly Item[]): readonly Item[] {
  return [...new Map(items.map((item) => [itemKey(item), item])).values()];
}

/**
 * Our own order as a class spells it: *colour* among the words known by heart where southern British is set.
 * What is stored stays American, so both ways are here, and a class that changes its accent keeps its place
 * and every word it was taught. An order of her own stays as she wrote it.
 */
import { type Accent, isBritish } from '../language/accent/accent.ts';
import { textHere } from '../language/accent/text-here.ts';
import { SEQUENCE } from './built-in.ts';
import type { Progress } from './progress.ts';
import type { Item, Sequence } from './sequence.ts';

/** Our own order, spelled as here; the same value each time. */
export function builtInHere(accent: Accent): Sequence {
  return isBritish(accent) ? inBritain() : SEQUENCE;
}

/** Whether an order is our own, however it is spelled. */
export function isBuiltIn(sequence: Sequence): boolean {
  return sequence === SEQUENCE || sequence === british;
}

/** A place in our own order as a class spells it; one in an order of her own stays. */
export function progressHere(progress: Progress, accent: Accent): Progress {
  if (progress.sequence !== SEQUENCE || !isBritish(accent)) return progress;
  const here = (item: Item) => itemHere(item, accent);
  return {
    ...progress,
    sequence: inBritain(),
    added: progress.added.map(here),
    dropped: progress.dropped.map(here),
  };
}

/** The same place as it is stored: the way back from `progressHere`. */
export function progressListed(progress: Progress): Progress {
  if (!isBuiltIn(progress.sequence)) return progress;
  return {
    ...progress,
    sequence: SEQUENCE,
    added: progress.added.map(itemListed),
    dropped: progress.dropped.map(itemListed),
  };
}

/** A word known by heart as it is spelled here; all else stays. */
function itemHere(item: Item, accent: Accent): Item {
  return item.kind === 'word' ? { kind: 'word', word: textHere(item.word, accent) } : item;
}

function itemListed(item: Item): Item {
  if (item.kind !== 'word') return item;
  return { kind: 'word', word: listedByHere().get(item.word) ?? item.word };
}

let british: Sequence | null = null;

function inBritain(): Sequence {
  const accent: Accent = ['southern-british'];
  british ??= {
    ...SEQUENCE,
    steps: SEQUENCE.steps.map((step) => ({
      ...step,
      items: step.items.map((item) => itemHere(item, accent)),
      title: textHere(step.title, accent),
      stage: textHere(step.stage, accent),
      why: textHere(step.why, accent),
    })),
  };
  return british;
}

/** American words by their British spelling, of the words that our order teaches by heart. */
function listedByHere(): ReadonlyMap<string, string> {
  const words = SEQUENCE.steps.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === 'word' ? [item.word] : [])),
  );
  return new Map(words.map((word) => [textHere(word, ['southern-british']), word]));
}

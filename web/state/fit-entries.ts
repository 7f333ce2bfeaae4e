import { useEffect, useState } from 'preact/hooks';
import type { Engine } from './engine.ts';
import type { Entry } from './find.ts';
import { verdictOf } from './verdict-of.ts';

/** What is left after the word screen was asked; `done` once it was asked about everything. */
export interface FitEntries {
  readonly entries: readonly Entry[];
  readonly done: boolean;
}

/** Milliseconds of judging at a stretch, so that the page stays awake over long lists. */
const stretch = 24;
/** As many as one page shows; until these are judged nothing is shown. */
const firstPage = 120;

/** Whether the word screen clears every word of an entry; those that it asks about count when `asked`. */
export function isFitEntry(
  entry: Entry,
  asked: boolean,
  { lexicon, screen }: Pick<Engine, 'lexicon' | 'screen'>,
): boolean {
  return entry.every((index) => {
    const { verdict } = verdictOf(index, lexicon, screen);
    return verdict === 'clear' || (asked && verdict === 'ask');
  });
}

/**
 * Leaves out what the word screen stops, and what it asks about unless `asked`.
 * The first page is there at once; a long list is judged on in short stretches.
 */
export function useFitEntries(
  entries: readonly Entry[],
  asked: boolean,
  { lexicon, screen }: Engine,
): FitEntries {
  const [fit, setFit] = useState<FitEntries>({ entries: [], done: false });
  useEffect(() => {
    const kept: Entry[] = [];
    let at = 0;
    let shown = false;
    let timer: ReturnType<typeof setTimeout>;
    const judgeOn = () => {
      const until = performance.now() + stretch;
      while (at < entries.length && performance.now() < until) {
        const entry = entries[at++] as Entry;
        if (isFitEntry(entry, asked, { lexicon, screen })) kept.push(entry);
      }
      const done = at === entries.length;
      if (done || (!shown && kept.length >= firstPage)) {
        shown = true;
        setFit({ entries: [...kept], done });
      }
      if (!done) timer = setTimeout(judgeOn);
    };
    judgeOn();
    return () => clearTimeout(timer);
  }, [entries, asked, lexicon, screen]);
  return fit;
}

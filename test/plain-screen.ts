import type { WordScreen } from '../core/words/screen.ts';

/** A screen that stops these spellings, asks about those, and lets all else pass. */
export function makePlainScreen(
  stopped: readonly string[] = [],
  asked: readonly string[] = [],
): WordScreen {
  const stops = new Set(stopped);
  const asks = new Set(asked);
  return {
    judge(word) {
      if (stops.has(word)) return { verdict: 'stop', category: 'test', reason: 'Not for class.' };
      if (asks.has(word)) return { verdict: 'ask', category: 'test', reason: 'Yours to decide.' };
      return { verdict: 'clear', category: null, reason: null };
    },
  };
}

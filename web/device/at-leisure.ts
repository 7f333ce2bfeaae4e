import type { PacedBy } from '../../core/paced.ts';

/**
 * Does paced work piece by piece, so that the page answers between two pieces; `onShare` is told which share
 * of the work at hand is done. Once the signal is aborted nothing more is done.
 */
export function atLeisure(onShare: (share: number) => void, signal: AbortSignal): PacedBy {
  return async (work) => {
    onShare(0);
    for (;;) {
      await pause();
      if (signal.aborted) return null;
      const step = work.next();
      if (step.done) return step.value;
      onShare(step.value);
    }
  };
}

/** Lets the browser draw and hear her. */
function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

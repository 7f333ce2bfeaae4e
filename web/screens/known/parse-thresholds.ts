import type { Thresholds } from '../../../core/learners/thresholds.ts';

/** Reads thresholds as they were typed, in percent; or what to write instead. */
export function parseThresholds(
  secure: string,
  shaky: string,
): Thresholds | { readonly problem: string } {
  const [from, below] = [secure, shaky].map(parsePercent);
  if (from == null || below == null) {
    return { problem: 'Write two whole numbers from 1 to 99, such as 80 and 60.' };
  }
  if (below > from) {
    return {
      problem: `Shaky ends where secure begins at the latest: write ${from} or less there.`,
    };
  }
  return { secure: from / 100, shaky: below / 100 };
}

function parsePercent(text: string): number | null {
  const match = /^([1-9]\d?)\s*%?$/.exec(text.trim());
  return match ? Number(match[1]) : null;
}

import type { Thresholds } from '../../../core/learners/thresholds.ts';
import { say } from './wording.ts';

/** Reads thresholds as they were typed, in percent; or what to write instead. */
export function parseThresholds(
  secure: string,
  shaky: string,
): Thresholds | { readonly problem: string } {
  const [from, below] = [secure, shaky].map(parsePercent);
  if (from == null || below == null) {
    return { problem: say.parseThresholds.writeTwoWholeNumbers };
  }
  if (below > from) {
    return {
      problem: say.parseThresholds.shakyEndsWhereSecure(from),
    };
  }
  return { secure: from / 100, shaky: below / 100 };
}

function parsePercent(text: string): number | null {
  const match = /^([1-9]\d?)\s*%?$/.exec(text.trim());
  return match ? Number(match[1]) : null;
}

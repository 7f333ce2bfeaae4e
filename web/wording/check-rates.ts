import type { CheckScore } from '../../core/checks/score-check.ts';
import type { CheckRecord } from '../../core/log/class-state.ts';

/** A shorter reading says nothing of a minute, in seconds (common practice, no source). */
const SHORTEST = 15;

/** What was right in a minute; null without a clock, and where it was read for too short a time to tell. */
export function ratesOf(
  { ended }: CheckRecord,
  { rightPerMinute, soundsPerMinute }: CheckScore,
): { readonly right: number; readonly sounds: number } | null {
  if (rightPerMinute === null || soundsPerMinute === null) return null;
  if ((ended?.seconds ?? 0) < SHORTEST) return null;
  return { right: Math.round(rightPerMinute), sounds: Math.round(soundsPerMinute) };
}

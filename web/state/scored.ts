import { type CheckScore, scoreCheck } from '../../core/checks/score-check.ts';
import { checksOf, readingOf } from '../../core/log/check-record.ts';
import type { CheckRecord } from '../../core/log/class-state.ts';
import { classState } from './open-class.ts';
import { settings } from './settings.ts';

/** What a check has come to, a skipped row counted as she has settled it. */
export function scoreOf(record: CheckRecord): CheckScore {
  return scoreCheck(readingOf(record), settings.value.skippedRow);
}

/** The child's check of this kind that ended before this one was begun; null for the first. */
export function checkBefore({ child, form, at }: CheckRecord): CheckRecord | null {
  const earlier = checksOf(classState.value, child).filter(
    (other) => other.form.kind === form.kind && other.ended !== null && other.at < at,
  );
  return earlier.at(-1) ?? null;
}

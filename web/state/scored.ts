import { type CheckScore, scoreCheck } from '../../core/checks/score-check.ts';
import { readingOf } from '../../core/log/check-record.ts';
import type { CheckRecord } from '../../core/log/class-state.ts';
import { settings } from './settings.ts';

/** What a check has come to, a skipped row counted as she has settled it. */
export function scoreOf(record: CheckRecord): CheckScore {
  return scoreCheck(readingOf(record), settings.value.skippedRow);
}

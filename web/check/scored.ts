import { settings } from '../memory/settings.ts';
import { type CheckRecord, type CheckScore, readingOf, scoreCheck } from './engine.ts';

/** What a check has come to, a skipped row counted as she has settled it. */
export function scoreOf(record: CheckRecord): CheckScore {
  return scoreCheck(readingOf(record), settings.value.skippedRow);
}

/** What the screens of what children know use of the core beside `web/engine.ts`; fetched with them. */
export {
  classMap,
  countWords,
  type MapCell,
  type MapRow,
  shakiest,
} from '../../core/learners/class-map.ts';
export { type Confusion, countConfusions } from '../../core/learners/confusions.ts';
export { makeDay } from '../../core/learners/day.ts';
export {
  type Estimate,
  estimateHabit,
  estimatePlace,
  type Who,
} from '../../core/learners/estimate.ts';
export { type GrowthPoint, growthOf } from '../../core/learners/growth.ts';
export { historiesOf } from '../../core/learners/history.ts';
export {
  MASTERY_WORDS,
  type MasteryWord,
  type Thresholds,
} from '../../core/learners/mastery-word.ts';
export { scheduleOf } from '../../core/learners/schedule.ts';
export {
  type ChildChances,
  type GroupNeed,
  needsOf,
  suggestGroups,
} from '../../core/learners/suggest-groups.ts';
export { type GroupMove, groupMoves } from '../../core/log/group-history.ts';
export { regroup } from '../../core/log/regroup.ts';

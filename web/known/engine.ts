/** What the screens of what children know use of the core beside `web/engine.ts`; fetched with them. */
export {
  classMap,
  countWords,
  type MapCell,
  type MapRow,
  shakiest,
} from '../../core/learners/class-map.ts';
export type { Estimate, Who } from '../../core/learners/estimate.ts';
export {
  MASTERY_WORDS,
  type MasteryWord,
  type Thresholds,
} from '../../core/learners/mastery-word.ts';

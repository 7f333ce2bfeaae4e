/** What the pages to hand on use of the core beside `web/engine.ts`; fetched with them. */
export { homePractice, type Practised } from '../../core/drills/home-practice.ts';
export { canRead } from '../../core/learners/can-read.ts';
export { classMap, countWords, type MapCell } from '../../core/learners/class-map.ts';
export {
  CLASS_TABLES,
  type ClassTable,
  makeClassTable,
} from '../../core/learners/class-tables.ts';
export { type Confusion, countConfusions } from '../../core/learners/confusions.ts';
export { checksOf } from '../../core/log/check-record.ts';
export { type CheckRecord, lineKey } from '../../core/log/class-state.ts';
export { PAGES } from '../../core/log/event.ts';

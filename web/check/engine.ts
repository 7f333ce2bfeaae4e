/** What the screens of a short check use of the core beside `web/engine.ts`; fetched with the screen. */
export {
  CHECK_KINDS,
  type CheckForm,
  type CheckItem,
  type CheckKind,
  type MadeForm,
  PER_ROW,
  rowsOf,
} from '../../core/checks/check-form.ts';
export { nextForm } from '../../core/checks/next-form.ts';
export { type CheckScore, scoreCheck } from '../../core/checks/score-check.ts';
export { checksOf, readingOf } from '../../core/log/check-record.ts';
export type { CheckRecord } from '../../core/log/class-state.ts';
export type { ItemReading } from '../../core/log/event.ts';

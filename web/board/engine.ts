/** What the board screen alone uses of the core: fetched with it, not with the first page. */

export { type BoardWishes, searchTable } from '../../core/boards/best-board.ts';
export type { StopReason } from '../../core/boards/board.ts';
export { parseBoardLink } from '../../core/boards/board-link.ts';
export {
  cardGain,
  gainsOnBoard,
  type Tally,
  tallyOf,
  withOnly,
} from '../../core/boards/card-gain.ts';
export { judgeWord } from '../../core/boards/judge.ts';
export { pileInWords, pileNames } from '../../core/boards/pile-names.ts';
export { makeRowJudge, type RowJudge } from '../../core/boards/row-judge.ts';
export { shapeById } from '../../core/boards/shape-list.ts';
export { candidates, type Shape } from '../../core/boards/shapes.ts';
export { shapesFor } from '../../core/boards/shapes-for.ts';
export { splitPiles } from '../../core/boards/split-piles.ts';
export { cardsTaught, isTaughtCard } from '../../core/boards/taught-cards.ts';
export { trimPiles } from '../../core/boards/trim-piles.ts';
export { type WhyNot, whyNotHere } from '../../core/boards/why-not-here.ts';
export {
  cardsAt,
  makeWordTable,
  mayShow,
  type Outcome,
  outcomeAt,
  type WordTable,
} from '../../core/boards/word-table.ts';
export { reshuffleRun } from '../../core/drills/edit-drill.ts';

/** What the print screen alone uses of the core and of the print room: fetched with it, not with the first page. */
export { searchTable } from '../../core/boards/best-board.ts';
export { shapeById } from '../../core/boards/shape-list.ts';
export { cardsTaught } from '../../core/boards/taught-cards.ts';
export { makeWordTable } from '../../core/boards/word-table.ts';
export { screenText } from '../../core/words/own-text.ts';
export { RING_COUNTS } from '../../print/binder.ts';
export { cardPages } from '../../print/cards/card-pages.ts';
export type { CardLook } from '../../print/cards/front.ts';
export { CARD_KINDS } from '../../print/cards/grid.ts';
export { ownCard, paperCard } from '../../print/cards/paper-card.ts';
export { stripPages } from '../../print/cards/strip-pages.ts';
export { withoutTwins } from '../../print/cards/twins.ts';
export { TURNS } from '../../print/duplex.ts';
export { inks } from '../../print/ink.ts';
export { type Mark, type Page, pageSize } from '../../print/page.ts';
export { PAPERS } from '../../print/paper.ts';
export type { Picture, Pictures } from '../../print/picture.ts';
export { openTypeface, type Typeface } from '../../print/typeface.ts';

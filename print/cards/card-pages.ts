/** Single cards on sheets: fronts, and behind each sheet its backs in the order that fits when both sides are printed. */
import { cutMarks } from '../cut-marks.ts';
import { behind, type SheetTurn, turnsOverTop } from '../duplex.ts';
import type { Page } from '../page.ts';
import type { Paper } from '../paper.ts';
import { rulerMarks } from '../ruler.ts';
import { backMarks } from './back.ts';
import { type CardLook, frontMarks, letterRoom } from './front.ts';
import { type CardKind, cardsPerPage, frameAt, type Grid, gridOf } from './grid.ts';
import { letterSizes } from './letter-size.ts';
import type { PaperCard } from './paper-card.ts';

export interface CardPagesSpec {
  readonly kind: CardKind;
  readonly paper: Paper;
  /** How sheets are turned for their backs; null for fronts alone. */
  readonly backs: SheetTurn | null;
}

/** The pages of a set of cards. */
export function cardPages(
  cards: readonly PaperCard[],
  { kind, paper, backs }: CardPagesSpec,
  look: CardLook,
): readonly Page[] {
  const grid = gridOf(kind, paper);
  const { landscape } = grid;
  const size = cardsPerPage(grid);
  const room = letterRoom(frameAt(grid, 0), look.pictures !== null);
  const set = { sizes: letterSizes(cards, room, look.typeface), loose: true };
  const pages: Page[] = [];
  for (let from = 0; from < cards.length; from += size) {
    const sheet = cards.slice(from, from + size);
    const fronts = sheet.flatMap((card, at) => frontMarks(card, frameAt(grid, at), set, look));
    const ruled = grid.top > 0 || from === 0;
    pages.push({
      paper,
      landscape,
      marks: [...fronts, ...marginMarks(grid, look, ruled)],
    });
    if (backs === null) continue;
    pages.push({
      paper,
      landscape,
      upsideDown: turnsOverTop(backs, landscape),
      marks: sheet.flatMap(({ back }, at) =>
        back ? backMarks(back, behind(frameAt(grid, at), grid.page.width), look, true) : [],
      ),
    });
  }
  return pages;
}

/** The cut marks, and at the foot the ruler: in the margin, or on a card's own edge where there is none. */
function marginMarks(grid: Grid, { inks }: CardLook, ruled: boolean) {
  const { left, top, cell, columns, rows, page } = grid;
  const lines = (from: number, step: number, count: number, length: number) =>
    Array.from({ length: count + 1 }, (_, at) => from + at * step).filter(
      (place) => place > 0.1 && place < length - 0.1,
    );
  const cuts = {
    across: lines(left, cell.width, columns, page.width),
    down: lines(top, cell.height, rows, page.height),
  };
  return [...cutMarks(cuts, page, inks), ...(ruled ? rulerMarks(rulerPlace(grid), inks) : [])];
}

/** In the margin at the foot, above the marks; where there is none, beside the cut between two cards. */
function rulerPlace({ left, top, cell, page }: Grid): { readonly x: number; readonly y: number } {
  const x = left + 8;
  return top > 0 ? { x, y: page.height - top + 2.6 } : { x: left + 20, y: cell.height + 0.4 };
}

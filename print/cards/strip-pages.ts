/** The strips of a board, sheet by sheet: each sheet holds one card of every pile of a binder. */

import { asParagraph } from '../as-part.ts';
import { type HoleSpec, holesOf, type RingCount } from '../binder.ts';
import type { Box } from '../box.ts';
import { cutMarks } from '../cut-marks.ts';
import { behind, type SheetTurn, turnsOverTop } from '../duplex.ts';
import type { Inks } from '../ink.ts';
import { circle, line, type Page, type PageMark } from '../page.ts';
import { type Paper, paperSize, points, SAFE_EDGE, type Size } from '../paper.ts';
import { RULER, rulerMarks } from '../ruler.ts';
import { backMarks } from './back.ts';
import { type CardLook, frontMarks, letterRoom } from './front.ts';
import { letterSizes } from './letter-size.ts';
import type { PaperCard } from './paper-card.ts';
import { pilesByBinder, type Strip, stripsOf } from './strip-cuts.ts';

export interface StripPagesSpec {
  readonly paper: Paper;
  readonly rings: RingCount;
  /** How sheets are turned for their backs; null for fronts alone. */
  readonly backs: SheetTurn | null;
}

/** From a strip's sides to its frame, from its top past the holes, and from its foot, in mm. */
const SIDE = 6.5;
const HEAD = 26;
const FOOT = 14;

/** The pages of a board of two to five piles. */
export function stripPages(
  piles: readonly (readonly PaperCard[])[],
  { paper, rings, backs }: StripPagesSpec,
  look: CardLook,
): readonly Page[] {
  const { width: height, height: width } = paperSize[paper];
  const page = { width, height };
  const counts = pilesByBinder(piles.length, rings, paper);
  const strips = stripsOf(Math.max(...counts), rings, paper);
  const widest = [...strips].sort((a, b) => b.right - b.left - (a.right - a.left))[0]!;
  const narrowest = strips.map((strip) => boxOf(strip, page)).sort((a, b) => a.width - b.width)[0]!;
  const room = letterRoom(narrowest, look.pictures !== null);
  const set = { sizes: letterSizes(piles.flat(), room, look.typeface), loose: false };
  const pages: Page[] = [];
  let first = 0;
  counts.forEach((count, binder) => {
    const here = piles.slice(first, first + count);
    const layers = Math.max(...here.map(({ length }) => length));
    for (let layer = 0; layer < layers; layer += 1) {
      const hung = here.flatMap((pile, at) => {
        const card = pile[layer];
        const strip = strips[at]!;
        const label = labelOf(first + at, layer, pile.length, counts.length > 1 ? binder : null);
        return card ? [{ card, strip, label }] : [];
      });
      pages.push({
        paper,
        landscape: true,
        marks: [
          ...hung.flatMap(({ card, strip, label }) => [
            ...frontMarks(card, boxOf(strip, page), set, look),
            ...holeMarks(strip, holesOf(rings, paper), look.inks),
            ...asParagraph([labelMark(label, strip, look.inks)]),
          ]),
          ...cutMarks({ across: cutsOf(strips, width), down: [] }, page, look.inks),
          ...(pages.length === 0
            ? rulerMarks(
                {
                  x: Math.max(SAFE_EDGE, widest.left + 1) + 1,
                  y: height - SAFE_EDGE - RULER.height,
                },
                look.inks,
              )
            : []),
        ],
      });
      if (backs === null) continue;
      pages.push({
        paper,
        landscape: true,
        upsideDown: turnsOverTop(backs, true),
        marks: hung.flatMap(({ card, strip }) =>
          card.back ? backMarks(card.back, behind(boxOf(strip, page), width), look, false) : [],
        ),
      });
    }
    first += count;
  });
  return pages;
}

function boxOf({ left, right }: Strip, { height }: Size): Box {
  return { x: left + SIDE, y: HEAD, width: right - left - 2 * SIDE, height: height - HEAD - FOOT };
}

function cutsOf(strips: readonly Strip[], width: number): readonly number[] {
  const edges = strips.flatMap(({ left, right }) => [left, right]);
  return [...new Set(edges)].filter((x) => x > 0.1 && x < width - 0.1);
}

/** The holes as they will be punched, with their middles. */
function holeMarks(
  { holes }: Strip,
  { fromEdge, diameter }: HoleSpec,
  { soft }: Inks,
): readonly PageMark[] {
  const look = { stroke: soft, line: 0.15 };
  return holes.flatMap((x) => [
    circle(x, fromEdge, diameter / 2, look),
    line([x - 1, fromEdge], [x + 1, fromEdge], look),
    line([x, fromEdge - 1], [x, fromEdge + 1], look),
  ]);
}

/** Where a strip belongs, once it is cut: small, between the holes and the frame. */
function labelMark(text: string, { left, right }: Strip, { soft }: Inks): PageMark {
  const x = (left + right) / 2;
  return { kind: 'text', text, x, y: HEAD - 3, size: points(7), ink: soft, align: 'center' };
}

function labelOf(pile: number, layer: number, of: number, binder: number | null): string {
  const where = binder === null ? '' : `binder ${binder + 1} · `;
  return `${where}pile ${pile + 1} · ${layer + 1} of ${of}`;
}

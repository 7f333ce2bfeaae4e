/**
 * A run of flips as slides.
 *
 * Each state of a row is a slide of its own: a click goes to the next slide and
 * so moves the line. Animations would keep the file smaller, but programs
 * disagree about them, and an exported or printed deck loses them. Rows stand
 * where the stage puts them (core/boards/shapes/row-layout.ts): one size and one place
 * for the middle pile throughout a run.
 */
import type { Flip } from '../core/boards/shapes/board.ts';
import { ownersOf, type Piece, pieceKey, piecesOf } from '../core/boards/shapes/pieces.ts';
import { CARD_HEIGHT, layOut, type RowLayout } from '../core/boards/shapes/row-layout.ts';
import type { Letters, OutlineStep } from './glyphs.ts';
import { type Corner, cornerBox, placed } from './outline.ts';
import { type CardInk, type RowCard, rowCard } from './row-card.ts';
import { SLIDE, type Slide, type SlideShape } from './slide.ts';
import {
  closingNotes,
  openingNotes,
  type SlideBlending,
  soundNotes,
  sweepNotes,
  type Telling,
} from './slide-notes.ts';
import { sweepStroke } from './sweep-stroke.ts';

/** What slides are made for. `piles` is how many piles the board has. */
export interface SlidesSpec extends Telling {
  readonly run: readonly Flip[];
  readonly piles: number;
  readonly blending: SlideBlending;
}

/** The slides of a run between two quiet sheets; none for an empty run. */
export function runSlides(spec: SlidesSpec, letters: Letters): readonly Slide[] {
  const { run, piles, blending } = spec;
  if (run.length === 0) return [];
  const pieces = run.map(({ cards, joints }) => piecesOf(cards, joints));
  const drawn = drawCards(pieces.flat(), letters);
  const cardOf = (piece: Piece) => drawn.get(pieceKey(piece)) as RowCard;
  const widths = pieces.map((row) => row.map((piece) => cardOf(piece).width));
  const openings = pieces.map((row) => row.flatMap(({ opens }, at) => (opens ? [at] : [])));
  const inSyllables = openings.some(({ length }) => length > 0);
  const { rows } = layOut(widths, piles, SLIDE, inSyllables ? openings : []);
  const quiet = [strokeShape(SLIDE.width * 0.36, SLIDE.width * 0.64, SLIDE.height * 0.48, 3)];
  return [
    { shapes: quiet, notes: openingNotes(run, blending, spec) },
    ...run.flatMap(({ cards }, place) => {
      const row: Row = {
        cards: (pieces[place] as readonly Piece[]).map(cardOf),
        owners: ownersOf(pieces[place] as readonly Piece[]),
        layout: rows[place] as RowLayout,
      };
      const ticks = ticksAt(place, run.length);
      const wholeLine = lineUnder(row, row.layout.from, row.layout.to);
      const swept: Slide = {
        shapes: [...cardShapes(row, cards.length), wholeLine, ...ticks],
        notes: sweepNotes(run, place, spec),
      };
      if (blending === 'whole') {
        const begin = lineUnder(row, row.layout.from, row.layout.from + BEGINNING);
        const shapes = [...cardShapes(row, cards.length), begin, ...ticks];
        return [{ shapes, notes: soundNotes(run, place, null, spec) }, swept];
      }
      const sounds = cards.map(
        (_, card): Slide => ({
          shapes: [...cardShapes(row, card + 1), ...linesUnderCard(row, card), ...ticks],
          notes: soundNotes(run, place, card, spec),
        }),
      );
      return [...sounds, swept];
    }),
    { shapes: [...quiet, ...ticksAt(run.length, run.length)], notes: closingNotes(run) },
  ];
}

/** How far the line reaches before it is drawn under the row, in em: where to begin. */
const BEGINNING = 0.3;

/** A row of a run: its pieces as cards, the card that each belongs to, and where they stand. */
interface Row {
  readonly cards: readonly RowCard[];
  readonly owners: readonly number[];
  readonly layout: RowLayout;
}

function drawCards(pieces: readonly Piece[], letters: Letters): ReadonlyMap<string, RowCard> {
  const drawn = new Map<string, RowCard>();
  for (const piece of pieces) {
    const key = pieceKey(piece);
    if (!drawn.has(key)) drawn.set(key, rowCard(piece, letters));
  }
  return drawn;
}

const INK = '#1d2740';
const paint: Readonly<Record<CardInk, string>> = {
  card: '#fffdf9',
  arch: '#ffe3a3',
  pale: '#fff3d6',
  letters: INK,
  divider: '#cfc5ae',
};
const UNDER = { fill: '#e9e1cf', stroke: '#cfc5ae' } as const;
const WAITING = '#8d8672';
const SWEEP = '#0f7c74';
const TICK = { fill: '#e3dccd', stroke: WAITING, line: 0.15 } as const;

/** The cards of a row, the first `open` of them face up, the others waiting. */
function cardShapes({ cards, owners, layout }: Row, open: number): readonly SlideShape[] {
  const { size } = layout;
  const line = size * 0.011;
  return cards.flatMap((card, at): readonly SlideShape[] => {
    const x = SLIDE.width / 2 + (layout.lefts[at] ?? 0) * size;
    const y = rowTop(size);
    const put = (steps: readonly OutlineStep[], dx = 0, dy = 0) =>
      placed(steps, { x: x + dx * size, y: y + dy * size, scaleX: size, scaleY: size });
    const name = `card ${card.letters}`;
    if ((owners[at] ?? at) >= open) {
      const steps = put(card.frame);
      return [{ name: 'card face down', steps, stroke: WAITING, line, dashed: true }];
    }
    return [
      { name: 'pile', steps: put(card.frame, 0.022, 0.03), line: line / 2, ...UNDER },
      { name, steps: put(card.frame), fill: paint[card.ground], stroke: INK, line },
      ...card.parts.map(({ ink, steps }) => ({
        name: ink === 'letters' ? `letters ${card.letters}` : 'ground',
        steps: put(steps),
        fill: paint[ink],
      })),
    ];
  });
}

function rowTop(size: number): number {
  return (SLIDE.height - size * CARD_HEIGHT) * 0.34;
}

/** The line under a row, between two places in em from its middle. */
function lineUnder({ layout: { size } }: Row, from: number, to: number): SlideShape {
  const middle = SLIDE.width / 2;
  const thick = size * 0.037;
  const y = rowTop(size) + size * CARD_HEIGHT + Math.max(thick * 3, SLIDE.height * 0.034);
  return strokeShape(middle + from * size, middle + to * size, y, thick);
}

/** A line under each piece of one card. */
function linesUnderCard(row: Row, card: number): readonly SlideShape[] {
  return row.cards.flatMap(({ width }, at) => {
    if (row.owners[at] !== card) return [];
    const left = row.layout.lefts[at] ?? 0;
    return [lineUnder(row, left, left + width)];
  });
}

function strokeShape(left: number, right: number, y: number, thick: number): SlideShape {
  return { name: 'sweep line', steps: sweepStroke(left, right, y, thick), fill: SWEEP };
}

/** The only progress, as on the stage: one tick for each word, those up to now in ink. */
function ticksAt(place: number, count: number): readonly SlideShape[] {
  const pitch = Math.min(4.94, (SLIDE.width * 0.84) / count);
  const wide = pitch * 0.79;
  const start = (SLIDE.width - pitch * count + (pitch - wide)) / 2;
  const round: Corner = [wide * 0.14, wide * 0.14];
  const tick = (_: unknown, at: number) =>
    cornerBox({
      left: start + at * pitch,
      top: SLIDE.height * 0.955,
      width: wide,
      height: 1.06,
      corners: [round, round, round, round],
    });
  const ticks = Array.from({ length: count }, tick);
  const done = ticks.slice(0, place + 1).flat();
  const left = ticks.slice(place + 1).flat();
  return [
    ...(done.length === 0 ? [] : [{ name: 'words done', steps: done, fill: INK }]),
    ...(left.length === 0 ? [] : [{ name: 'words left', steps: left, ...TICK }]),
  ];
}

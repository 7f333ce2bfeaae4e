/**
 * A run of flips as slides.
 *
 * A word is one slide: a click sweeps the line under its row, or opens the next card. Some programs show no
 * animations, and an exported deck loses them; for those each state of a row is a slide of its own. Rows
 * stand where the stage puts them (core/boards/shapes/row-layout.ts): one size and one place for the middle
 * pile throughout a run.
 */
import type { Flip } from '../core/boards/shapes/board.ts';
import { ownersOf, type Piece, pieceKey, piecesOf } from '../core/boards/shapes/pieces.ts';
import { CARD_HEIGHT, layOut, type RowLayout } from '../core/boards/shapes/row-layout.ts';
import { lettersShown } from '../core/language/card-id.ts';
import type { Letters, OutlineStep } from './glyphs.ts';
import { type Corner, cornerBox, placed } from './outline.ts';
import type { Size } from './paper.ts';
import { type CardInk, type RowCard, rowCard } from './row-card.ts';
import {
  type Deck,
  type Move,
  type Slide,
  type SlideFormat,
  type SlideShape,
  type SlideThing,
  slideSize,
} from './slide.ts';
import {
  closingNotes,
  openingNotes,
  type SlideBlending,
  type SlideClicks,
  soundNotes,
  sweepNotes,
  type Telling,
  wordNotes,
} from './slide-notes.ts';
import { sweepStroke } from './sweep-stroke.ts';

/** What slides are made for. `piles` is how many piles the board has. */
export interface SlidesSpec extends Telling {
  readonly run: readonly Flip[];
  readonly piles: number;
  readonly blending: SlideBlending;
  readonly clicks: SlideClicks;
  readonly format: SlideFormat;
}

/** The slides of a run between two quiet sheets; none for an empty run. */
export function runSlides(spec: SlidesSpec, letters: Letters): Deck {
  const { run, format, blending, clicks } = spec;
  const count = `${run.length} ${run.length === 1 ? 'word' : 'words'}`;
  const title = `Blending drill: ${count}`;
  if (run.length === 0) return { title, format, slides: [] };
  const space = slideSize[format];
  const rows = layRows(spec, space, letters);
  const quiet = lineThing([
    strokeShape(space.width * 0.36, space.width * 0.64, space.height * 0.48, 3),
  ]);
  const slidesOf = clicks === 'line' ? movingSlides : stillSlides;
  return {
    title,
    format,
    slides: [
      { title, things: [quiet], clicks: [], notes: openingNotes(run, blending, clicks, spec) },
      ...rows.flatMap((row, place) => slidesOf(row, place, spec)),
      {
        title: `The end: ${count}`,
        things: [quiet, ticksAt(run.length, run.length, space)],
        clicks: [],
        notes: closingNotes(run),
      },
    ],
  };
}

/** A word on one slide, its line swept, or its cards opened, by clicks. */
function movingSlides(row: SlideRow, place: number, spec: SlidesSpec): readonly Slide[] {
  const { run, blending } = spec;
  const { cards, word } = run[place] as Flip;
  const things: SlideThing[] = [];
  const add = (thing: SlideThing) => things.push(thing) - 1;
  const clicks: Move[][] = [];
  if (blending === 'whole') {
    things.push(...cards.map((_, card) => openCard(row, card, cards)), lineThing([beginning(row)]));
  } else {
    things.push(...cards.slice(1).map((_, card) => closedCard(row, card + 1)));
    let line = -1;
    cards.forEach((_, card) => {
      const opened = add(openCard(row, card, cards));
      const before = line;
      line = add(lineThing(linesUnderCard(row, card)));
      if (card === 0) return;
      clicks.push([
        { thing: opened, how: 'appear' },
        { thing: before, how: 'vanish' },
        { thing: line, how: 'sweep' },
      ]);
    });
    clicks.push([{ thing: line, how: 'vanish' }]);
  }
  const swept: Move = { thing: add(lineThing([wholeLine(row)])), how: 'sweep' };
  clicks.push([...(clicks.pop() ?? []), swept]);
  add(ticksAt(place, run.length, row.space));
  const title = `${place + 1} of ${run.length}: ${word}`;
  return [{ title, things, clicks, notes: wordNotes(run, place, blending, spec) }];
}

/** A word on a slide for each state of its row. */
function stillSlides(row: SlideRow, place: number, spec: SlidesSpec): readonly Slide[] {
  const { run, blending } = spec;
  const { cards, word } = run[place] as Flip;
  const ticks = ticksAt(place, run.length, row.space);
  const state = (open: number, line: readonly SlideShape[]): Omit<Slide, 'title' | 'notes'> => ({
    clicks: [],
    things: [
      ...cards.map((_, card) => (card < open ? openCard(row, card, cards) : closedCard(row, card))),
      lineThing(line),
      ticks,
    ],
  });
  const name = `${place + 1} of ${run.length}: ${word}`;
  const swept: Slide = {
    ...state(cards.length, [wholeLine(row)]),
    title: `${name}, the whole word`,
    notes: sweepNotes(run, place, spec),
  };
  const sounds =
    blending === 'whole'
      ? [
          {
            ...state(cards.length, [beginning(row)]),
            title: `${name}, its sounds`,
            notes: soundNotes(run, place, null, spec),
          },
        ]
      : cards.map((_, card) => ({
          ...state(card + 1, linesUnderCard(row, card)),
          title: `${name}, sound ${card + 1} of ${cards.length}`,
          notes: soundNotes(run, place, card, spec),
        }));
  return [...sounds, swept];
}

/** A row of a run: its pieces as cards, the card that each belongs to, and where they stand. */
interface SlideRow {
  readonly cards: readonly RowCard[];
  readonly owners: readonly number[];
  readonly layout: RowLayout;
  readonly space: Size;
}

function layRows({ run, piles }: SlidesSpec, space: Size, letters: Letters): readonly SlideRow[] {
  const pieces = run.map(({ cards, joints }) => piecesOf(cards, joints));
  const drawn = drawCards(pieces.flat(), letters);
  const cardOf = (piece: Piece) => drawn.get(pieceKey(piece)) as RowCard;
  const widths = pieces.map((row) => row.map((piece) => cardOf(piece).width));
  const openings = pieces.map((row) => row.flatMap(({ opens }, at) => (opens ? [at] : [])));
  const inSyllables = openings.some(({ length }) => length > 0);
  const { rows } = layOut(widths, piles, space, inSyllables ? openings : []);
  return pieces.map((row, place) => ({
    cards: row.map(cardOf),
    owners: ownersOf(row),
    layout: rows[place] as RowLayout,
    space,
  }));
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

/** The pieces of one card, as they stand in the row. */
function piecesOfCard({ cards, owners, layout, space }: SlideRow, card: number) {
  const { size } = layout;
  const y = rowTop(size, space);
  return cards.flatMap((piece, at) => {
    if ((owners[at] ?? at) !== card) return [];
    const x = space.width / 2 + (layout.lefts[at] ?? 0) * size;
    const put = (steps: readonly OutlineStep[], dx = 0, dy = 0) =>
      placed(steps, { x: x + dx * size, y: y + dy * size, scaleX: size, scaleY: size });
    return [{ piece, put, line: size * 0.011 }];
  });
}

function openCard(row: SlideRow, card: number, ids: Flip['cards']): SlideThing {
  const letters = lettersShown(ids[card] as Flip['cards'][number]);
  return {
    name: `card ${letters}`,
    says: `Card ${letters}`,
    shapes: piecesOfCard(row, card).flatMap(({ piece, put, line }): readonly SlideShape[] => [
      { steps: put(piece.frame, 0.022, 0.03), line: line / 2, ...UNDER },
      { steps: put(piece.frame), fill: paint[piece.ground], stroke: INK, line },
      ...piece.parts.map(({ ink, steps }) => ({ steps: put(steps), fill: paint[ink] })),
    ]),
  };
}

function closedCard(row: SlideRow, card: number): SlideThing {
  return {
    name: 'card face down',
    says: null,
    shapes: piecesOfCard(row, card).map(({ piece, put, line }) => {
      return { steps: put(piece.frame), stroke: WAITING, line, dashed: true };
    }),
  };
}

function rowTop(size: number, { height }: Size): number {
  return (height - size * CARD_HEIGHT) * 0.34;
}

function lineThing(shapes: readonly SlideShape[]): SlideThing {
  return { name: 'sweep line', says: 'Sweep line', shapes };
}

/** How far the line reaches before it is drawn under the row, in em: where to begin. */
const BEGINNING = 0.3;

function beginning(row: SlideRow): SlideShape {
  return lineUnder(row, row.layout.from, row.layout.from + BEGINNING);
}

function wholeLine(row: SlideRow): SlideShape {
  return lineUnder(row, row.layout.from, row.layout.to);
}

/** The line under a row, between two places in em from its middle. */
function lineUnder({ layout: { size }, space }: SlideRow, from: number, to: number): SlideShape {
  const middle = space.width / 2;
  const thick = size * 0.037;
  const y = rowTop(size, space) + size * CARD_HEIGHT + Math.max(thick * 3, space.height * 0.034);
  return strokeShape(middle + from * size, middle + to * size, y, thick);
}

/** A line under each piece of one card. */
function linesUnderCard(row: SlideRow, card: number): readonly SlideShape[] {
  return row.cards.flatMap(({ width }, at) => {
    if (row.owners[at] !== card) return [];
    const left = row.layout.lefts[at] ?? 0;
    return [lineUnder(row, left, left + width)];
  });
}

function strokeShape(left: number, right: number, y: number, thick: number): SlideShape {
  return { steps: sweepStroke(left, right, y, thick), fill: SWEEP };
}

/** The only progress, as on the stage: one tick for each word, those up to now in ink. */
function ticksAt(place: number, count: number, space: Size): SlideThing {
  const pitch = Math.min(4.94, (space.width * 0.84) / count);
  const wide = pitch * 0.79;
  const start = (space.width - pitch * count + (pitch - wide)) / 2;
  const round: Corner = [wide * 0.14, wide * 0.14];
  const tick = (_: unknown, at: number) =>
    cornerBox({
      left: start + at * pitch,
      top: space.height * 0.955,
      width: wide,
      height: 1.06,
      corners: [round, round, round, round],
    });
  const ticks = Array.from({ length: count }, tick);
  const done = ticks.slice(0, place + 1).flat();
  const left = ticks.slice(place + 1).flat();
  return {
    name: 'words done',
    says: place < count ? `Word ${place + 1} of ${count}` : `All ${count} done`,
    shapes: [
      ...(done.length === 0 ? [] : [{ steps: done, fill: INK }]),
      ...(left.length === 0 ? [] : [{ steps: left, ...TICK }]),
    ],
  };
}

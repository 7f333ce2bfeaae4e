/**
 * Where the cards of a run stand, and how large their letters are.
 *
 * Problem: letters as large as can be read from the back of a room; one size in
 * a row; the same space between all cards; and when an outer card is turned,
 * the others stay where they are. Method: every row of a run has its middle pile
 * at one place, and the other cards stand beside it and grow outward, as piles
 * on a board do. One size is sought that fits the whole run. If one wide row
 * would shrink all others below the least size, the others keep the least size
 * and only the wide row is smaller. All widths are in em of the letters, so
 * that a resize needs no measuring.
 */
export interface RunLayout {
  readonly rows: readonly RowLayout[];
}

/** One row: the letters' size in pixels, each card's left edge in em from the row's middle. */
export interface RowLayout {
  readonly size: number;
  readonly lefts: readonly number[];
  /** The row's ends in em from the middle of the screen. */
  readonly from: number;
  readonly to: number;
}

/** The space there is, in pixels. */
export interface Space {
  readonly width: number;
  readonly height: number;
}

/** Height of an ascender (b, d, h, l) above the baseline, in em; measured on Andika. */
export const ASCENDER = 0.78;
/** A card's height in em; the stylesheet sets the same. */
export const CARD_HEIGHT = 1.62;
/** Space between two cards, in em. */
const GAP = 0.12;
/** Letters take this share of the screen's height when width allows, and at least the second. */
const wanted = 0.3;
const least = 0.262;
/** The row leaves this share of the width free, margins together. */
const margins = 0.06;
/** A one-letter card's width in em. */
const narrowCard = 1;

/** Space between two syllables, in em. */
const JOINT = 0.42;

/**
 * Lays out a run. `rows` holds, for each flip, the widths in em of its pieces;
 * `piles` how many of the first of them belong to piles (the rest is a silent e).
 * `openings` are, for each flip, the places of the pieces that begin a later syllable:
 * such rows stand with their first joint at one place, and more space there.
 */
export function layOut(
  rows: readonly (readonly number[])[],
  piles: number,
  space: Space,
  openings: readonly (readonly number[])[] = [],
): RunLayout {
  const anchored = rows.map((row, at) => anchoredRow(row, piles, openings[at] ?? []));
  const spread = Math.max(...anchored.map(widthOf), 0.1);
  const leftmost = Math.min(...anchored.map(({ from }) => from));
  const rightmost = Math.max(...anchored.map(({ to }) => to));
  const room = space.width * (1 - margins);
  const fitsAll = room / Math.max(rightmost - leftmost, spread);
  const tallest = (space.height * wanted) / ASCENDER;
  const most = openings.length > 0 ? Math.max(...rows.map(({ length }) => length)) : piles;
  const floor = floorOf(space, room, most);
  if (fitsAll >= floor) {
    const size = Math.min(fitsAll, tallest);
    const middle = middleOf(anchored, leftmost, rightmost, room / size);
    return { rows: anchored.map((row) => shifted(row, middle, size)) };
  }
  return {
    rows: anchored.map((row) =>
      shifted(row, (row.from + row.to) / 2, Math.min(floor, room / widthOf(row))),
    ),
  };
}

/** The mean of the rows' middles, as near as every row still fits. */
function middleOf(
  rows: readonly Anchored[],
  leftmost: number,
  rightmost: number,
  room: number,
): number {
  const mean = rows.reduce((sum, { from, to }) => sum + (from + to) / 2, 0) / rows.length;
  return Math.min(Math.max(mean, rightmost - room / 2), leftmost + room / 2);
}

/** The least size worth keeping for narrow rows when one row is too wide for it. */
function floorOf(space: Space, room: number, piles: number): number {
  const byHeight = (space.height * least) / ASCENDER;
  const singles = room / (piles * narrowCard + (piles - 1) * GAP);
  return byHeight <= singles ? byHeight : singles * 0.7;
}

type Anchored = Omit<RowLayout, 'size'>;

/** Zero is the middle of the middle pile's card; with two piles, the first one's inner edge. */
function anchoredRow(row: readonly number[], piles: number, openings: readonly number[]): Anchored {
  const lefts: number[] = [];
  let edge = 0;
  for (const [place, width] of row.entries()) {
    if (openings.includes(place)) edge += JOINT - GAP;
    lefts.push(edge);
    edge += width + GAP;
  }
  const [joint] = openings;
  if (joint !== undefined) {
    const zero = (lefts[joint] as number) - JOINT / 2;
    return { lefts: lefts.map((left) => left - zero), from: -zero, to: edge - GAP - zero };
  }
  const anchor = Math.floor((piles - 1) / 2);
  const share = piles % 2 === 1 ? 0.5 : 1;
  const zero = (lefts[anchor] ?? 0) + (row[anchor] ?? 0) * share;
  return { lefts: lefts.map((left) => left - zero), from: -zero, to: edge - GAP - zero };
}

function shifted(row: Anchored, middle: number, size: number): RowLayout {
  return {
    size,
    lefts: row.lefts.map((left) => rounded(left - middle)),
    from: row.from - middle,
    to: row.to - middle,
  };
}

function widthOf({ from, to }: Anchored): number {
  return to - from;
}

/** Rounded so that a card that stays is not drawn again for a hair's breadth. */
function rounded(em: number): number {
  return Math.round(em * 1e4) / 1e4;
}

/** Where the sweep ends when it goes under the first `count` pieces, in em from the row's middle. */
export function sweptTo({ lefts, to }: RowLayout, count: number): number {
  const next = lefts[count];
  return next === undefined ? to : next - GAP;
}

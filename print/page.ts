import type { Paper, Size } from './paper.ts';
import { paperSize } from './paper.ts';
import type { TaggedPart } from './part.ts';

/**
 * A printed page as a value. What is laid out here is painted twice, as a PDF (document.ts) and as the
 * preview on the screen (web/screens/print/page-preview.tsx), so the two cannot differ. All lengths are mm from the top left
 * corner of the page, downwards; colors are `#rrggbb`.
 */
export interface Page {
  readonly paper: Paper;
  /** Lying on its long side. */
  readonly landscape?: boolean;
  /** Turned by half a turn when it is painted: the back of a sheet that is turned over its top. */
  readonly upsideDown?: boolean;
  readonly marks: readonly PageMark[];
}

export type PageMark = TextMark | ShapeMark;

export type Weight = 'regular' | 'bold';
export type Align = 'left' | 'center' | 'right';

/** One line of text: `y` is its baseline, `size` the em in mm (`points(12)`), `x` where `align` holds it. */
export interface TextMark {
  readonly kind: 'text';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly ink: string;
  readonly weight?: Weight;
  readonly align?: Align;
  /** What it is a part of; left out for decoration. */
  readonly part?: TaggedPart;
}

/** An outline in SVG path syntax, moved by (`x`, `y`) mm after being enlarged `scale` times. */
export interface ShapeMark {
  readonly kind: 'shape';
  readonly path: string;
  readonly x?: number;
  readonly y?: number;
  readonly scale?: number;
  readonly fill?: string;
  readonly evenOdd?: boolean;
  /** From 0 to 1; 1 when left out. */
  readonly opacity?: number;
  readonly stroke?: string;
  /** Width of the stroke in mm, as printed. */
  readonly line?: number;
  /** Whether the stroke ends in half circles; its corners are always round. */
  readonly round?: boolean;
  /** Lengths in mm of dash and gap. */
  readonly dash?: readonly [number, number];
  /** What it is a part of; left out for decoration. */
  readonly part?: TaggedPart;
}

/** Width and height of a page in mm as it lies before the reader. */
export function pageSize({ paper, landscape }: Pick<Page, 'paper' | 'landscape'>): Size {
  const { width, height } = paperSize[paper];
  return landscape ? { width: height, height: width } : { width, height };
}

/** A straight line from one point to another. */
export function line(
  from: readonly [number, number],
  to: readonly [number, number],
  look: Pick<ShapeMark, 'stroke' | 'line' | 'dash'>,
): ShapeMark {
  return { kind: 'shape', path: `M${from.join(' ')}L${to.join(' ')}`, ...look };
}

/** A box with corners rounded by `round` mm. */
export function box(
  x: number,
  y: number,
  { width, height }: Size,
  look: Omit<ShapeMark, 'kind' | 'path'>,
  round = 0,
): ShapeMark {
  const arc = (dx: number, dy: number) => (round > 0 ? `a${round} ${round} 0 0 1 ${dx} ${dy}` : '');
  const path =
    `M${x + round} ${y}h${width - 2 * round}${arc(round, round)}v${height - 2 * round}` +
    `${arc(-round, round)}h${2 * round - width}${arc(-round, -round)}v${2 * round - height}` +
    `${arc(round, -round)}Z`;
  return { kind: 'shape', path, ...look };
}

/** A circle around (`x`, `y`). */
export function circle(
  x: number,
  y: number,
  radius: number,
  look: Omit<ShapeMark, 'kind' | 'path'>,
): ShapeMark {
  const half = (way: number) => `a${radius} ${radius} 0 1 1 ${way * 2 * radius} 0`;
  return { kind: 'shape', path: `M${x - radius} ${y}${half(1)}${half(-1)}Z`, ...look };
}

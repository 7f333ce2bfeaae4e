/**
 * The frame of a printed card and the letters in it. The shapes are those of the stage
 * (print/row-card.ts), at the height of a printed card: vowels live in arches, a cluster has faint
 * divisions, what only ends a word bends at its end.
 *
 * Letters stand by their ink: its middle in the middle of the frame, their baseline where the caller
 * puts it, so that all cards of a set have one baseline and one size. Only letters that would not fit
 * between the sides are smaller.
 */
import type { CardShape } from '../../core/language/card-shape.ts';
import type { Box } from '../box.ts';
import type { Inks } from '../ink.ts';
import { type Corner, type Corners, cornerBox } from '../outline.ts';
import { outlinePath } from '../outline-path.ts';
import { line, type PageMark } from '../page.ts';
import type { Typeface } from '../typeface.ts';

export interface FrameSpec {
  readonly shape: CardShape;
  readonly parts: readonly string[];
  readonly box: Box;
  /** The em of the letters in mm, if they fit. */
  readonly em: number;
  /** The baseline in mm from the top of the page. */
  readonly baseline: number;
  /** How much of the frame's foot is kept free of divisions, in mm, for a picture. */
  readonly foot: number;
}

/** Between the letters and the frame, in em. */
const PADDING = 0.16;

/** The frame and its letters. */
export function frameMarks(spec: FrameSpec, inks: Inks, typeface: Typeface): readonly PageMark[] {
  if (spec.shape === 'split') return splitMarks(spec, inks, typeface);
  const { box, shape, parts } = spec;
  const rooms = layRooms(spec, typeface);
  const ground = shape === 'arch' ? inks.arch : inks.card;
  const marks: PageMark[] = [outline(box, cornersOf(shape, box, spec.em), ground, inks, spec.em)];
  if (shape === 'ending') marks.push(seam(box, inks, spec.em));
  if (shape === 'slip') marks.push(spine(box, inks, spec.em));
  rooms.cuts.forEach((x) => {
    if (shape === 'carrier') marks.push(silentGround(spec, x, inks));
    const bottom = box.y + box.height - Math.max(spec.foot, spec.em * 0.06);
    const look = { stroke: inks.rule, line: spec.em * 0.012 };
    marks.push(line([x, box.y + spec.em * 0.06], [x, bottom], look));
  });
  parts.forEach((text, at) => {
    marks.push(letters(text, rooms.starts[at]!, spec.baseline, rooms.em, inks));
  });
  return marks;
}

interface Rooms {
  readonly em: number;
  /** Where each part's pen starts, in mm from the left of the page. */
  readonly starts: readonly number[];
  /** Where parts are divided. */
  readonly cuts: readonly number[];
}

/** Places the parts side by side, the middle of all ink in the middle of the frame. */
function layRooms({ parts, box, em, shape }: FrameSpec, typeface: Typeface): Rooms {
  const inks = parts.map((text) => typeface.ink(text, 1));
  const gap = shape === 'cluster' || shape === 'carrier' ? 0.26 : 0;
  const wide = inks.reduce((sum, { left, right }) => sum + right - left, 0);
  const total = wide + gap * (parts.length - 1);
  const bend = shape === 'cle' || shape === 'ending' ? 0.18 : 0;
  const fit = Math.min(em, (box.width * 0.94) / (total + 2 * PADDING + bend));
  let x = box.x + (box.width - (total + bend) * fit) / 2;
  const starts: number[] = [];
  const cuts: number[] = [];
  inks.forEach(({ left, right }, at) => {
    if (at > 0) {
      cuts.push(x + (gap * fit) / 2);
      x += gap * fit;
    }
    starts.push(x - left * fit);
    x += (right - left) * fit;
  });
  return { em: fit, starts, cuts };
}

/** An arch, the place of the consonant, and the silent e in a pale half arch. */
function splitMarks(spec: FrameSpec, inks: Inks, typeface: Typeface): readonly PageMark[] {
  const { parts, baseline, foot } = spec;
  const box = { ...spec.box, height: spec.box.height - foot };
  const wide = parts.map((text) => {
    const { left, right } = typeface.ink(text, 1);
    return right - left;
  });
  const [vowel = 0, silent = 0] = wide;
  const widths = [vowel + 0.5, 0.5, silent + 0.4] as const;
  const total = widths.reduce((sum, width) => sum + width, 0);
  const em = Math.min(spec.em, box.width / total);
  const spare = (box.width - total * em) / 2;
  const vowelBox = { ...box, width: widths[0] * em + spare };
  const silentBox = {
    ...box,
    x: box.x + vowelBox.width + widths[1] * em,
    width: widths[2] * em + spare,
  };
  const middle = [vowelBox, silentBox].map(({ x, width }) => x + width / 2);
  const gapLeft = vowelBox.x + vowelBox.width + 0.08 * em;
  return [
    outline(vowelBox, cornersOf('arch', vowelBox, em), inks.arch, inks, em),
    outline(silentBox, halfArch(silentBox, em), inks.pale, inks, em),
    line([gapLeft, baseline], [gapLeft + 0.34 * em, baseline], {
      stroke: inks.soft,
      line: em * 0.03,
    }),
    ...parts.map((text, at) => {
      const ink = typeface.ink(text, em);
      return letters(text, middle[at]! - (ink.left + ink.right) / 2, baseline, em, inks);
    }),
  ];
}

function letters(text: string, x: number, y: number, size: number, { ink }: Inks): PageMark {
  return { kind: 'text', text, x, y, size, ink };
}

/** The corners that tell one kind of card from another without colour. */
function cornersOf(shape: CardShape, { width, height }: Box, em: number): Corners {
  const tight: Corner = [em * 0.09, em * 0.09];
  const square: Corner = [0, 0];
  const half: Corner = [width / 2, Math.min(width / 2, height * 0.42)];
  const round = (share: number): Corner => [em * share, em * share];
  switch (shape) {
    case 'arch':
      return [half, half, tight, tight];
    case 'cle':
      return [tight, round(0.75), round(0.75), tight];
    case 'ending':
      return [square, tight, round(0.6), square];
    case 'welded':
      return [tight, tight, round(0.45), round(0.45)];
    case 'slip':
      return [square, tight, tight, square];
    default:
      return [tight, tight, tight, tight];
  }
}

function halfArch({ width, height }: Box, em: number): Corners {
  const tight: Corner = [em * 0.09, em * 0.09];
  return [[0, 0], [width * 0.9, Math.min(width, height * 0.42)], tight, [em * 0.03, em * 0.03]];
}

function outline(box: Box, corners: Corners, fill: string, { edge }: Inks, em: number): PageMark {
  const { x, y, width, height } = box;
  const path = outlinePath(cornerBox({ left: x, top: y, width, height, corners }));
  return { kind: 'shape', path, fill, stroke: edge, line: lineOf(em) };
}

/** The width of a frame's line in mm. */
function lineOf(em: number): number {
  return Math.max(0.3, em * 0.014);
}

/** The spine of a word known by sight, along its left side. */
function spine({ x, y, height }: Box, { ink }: Inks, em: number): PageMark {
  const wide = em * 0.06;
  return line([x + wide / 2, y], [x + wide / 2, y + height], { stroke: ink, line: wide });
}

/** The dashed left side of an ending, where it is joined to a base. */
function seam({ x, y, height }: Box, inks: Inks, em: number): PageMark {
  const dash = em * 0.05;
  return line([x, y + dash], [x, y + height - dash], {
    stroke: inks.card,
    line: lineOf(em) * 1.6,
    dash: [dash, dash],
  });
}

/** The pale ground of a silent e at the end of a card, inside its frame. */
function silentGround({ box, em, foot }: FrameSpec, x: number, { pale }: Inks): PageMark {
  const inner = lineOf(em) / 2;
  const tight: Corner = [em * 0.09 - inner, em * 0.09 - inner];
  const square: Corner = [0, 0];
  const path = outlinePath(
    cornerBox({
      left: x,
      top: box.y + inner,
      width: box.x + box.width - x - inner,
      height: box.height - inner - Math.max(foot, inner),
      corners: [square, tight, foot > 0 ? square : tight, square],
    }),
  );
  return { kind: 'shape', path, fill: pale };
}

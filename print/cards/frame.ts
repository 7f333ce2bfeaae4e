/**
 * The frame of a printed card and the letters in it. The shapes are those of the stage
 * (print/row-card.ts), at the height of a printed card: vowels live in arches, a cluster has faint
 * divisions, what only ends a word bends at its end.
 *
 * Letters stand by their ink: its middle, as the eye has it, in the middle of their room, their baseline
 * where the caller puts it, so that all cards of a set have one baseline. How large they are is said for
 * the whole set (letter-size.ts); only on a card that stands alone are they made to fit here.
 */
import type { CardShape } from '../../core/language/card-shape.ts';
import type { Box } from '../box.ts';
import type { Inks } from '../ink.ts';
import { type Corner, type Corners, cornerBox } from '../outline.ts';
import { outlinePath } from '../outline-path.ts';
import { line, type PageMark } from '../page.ts';
import { sweepStroke } from '../sweep-stroke.ts';
import type { Typeface } from '../typeface.ts';
import { bendOf, gapIn, inkWidths, leastWidth, SPLIT } from './letter-room.ts';

export interface FrameSpec {
  readonly shape: CardShape;
  readonly parts: readonly string[];
  readonly box: Box;
  /** Where in the box the letters stand: a picture has the rest, at the foot or at the right side. */
  readonly room: Box;
  /** The em of the letters in mm, if they fit. */
  readonly em: number;
  /** The baseline in mm from the top of the page. */
  readonly baseline: number;
}

/** The frame and its letters. */
export function frameMarks(spec: FrameSpec, inks: Inks, typeface: Typeface): readonly PageMark[] {
  if (spec.shape === 'split') return splitMarks(spec, inks, typeface);
  const { box, room, shape, parts } = spec;
  const laid = layLetters(spec, typeface);
  const ground = shape === 'arch' ? inks.arch : inks.card;
  const corners =
    shape === 'arch' ? archOver(spec, laid, typeface) : cornersOf(shape, box, spec.em);
  const marks: PageMark[] = [outline(box, corners, ground, inks, spec.em)];
  if (shape === 'ending') marks.push(seam(box, inks, spec.em));
  if (shape === 'slip') marks.push(spine(box, inks, spec.em));
  laid.cuts.forEach((x) => {
    if (shape === 'carrier') marks.push(silentGround(spec, x, inks));
    const bottom = Math.min(room.y + room.height, box.y + box.height - spec.em * 0.06);
    const look = { stroke: inks.rule, line: spec.em * 0.012 };
    marks.push(line([x, box.y + spec.em * 0.06], [x, bottom], look));
  });
  parts.forEach((text, at) => {
    marks.push(letters(text, laid.starts[at]!, spec.baseline, laid.em, inks));
  });
  return marks;
}

/**
 * The mark that says which way is up: the sweep line along a card's foot, so that a turned d is no p and a
 * turned n no u. As long as the foot is straight; an arch and the half arch of a silent e need none.
 */
export function uprightMark(shape: CardShape, box: Box, em: number, inks: Inks): PageMark {
  const thick = Math.min(1.5, Math.max(1.1, box.height * 0.018));
  const up = thick * 1.9;
  const [, , right, left] = cornersOf(shape, box, em);
  const bent = ([rx, ry]: Corner) =>
    up >= ry ? 0 : rx * (1 - Math.sqrt(1 - ((ry - up) / ry) ** 2));
  const from = box.x + Math.max(box.width * 0.07, bent(left) + 1.5);
  const to = box.x + box.width - Math.max(box.width * 0.07, bent(right) + 1.5);
  const steps = sweepStroke(from, to, box.y + box.height - up, thick);
  return { kind: 'shape', path: outlinePath(steps), fill: inks.sweep };
}

interface LaidLetters {
  readonly em: number;
  /** Where each part's pen starts, in mm from the left of the page. */
  readonly starts: readonly number[];
  /** Where parts are divided. */
  readonly cuts: readonly number[];
}

/** Places the parts side by side, their middle in the middle of the room. */
function layLetters({ parts, room, em, shape }: FrameSpec, typeface: Typeface): LaidLetters {
  const least = Math.max(0.1, leastWidth({ shape, parts }, typeface));
  const fit = Math.min(em, room.width / least);
  const gap = gapIn({ shape, parts }, room.width / fit, typeface) * fit;
  const widths = inkWidths(parts, typeface).map((width) => width * fit);
  const wide = widths.reduce((sum, width) => sum + width, 0) + gap * Math.max(0, parts.length - 1);
  const middle = room.x + (room.width - bendOf(shape) * fit) / 2;
  const [only, second] = parts;
  if (only !== undefined && second === undefined) {
    return { em: fit, starts: [middle - typeface.middle(only, fit)], cuts: [] };
  }
  let x = middle - wide / 2;
  const starts: number[] = [];
  const cuts: number[] = [];
  parts.forEach((text, at) => {
    if (at > 0) {
      cuts.push(x + gap / 2);
      x += gap;
    }
    starts.push(x - typeface.ink(text, fit).left);
    x += widths[at]!;
  });
  return { em: fit, starts, cuts };
}

/** The corners of an arch that no letter pokes through: less round where a tall one stands far out (igh). */
function archOver({ box, parts, baseline, em }: FrameSpec, laid: LaidLetters, typeface: Typeface) {
  const corners = cornersOf('arch', box, em);
  const free = 0.05 * laid.em;
  const tips = parts.flatMap((text, at) => {
    const start = laid.starts[at]! - box.x;
    return [...text].map((letter, index) => {
      const pen = start + typeface.lay(text.slice(0, index), laid.em).width;
      const { left, right, top } = typeface.ink(letter, laid.em);
      return {
        side: Math.min(pen + left, box.width - pen - right) - free,
        down: baseline - box.y - top - free,
      };
    });
  });
  const isOut = (bow: number) =>
    tips.some(
      ({ side, down }) => side < bow && down < bow && Math.hypot(bow - side, bow - down) > bow,
    );
  let [bow] = corners[0];
  while (bow > 1 && isOut(bow)) bow *= 0.93;
  const round: Corner = [bow, bow];
  return [round, round, corners[2], corners[3]] as const;
}

/** An arch, the place of the consonant, and the silent e in a pale half arch. */
function splitMarks(spec: FrameSpec, inks: Inks, typeface: Typeface): readonly PageMark[] {
  const { parts, baseline, room } = spec;
  const em = Math.min(spec.em, room.width / leastWidth(spec, typeface));
  const [vowel = 0, silent = 0] = inkWidths(parts, typeface);
  const widths = [vowel + SPLIT.vowel, SPLIT.consonant, silent + SPLIT.silent] as const;
  const spare = (room.width - widths.reduce((sum, width) => sum + width, 0) * em) / 3;
  const vowelBox = { ...room, width: widths[0] * em + spare };
  const silentWidth = widths[2] * em + spare;
  const silentBox = { ...room, x: room.x + room.width - silentWidth, width: silentWidth };
  const between = silentBox.x - vowelBox.x - vowelBox.width;
  const gapLeft = vowelBox.x + vowelBox.width + between * 0.16;
  return [
    outline(vowelBox, cornersOf('arch', vowelBox, em), inks.arch, inks, em),
    outline(silentBox, halfArch(silentBox, em), inks.pale, inks, em),
    line([gapLeft, baseline], [gapLeft + between * 0.68, baseline], {
      stroke: inks.soft,
      line: em * 0.03,
    }),
    ...parts.map((text, at) => {
      const { x, width } = at === 0 ? vowelBox : silentBox;
      return letters(text, x + width / 2 - typeface.middle(text, em), baseline, em, inks);
    }),
  ];
}

function letters(text: string, x: number, y: number, size: number, { ink }: Inks): PageMark {
  return { kind: 'text', text, x, y, size, ink };
}

/** The corners that tell one kind of card from another without color. */
function cornersOf(shape: CardShape, { width, height }: Box, em: number): Corners {
  const tight: Corner = [em * 0.09, em * 0.09];
  const square: Corner = [0, 0];
  const bow = Math.min(width / 2, height * 0.42);
  const half: Corner = [bow, bow];
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
  return Math.min(0.9, Math.max(0.3, em * 0.014));
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

/** The pale ground of a silent e at the end of a card's letters, inside its frame. */
function silentGround({ box, room, em }: FrameSpec, x: number, { pale }: Inks): PageMark {
  const inner = lineOf(em) / 2;
  const tight: Corner = [em * 0.09 - inner, em * 0.09 - inner];
  const square: Corner = [0, 0];
  const atSide = room.width >= box.width;
  const atFoot = room.height >= box.height;
  const right = atSide ? box.x + box.width - inner : room.x + room.width;
  const bottom = atFoot ? box.y + box.height - inner : room.y + room.height;
  const top = box.y + inner;
  const corners: Corners = [
    square,
    atSide ? tight : square,
    atSide && atFoot ? tight : square,
    square,
  ];
  const path = outlinePath(
    cornerBox({ left: x, top, width: right - x, height: bottom - top, corners }),
  );
  return { kind: 'shape', path, fill: pale };
}

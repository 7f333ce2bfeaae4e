import type { Box } from '../box.ts';
import type { Inks } from '../ink.ts';
import type { PageMark } from '../page.ts';
import { type Pictures, pictureMarks } from '../picture.ts';
import type { Typeface } from '../typeface.ts';
import { frameMarks } from './frame.ts';
import type { PaperCard } from './paper-card.ts';

/** How the cards of one printing look. */
export interface CardLook {
  readonly inks: Inks;
  readonly typeface: Typeface;
  readonly grey: boolean;
  /** Pictures of keywords at the foot of the cards; null for letters alone. */
  readonly pictures: Pictures | null;
}

/** The pupils' side of a card, in its frame: letters, and at its foot the keyword with its picture. */
export function frontMarks(card: PaperCard, box: Box, look: CardLook): readonly PageMark[] {
  const { inks, typeface, pictures } = look;
  const em = emOf(box);
  const foot = pictures ? box.width * 0.5 : 0;
  const baseline = box.y + (box.height - foot) / 2 + em * (pictures ? 0.34 : 0.26);
  const { shape, parts, keyword } = card;
  const frame = { shape, parts, box, em, baseline };
  if (!pictures || !keyword) return frameMarks({ ...frame, foot: 0 }, inks, typeface);
  return [...frameMarks({ ...frame, foot }, inks, typeface), ...footMarks(keyword, box, look)];
}

/** The size of the letters of a set, in mm: two letters such as sh fill the width. */
function emOf({ width, height }: Box): number {
  return Math.min(width * 0.58, height * 0.42);
}

function footMarks(keyword: string, box: Box, look: CardLook): readonly PageMark[] {
  const { inks, typeface, grey } = look;
  const { width } = box;
  const picture = look.pictures?.get(keyword);
  const size = width * 0.34;
  const middle = box.x + box.width / 2;
  const bottom = box.y + box.height;
  const wanted = width * 0.085;
  const fit = (width * 0.9) / typeface.lay(keyword, 1).width;
  const word: PageMark = {
    kind: 'text',
    text: keyword,
    x: middle,
    y: bottom - width * (picture ? 0.065 : 0.15),
    size: Math.min(wanted, fit),
    ink: inks.soft,
    align: 'center',
  };
  if (!picture) return [word];
  const corner = { x: middle - size / 2, y: bottom - width * 0.17 - size, size };
  return [...pictureMarks(picture, corner, grey), word];
}

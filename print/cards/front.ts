import { asParagraph } from '../as-part.ts';
import type { Box } from '../box.ts';
import type { Inks } from '../ink.ts';
import type { PageMark } from '../page.ts';
import { type Pictures, pictureMarks } from '../picture.ts';
import type { Typeface } from '../typeface.ts';
import { frameMarks, uprightMark } from './frame.ts';
import { ABOVE, BELOW, type LetterSizes } from './letter-size.ts';
import type { PaperCard } from './paper-card.ts';

/** How the cards of one printing look. */
export interface CardLook {
  readonly inks: Inks;
  readonly typeface: Typeface;
  readonly grey: boolean;
  /** Pictures of keywords at the foot of the cards; null for letters alone. */
  readonly pictures: Pictures | null;
}

/** How the cards of a set are made alike. */
export interface CardSet {
  readonly sizes: LetterSizes;
  /** Lying loose, so that each says which way is up; else they hang on rings. */
  readonly loose: boolean;
}

/** How much lower than its head a loose card ends for its letters, in mm: the mark at its foot lies there. */
const UP = 1.6;
/** What that mark has of the foot of an upright card, in mm. */
const MARK = 2.6;

/**
 * The pupils' side of a card, in its frame: letters, and the keyword with its picture at the foot of an
 * upright card, beside the letters of one that lies.
 */
export function frontMarks(
  card: PaperCard,
  box: Box,
  { sizes, loose }: CardSet,
  look: CardLook,
): readonly PageMark[] {
  const { inks, typeface, pictures } = look;
  const { shape, parts, keyword } = card;
  const em = sizes.of(card);
  const kept = letterRoom(box, pictures !== null);
  const isPictured = pictures !== null && keyword !== null;
  const high = (ABOVE + BELOW) * sizes.full;
  const head = (kept.height - (loose ? UP : 0) - high) / 2;
  const baseline = kept.y + head + ABOVE * sizes.full;
  const room = isPictured ? kept : box;
  const frame = frameMarks({ shape, parts, box, room, em, baseline }, inks, typeface);
  const isTurnable = loose && shape !== 'arch' && shape !== 'split';
  return [
    ...spoken(card, frame),
    ...(isTurnable ? [uprightMark(shape, box, em, inks)] : []),
    ...(isPictured ? keywordMarks(keyword, pictureRoom(box, loose ? MARK : 0), look) : []),
  ];
}

/** The frame as decoration and the letters as a paragraph, of which several parts are said as one. */
function spoken({ shape, parts }: PaperCard, frame: readonly PageMark[]): readonly PageMark[] {
  const says = parts.join(shape === 'split' ? '–' : '');
  return [
    ...frame.filter(({ kind }) => kind === 'shape'),
    ...asParagraph(
      frame.filter(({ kind }) => kind === 'text'),
      parts.length > 1 ? says : undefined,
    ),
  ];
}

/** Where the letters of a card stand: all of it, or what its picture leaves. */
export function letterRoom(box: Box, pictured: boolean): Box {
  if (!pictured) return box;
  const { width, height } = pictureRoom(box);
  return lies(box) ? { ...box, width: box.width - width } : { ...box, height: box.height - height };
}

/** The place of the picture: the foot of an upright card, the right side of one that lies. */
function pictureRoom({ x, y, width, height }: Box, mark = 0): Box {
  if (lies({ width, height })) {
    const column = width * 0.3;
    return { x: x + width - column, y, width: column, height };
  }
  return { x, y: y + height - width * 0.5, width, height: width * 0.5 - mark };
}

function lies({ width, height }: Pick<Box, 'width' | 'height'>): boolean {
  return width > height;
}

/** A picture in the middle of its room, and its word beneath. */
function keywordMarks(keyword: string, room: Box, look: CardLook): readonly PageMark[] {
  const { inks, typeface, grey } = look;
  const picture = look.pictures?.get(keyword);
  const side = Math.min(room.width * 0.82, room.height * 0.68);
  const size = Math.min(side * 0.25, (room.width * 0.92) / typeface.lay(keyword, 1).width);
  const middle = room.x + room.width / 2;
  const high = picture ? side + size * 1.2 : size;
  const top = room.y + (room.height - high) / 2 - size * 0.4;
  const word: PageMark = {
    kind: 'text',
    text: keyword,
    x: middle,
    y: top + high,
    size,
    ink: inks.soft,
    align: 'center',
  };
  const said = asParagraph([word]);
  if (!picture) return said;
  const place = { x: middle - side / 2, y: top, size: side, alt: keyword };
  return [...pictureMarks(picture, place, grey), ...said];
}

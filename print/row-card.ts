/**
 * One piece of a row of cards as outlines, in em of its letters: the same shapes
 * as on the stage, so that children meet one card everywhere. The card's left
 * edge is x 0, its top y 0, y runs down; all cards of a row have one height and
 * one baseline.
 */

import { type Piece, pieceKey } from '../core/boards/shapes/pieces.ts';
import { CARD_HEIGHT } from '../core/boards/shapes/row-layout.ts';
import { graphemeOf } from '../core/language/card-id.ts';
import { type CardShape, shapeOfCard } from '../core/language/card-shape.ts';
import { correspondenceById } from '../core/language/correspondences.ts';
import type { Letters, OutlineStep } from './glyphs.ts';
import { opticalMiddle } from './optical-middle.ts';
import { type Corner, type Corners, cornerBox, placed } from './outline.ts';
import { solidParts } from './solid-parts.ts';

/** What a part of a card is painted with. */
export type CardInk = 'card' | 'arch' | 'pale' | 'letters' | 'divider';

/** One painted outline of a card; it does not overlap itself. */
export interface CardPart {
  readonly ink: CardInk;
  readonly steps: readonly OutlineStep[];
}

/** A card as it is drawn: its frame, what lies on it from back to front, its width in em. */
export interface RowCard {
  readonly key: string;
  readonly letters: string;
  readonly width: number;
  readonly frame: readonly OutlineStep[];
  readonly ground: CardInk;
  readonly parts: readonly CardPart[];
}

/** Where the letters stand below a card's top, in em: the stage's own place for them. */
const BASELINE = 1.225;

/** Letters with the room to their left and right, in em. */
interface Room {
  readonly text: string;
  readonly before: number;
  readonly after: number;
  readonly ground?: CardInk;
}

/** The card of a piece. Throws when the letters lack a character. */
export function rowCard(piece: Piece, letters: Letters): RowCard {
  const shape = piece.part === 'whole' ? shapeOfCard(piece.id) : piece.part;
  const rooms = roomsOf(piece, shape);
  const widths = rooms.map(
    ({ text, before, after }) => before + letters.outlineOf(text).advance + after,
  );
  const natural = widths.reduce((sum, width) => sum + width, 0);
  const width = Math.max(natural, shape === 'silent-e' ? 0.92 : 1);
  const spare = (width - natural) / rooms.length;
  const parts: CardPart[] = [];
  let left = 0;
  rooms.forEach((room, at) => {
    const wide = (widths[at] as number) + spare;
    if (room.ground) {
      parts.push({ ink: room.ground, steps: silentGround(left, width) });
    }
    if (at > 0) parts.push({ ink: 'divider', steps: divider(left) });
    const solids = solidParts(standing(room, letters, left + spare / 2));
    parts.push(...solids.map((steps): CardPart => ({ ink: 'letters', steps })));
    left += wide;
  });
  return {
    key: pieceKey(piece),
    letters: rooms.map(({ text }) => text).join(''),
    width,
    frame: box(width, corners(shape, width)),
    ground: shape === 'arch' || shape === 'vowel' ? 'arch' : shape === 'silent-e' ? 'pale' : 'card',
    parts,
  };
}

type RowShape = CardShape | 'vowel' | 'silent-e';

function roomsOf({ id }: Piece, shape: RowShape): readonly Room[] {
  const card = correspondenceById.get(id);
  const text = card?.grapheme ?? id;
  if (shape === 'vowel') return [{ text: text.slice(0, 1), before: 0.19, after: 0.19 }];
  if (shape === 'silent-e') return [{ text: 'e', before: 0.14, after: 0.2 }];
  if (shape === 'carrier') {
    return [
      { text: text.slice(0, -1), before: 0.19, after: 0.14 },
      { text: 'e', before: 0.12, after: 0.19, ground: 'pale' },
    ];
  }
  if (shape === 'cluster') {
    const parts = (card?.parts ?? []).map(graphemeOf);
    return parts.map((part, at) => ({
      text: part,
      before: at === 0 ? 0.18 : 0.12,
      after: at === parts.length - 1 ? 0.18 : 0.12,
    }));
  }
  const after = shape === 'cle' ? 0.36 : shape === 'ending' ? 0.3 : 0.19;
  return [{ text, before: 0.19, after }];
}

const tight: Corner = [0.07, 0.07];
const square: Corner = [0, 0];

/** The corners that tell one kind of card from another without color. */
function corners(shape: RowShape, width: number): Corners {
  const half: Corner = [width / 2, 0.6];
  const foot: Corner = [0.08, 0.08];
  switch (shape) {
    case 'arch':
    case 'vowel':
    case 'split':
      return [half, half, foot, foot];
    case 'silent-e':
      return [square, [0.85, 1], foot, [0.03, 0.03]];
    case 'cle':
      return [tight, [0.8, 0.8], [0.8, 0.8], tight];
    case 'ending':
      return [square, tight, [0.6, 0.6], square];
    case 'welded':
      return [tight, tight, [0.36, 0.36], [0.36, 0.36]];
    default:
      return [tight, tight, tight, tight];
  }
}

function box(width: number, radii: Corners): OutlineStep[] {
  return cornerBox({ left: 0, top: 0, width, height: CARD_HEIGHT, corners: radii });
}

/** Letters in their room, their middle, as the eye has it, in the middle of their advance. */
function standing({ text, before }: Room, letters: Letters, left: number): OutlineStep[] {
  const outline = letters.outlineOf(text);
  const nudge = outline.advance / 2 - opticalMiddle(outline);
  return placed(outline.steps, { x: left + before + nudge, y: BASELINE, scaleX: 1, scaleY: -1 });
}

const HAIR = 0.012;

/** The faint division between letters that keep their own sounds. */
function divider(left: number): OutlineStep[] {
  return cornerBox({
    left: left - HAIR / 2,
    top: 0.02,
    width: HAIR,
    height: CARD_HEIGHT - 0.04,
    corners: [square, square, square, square],
  });
}

/** The pale ground of a silent e at a card's end, inside its frame. */
function silentGround(left: number, width: number): OutlineStep[] {
  return cornerBox({
    left,
    top: HAIR,
    width: width - left - HAIR,
    height: CARD_HEIGHT - 2 * HAIR,
    corners: [square, tight, tight, square],
  });
}

import { CARD_HEIGHT, type RowLayout, type Space } from '../../../core/boards/shapes/row-layout.ts';

/** Where things stand from top to bottom, in pixels. */
export interface Ground {
  readonly rowTop: number;
  readonly rowBottom: number;
  readonly sweepTop: number;
  readonly sweepThick: number;
  readonly answerTop: number;
  readonly answerHeight: number;
}

/** A row alone stands in the middle; one that is swept leaves room beneath. */
const shareAbove = { alone: 0.45, swept: 0.34 } as const;

/** The heights of a moment's sheet. */
export function groundOf(
  layout: RowLayout | undefined,
  space: Space,
  manner: keyof typeof shareAbove,
): Ground {
  const size = layout?.size ?? 0;
  const high = size * CARD_HEIGHT;
  const rowTop = Math.max((space.height - high) * shareAbove[manner], 8);
  const rowBottom = rowTop + high;
  const sweepThick = Math.max(6, size * 0.037);
  const sweepTop = rowBottom + Math.max(sweepThick * 1.6, space.height * 0.02);
  const answerTop = sweepTop + sweepThick * 4;
  const left = space.height * 0.94 - answerTop;
  const answerHeight = Math.min(Math.max(left, 24), space.height * 0.09);
  return { rowTop, rowBottom, sweepTop, sweepThick, answerTop, answerHeight };
}

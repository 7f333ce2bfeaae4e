/** How much room the letters of a card take, and how it is shared out. Lengths in em of the letters. */
import type { CardShape } from '../../core/language/card-shape.ts';
import type { Typeface } from '../typeface.ts';

/** The least between the letters and the frame. */
export const PADDING = 0.09;
/** Between letters that keep their own sounds: what they need, and what they take where there is room. */
const GAP = { least: 0.14, most: 0.26 };
/** Around the vowel, for the consonant, and around the silent e of a split card. */
export const SPLIT = { vowel: 0.24, consonant: 0.34, silent: 0.2 };

interface Lettered {
  readonly shape: CardShape;
  readonly parts: readonly string[];
}

/** The least width of a card's letters with what must stand free beside them. */
export function leastWidth({ shape, parts }: Lettered, typeface: Typeface): number {
  const wide = inkWidths(parts, typeface).reduce((sum, width) => sum + width, 0);
  if (shape === 'split') return wide + SPLIT.vowel + SPLIT.consonant + SPLIT.silent;
  const gaps = isDivided(shape) ? GAP.least * Math.max(0, parts.length - 1) : 0;
  return wide + gaps + 2 * PADDING + bendOf(shape);
}

/** The gap between the parts of a card in a room `width` em wide. */
export function gapIn({ shape, parts }: Lettered, width: number, typeface: Typeface): number {
  if (!isDivided(shape) || parts.length < 2) return 0;
  const wide = inkWidths(parts, typeface).reduce((sum, each) => sum + each, 0);
  const spare = (width - wide - bendOf(shape) - 2 * GAP.least) / (parts.length - 1);
  return Math.min(GAP.most, Math.max(GAP.least, spare));
}

/** How wide the ink of each part is. */
export function inkWidths(parts: readonly string[], typeface: Typeface): readonly number[] {
  return parts.map((text) => {
    const { left, right } = typeface.ink(text, 1);
    return right - left;
  });
}

/** What a bent right side takes from the room. */
export function bendOf(shape: CardShape): number {
  return shape === 'cle' || shape === 'ending' ? 0.18 : 0;
}

function isDivided(shape: CardShape): boolean {
  return shape === 'cluster' || shape === 'carrier';
}

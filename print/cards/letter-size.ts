/**
 * How large the letters of a set of cards are.
 *
 * A set has one size: the largest at which one or two letters fit its card. What cannot fit is smaller as a
 * whole family (all cards with a silent e, all clusters, all syllables, all words), so that two cards of a kind never differ;
 * families that must shrink a little share the size of the one that must shrink most.
 */
import type { Box } from '../box.ts';
import type { Typeface } from '../typeface.ts';
import { leastWidth, PADDING } from './letter-room.ts';
import type { PaperCard } from './paper-card.ts';

/** The widest pair of letters that most cards carry, qu, and all ink from the top of b to the foot of p, in em. */
const PAIR = 1.035;
const HIGH = 1.022;
/** What a card keeps free above and below its letters, in mm: the mark at its foot stands there. */
const FREE = 7;

/** The sizes of a set's letters, em in mm. */
export interface LetterSizes {
  /** Of cards with one letter or two. */
  readonly full: number;
  readonly of: (card: PaperCard) => number;
}

/** The letters of the cards of a set whose rooms have this size. */
export function letterSizes(
  cards: readonly PaperCard[],
  room: Pick<Box, 'width' | 'height'>,
  typeface: Typeface,
): LetterSizes {
  const full = Math.min(room.width / (PAIR + 2 * PADDING), (room.height - FREE) / HIGH);
  const fits = new Map<Family, number>();
  for (const card of cards) {
    const family = familyOf(card);
    const fit = Math.min(full, room.width / Math.max(0.1, leastWidth(card, typeface)));
    fits.set(family, Math.min(fits.get(family) ?? full, fit));
  }
  const shared = Math.min(full, ...SHARING.map((family) => fits.get(family) ?? full));
  return {
    full,
    of(card) {
      const family = familyOf(card);
      const fit = fits.get(family) ?? full;
      return fit < full && SHARING.includes(family) ? shared : fit;
    },
  };
}

/** The middle of the letters' height, from above the baseline to below it, in em. */
export const ABOVE = 0.781;
export const BELOW = HIGH - ABOVE;

/** Longer words and phrases have a size of their own, so that they do not make the short ones small. */
const LONG_WORD = 8;

type Family =
  | 'one'
  | 'two'
  | 'three'
  | 'more'
  | 'split'
  | 'cluster'
  | 'syllable'
  | 'word'
  | 'phrase';

/** The families of a few letters; pairs nearly fit, and the longest graphemes and whole words are far smaller. */
const SHARING: readonly Family[] = ['three', 'split', 'cluster'];

function familyOf({ shape, parts, back, isSyllable }: PaperCard): Family {
  if (isSyllable) return 'syllable';
  if (shape === 'split' || shape === 'cluster') return shape;
  const text = parts.join('');
  const count = text.length;
  if (shape === 'slip' || (back === null && count > 2)) {
    return count > LONG_WORD || text.includes(' ') ? 'phrase' : 'word';
  }
  return count <= 1 ? 'one' : count === 2 ? 'two' : count === 3 ? 'three' : 'more';
}

/**
 * How large a sheet is printed: larger where its page would be half empty, a little smaller where a few lines
 * would stand alone on a last page or the sheet is meant for one; where smaller is not enough, larger, so that
 * more lines stand there.
 */
import type { Page } from '../page.ts';
import { type Block, type Flowed, flowPages } from './flow.ts';
import type { SheetLook } from './sheet-look.ts';

export interface FitSpec {
  readonly foot: string;
  /** How small it may become to fit one page; left out where it may be of any length. */
  readonly onePage?: number;
}

/** A last page with less than this share of it filled stands nearly empty. */
const LONELY = 0.25;
/** So much smaller is a sheet printed at most to spare a nearly empty page. */
const CLOSEST = 0.86;
/** A page filled less than this has room for larger letters, so much larger at most. */
const HALF_EMPTY = 0.62;
const LARGEST = 1.3;
const STEP = 0.03;

/** The pages of the blocks that `make` lays out, at the size that fits them best. */
export function fitPages(
  make: (look: SheetLook) => readonly Block[],
  { foot, onePage }: FitSpec,
  look: SheetLook,
): readonly Page[] {
  const at = (zoom: number): Flowed => {
    const zoomed = { ...look, zoom };
    return flowPages(make(zoomed), foot, zoomed);
  };
  const plain = at(1);
  const count = plain.pages.length;
  if (count > 1) {
    const isLonely = plain.filled < LONELY;
    const least = onePage ?? (isLonely ? CLOSEST : 1);
    const wanted = onePage === undefined ? count - 1 : 1;
    for (let zoom = 1 - STEP; zoom >= least; zoom -= STEP) {
      const closer = at(zoom);
      if (closer.pages.length <= wanted) return closer.pages;
    }
    return isLonely ? filledOut(at, plain) : plain.pages;
  }
  if (plain.filled >= HALF_EMPTY) return plain.pages;
  for (let zoom = LARGEST; zoom > 1; zoom -= STEP) {
    const larger = at(zoom);
    if (larger.pages.length === 1) return larger.pages;
  }
  return plain.pages;
}

/** Pages whose last one is nearly empty, larger by as little as fills it without beginning another. */
function filledOut(at: (zoom: number) => Flowed, plain: Flowed): readonly Page[] {
  for (let zoom = 1 + STEP; zoom <= LARGEST; zoom += STEP) {
    const larger = at(zoom);
    if (larger.pages.length > plain.pages.length) break;
    if (larger.filled >= LONELY) return larger.pages;
  }
  return plain.pages;
}

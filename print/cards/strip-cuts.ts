/**
 * How a punched sheet is cut into strips that hang side by side in one binder and turn one by one.
 *
 * A whole sheet is punched along its long edge as any sheet is, then cut from top to bottom, so that the
 * strips of all sheets fit over each other. Each strip needs a ring of its own, and its holes lie the same on
 * both sides of its middle, so that it hangs straight: what is too much on one side is cut away. Piles that
 * find no ring in one binder, or only on strips too narrow for letters, hang in a second beside it, shared
 * out evenly.
 */
import { holePlaces, holesOf, type RingCount } from '../binder.ts';
import { type Paper, paperSize } from '../paper.ts';

/** A strip of the sheet, from left to right in mm, and the middles of its holes. */
export interface Strip {
  readonly left: number;
  readonly right: number;
  readonly holes: readonly number[];
}

/** Paper that must be left between a hole and a cut, in mm: less tears. */
const WEB = 3;
/** The narrowest strip for letters that a group can read, in mm. */
const NARROWEST = 55;

/** How many piles hang in each binder: as few binders as there can be, evenly filled. */
export function pilesByBinder(piles: number, rings: RingCount, paper: Paper): readonly number[] {
  const shared = (binders: number) =>
    Array.from({ length: binders }, (_, at) => Math.ceil((piles - at) / binders));
  const isWide = (count: number) =>
    count === 1 ||
    stripsOf(count, rings, paper).every(({ left, right }) => right - left >= NARROWEST);
  let binders = Math.ceil(piles / rings);
  while (!isWide(shared(binders)[0] ?? 1)) binders += 1;
  return shared(binders);
}

/** The strips of a sheet punched along its long edge, for at most as many piles as rings. */
export function stripsOf(piles: number, rings: RingCount, paper: Paper): readonly Strip[] {
  const width = paperSize[paper].height;
  const middles = holePlaces(rings, paper, width);
  const clear = holesOf(rings, paper).diameter / 2 + WEB;
  const evenly = (count: number): readonly Strip[] =>
    Array.from({ length: count }, (_, at) => {
      const [left, right] = [(at * width) / count, ((at + 1) * width) / count];
      return { left, right, holes: middles.filter((hole) => hole > left && hole < right) };
    });
  const hangs = ({ left, right, holes }: Strip): boolean =>
    holes.length > 0 &&
    middles.every((hole) => Math.min(...[left, right].map((cut) => Math.abs(hole - cut))) >= clear);
  const strips = evenly(piles);
  return (strips.every(hangs) ? strips : evenly(rings).slice(0, piles)).map(straighten);
}

/** Narrows a strip to what lies the same on both sides of the middle of its holes. */
function straighten({ left, right, holes }: Strip): Strip {
  const middle = holes.reduce((sum, hole) => sum + hole, 0) / holes.length;
  const half = Math.min(middle - left, right - middle);
  return { left: middle - half, right: middle + half, holes };
}

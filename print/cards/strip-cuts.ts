/**
 * How a punched sheet is cut into strips that hang side by side in one binder and turn one by one.
 *
 * A whole sheet is punched along its long edge as any sheet is, then cut from top to bottom, so that the
 * strips of all sheets fit over each other. Each strip needs a ring of its own. Piles that find no ring
 * in one binder hang in a second beside it, shared out evenly.
 */
import { holePlaces, holesOf, type RingCount } from '../binder.ts';

/** A strip of the sheet, from left to right in mm, and the middles of its holes. */
export interface Strip {
  readonly left: number;
  readonly right: number;
  readonly holes: readonly number[];
}

/** Paper that must be left between a hole and a cut, in mm: less tears. */
const WEB = 3;
/** How far from its middle a strip may hang on a single ring, in mm, before it hangs askew. */
const ASKEW = 22;

/** How many piles hang in each binder: as few binders as there can be, evenly filled. */
export function pilesByBinder(piles: number, rings: RingCount): readonly number[] {
  const binders = Math.ceil(piles / rings);
  return Array.from({ length: binders }, (_, at) => Math.ceil((piles - at) / binders));
}

/** The strips of a sheet `width` mm long at its punched edge, for at most as many piles as rings. */
export function stripsOf(piles: number, rings: RingCount, width: number): readonly Strip[] {
  const middles = holePlaces(rings, width);
  const clear = holesOf[rings].diameter / 2 + WEB;
  const evenly = (count: number): readonly Strip[] =>
    Array.from({ length: count }, (_, at) => {
      const [left, right] = [(at * width) / count, ((at + 1) * width) / count];
      return { left, right, holes: middles.filter((hole) => hole > left && hole < right) };
    });
  const hangs = ({ left, right, holes }: Strip): boolean =>
    holes.length > 0 &&
    middles.every((hole) => Math.min(...[left, right].map((cut) => Math.abs(hole - cut))) >= clear);
  const strips = evenly(piles);
  const kept = strips.every(hangs) ? strips : evenly(rings).slice(0, piles);
  return kept.map(straighten);
}

/** Narrows a strip on a single ring so that it hangs nearly straight. */
function straighten({ left, right, holes }: Strip): Strip {
  const [hole, second] = holes;
  if (hole === undefined || second !== undefined) return { left, right, holes };
  const room = 2 * (Math.min(hole - left, right - hole) + ASKEW);
  if (room >= right - left) return { left, right, holes };
  return hole - left < right - hole
    ? { left, right: left + room, holes }
    : { left: right - room, right, holes };
}

import { shapeById } from '../boards/shapes/shape-list.ts';
import { type Shape, vowelPile } from '../boards/shapes/shapes.ts';
import { longerShapeFor, shapesFor } from '../boards/shapes/shapes-for.ts';
import { asksForHabits } from '../boards/shapes/taught-cards.ts';
import type { CardId } from '../language/card-id.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { NARROW } from './draw-piles.ts';
import { type DrillSpec, taughtPairs } from './drill-spec.ts';

/**
 * The shape asked for; else the one that takes most, or the one whose vowels
 * come last when the newest do, or a longer one that the newest cards need. New
 * vowels of both kinds take turns by the seed. Last come a base with an ending
 * and words of two beats, for what makes no short word (jump·ing, na·tion). At
 * least one; the first is best.
 */
export function shapesToTry(spec: DrillSpec): readonly Shape[] {
  const { shape, newest = [], taught } = spec;
  const asked = shape === undefined ? undefined : shapeById.get(shape);
  if (asked) return [asked];
  const beats = shapeById.get('beats') as Shape;
  const longer = longerShapeFor(taught, newest);
  if (longer?.form === 'beats') return [longer];
  const shapes = longer ? [longer, shapeById.get('syllable') as Shape] : shortShapes(spec);
  if (newest.length === 0) return shapes;
  const other = shapesFor(taught, newest).find((each) => asksForHabits(each));
  const more = [...(other ? [other] : []), ...(taught.habits.has('long-words') ? [beats] : [])];
  return [...new Set([...shapes, ...more])];
}

function shortShapes({ newest = [], taught, contrasts = [], seed }: DrillSpec): readonly Shape[] {
  const general = shapeById.get('syllable') as Shape;
  const open = shapeById.get('open') as Shape;
  const fresh = newest.flatMap((id) => correspondenceById.get(id) ?? []);
  const isLast = (card: Correspondence): boolean => vowelPile(open).takes(card);
  const isInner = (card: Correspondence): boolean =>
    vowelPile(general).takes(card) && !(NARROW.has(card.id) && isLast(card));
  if (!fresh.some((card) => isLast(card) && !isInner(card))) return [general];
  const lastFirst = !fresh.some(isInner) || Math.abs(seed) % 2 === 1;
  const holds = (candidate: Shape): boolean =>
    taughtPairs(taught, contrasts).every((pair) => fitTogether(candidate, pair));
  if (lastFirst && !holds(open) && holds(general)) return [general, open];
  return lastFirst ? [open, general] : [general, open];
}

/** Whether some pile of the shape takes both cards. */
function fitTogether({ piles }: Shape, pair: readonly CardId[]): boolean {
  const cards = pair.flatMap((id) => correspondenceById.get(id) ?? []);
  return piles.some(({ takes }) => cards.every(takes));
}

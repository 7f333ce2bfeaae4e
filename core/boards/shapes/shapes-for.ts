import type { CardId } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import type { Taught } from '../../language/taught.ts';
import { SHAPES, shapeById } from './shape-list.ts';
import { candidates, type Shape, vowelPile } from './shapes.ts';
import { asksForHabits, cardsTaught } from './taught-cards.ts';

const CLUSTERS = ['s-clusters', 'l-clusters', 'r-clusters', 'three-clusters'] as const;

/**
 * The shapes that a group can lay, the fittest for the newest cards first: those
 * in which most of them lie, and among equals the one that mixes them with most
 * earlier vowels. With no newest card that fits anywhere, all that can be laid.
 */
export function shapesFor(taught: Taught, newest: readonly CardId[] = []): readonly Shape[] {
  const cards = cardsTaught(taught);
  const fresh = newest.flatMap((id) => correspondenceById.get(id) ?? []);
  const ranked = SHAPES.filter((shape) => canLay(shape, cards, taught)).map((shape) => ({
    shape,
    fresh: fresh.filter((card) => shape.piles.some((pile) => pile.takes(card))).length,
    vowels: cards.filter(vowelPile(shape).takes).length,
    longer: asksForHabits(shape) ? 1 : 0,
  }));
  const fitting = ranked.filter((entry) => entry.fresh > 0);
  return (fitting.length > 0 ? fitting : ranked)
    .sort((a, b) => b.fresh - a.fresh || a.longer - b.longer || b.vowels - a.vowels)
    .map(({ shape }) => shape);
}

/**
 * The shape of two beats, or of base and ending, that the newest cards ask for,
 * when they lie in no short word: bb, -ed, le. Null for all others.
 */
export function longerShapeFor(taught: Taught, newest: readonly CardId[]): Shape | null {
  const fresh = newest.flatMap((id) => correspondenceById.get(id) ?? []);
  const short = ['syllable', 'open'].map((id) => shapeById.get(id) as Shape);
  const lies = (card: Correspondence): boolean =>
    short.some(({ piles }) => piles.some(({ takes }) => takes(card)));
  if (fresh.length === 0 || fresh.some(lies)) return null;
  return (
    shapesFor(taught, newest).find((shape) =>
      fresh.some((card) => shape.piles.some(({ takes }) => takes(card))),
    ) ?? null
  );
}

function canLay(shape: Shape, cards: readonly Correspondence[], taught: Taught): boolean {
  if (candidates(shape, cards).some((pile) => pile.length === 0)) return false;
  if (shape.form === 'ending') return true;
  if (shape.form !== 'one') return taught.habits.has('long-words');
  if (shape.id.startsWith('ccvc') && !CLUSTERS.some((habit) => taught.habits.has(habit))) {
    return false;
  }
  return !shape.id.endsWith('cvcc') || taught.habits.has('ending-clusters');
}

import type { CardId } from '../../language/card-id.ts';
import type { Correspondence } from '../../language/correspondence.ts';
import { correspondenceById } from '../../language/correspondences.ts';
import type { Taught } from '../../language/taught.ts';
import { SHAPES, shapeById } from './shape-list.ts';
import { candidates, type Shape } from './shapes.ts';
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
    vowels: cards.filter((card) =>
      shape.piles.some((pile) => pile.role === 'vowel' && pile.takes(card)),
    ).length,
    longer: asksForHabits(shape) ? 1 : 0,
  }));
  const fitting = ranked.filter((entry) => entry.fresh > 0);
  // What lies on no board of single cards lies in longer words: a schwa, the ti of nation.
  const beats = fresh.length > 0 && fitting.length === 0;
  const inBeats = ({ form }: Shape): number => (beats && form === 'beats' ? 1 : 0);
  return (fitting.length > 0 ? fitting : ranked)
    .sort(
      (a, b) =>
        inBeats(b.shape) - inBeats(a.shape) ||
        b.fresh - a.fresh ||
        a.longer - b.longer ||
        b.vowels - a.vowels,
    )
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

/** Why a shape cannot be laid yet, and from which step of an order on it can; step null: never in that order. */
export interface LaterShape {
  readonly shape: Shape;
  readonly step: number | null;
  readonly lacks: 'long-words' | 'clusters' | 'cards';
}

/**
 * The shapes that cannot be laid yet, those first that come first. `taughtAt` tells what is known after a
 * step of the order that has `steps` steps; what is known only grows.
 */
export function laterShapes(
  taught: Taught,
  steps: number,
  taughtAt: (step: number) => Taught,
): readonly LaterShape[] {
  const now = cardsTaught(taught);
  return SHAPES.filter((shape) => !canLay(shape, now, taught))
    .map((shape): LaterShape => {
      const lays = (step: number): boolean => {
        const known = taughtAt(step);
        return canLay(shape, cardsTaught(known), known);
      };
      return { shape, step: firstStep(steps, lays), lacks: lacking(shape, now) };
    })
    .sort((one, other) => (one.step ?? Infinity) - (other.step ?? Infinity));
}

/** The first of the steps for which something holds that holds from then on; null when it never does. */
function firstStep(steps: number, holds: (step: number) => boolean): number | null {
  if (!holds(steps)) return null;
  let [low, high] = [1, steps];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

function lacking(shape: Shape, cards: readonly Correspondence[]): LaterShape['lacks'] {
  if (shape.form === 'beats') return 'long-words';
  if (candidates(shape, cards).some((pile) => pile.length === 0)) return 'cards';
  return shape.form === 'one' ? 'clusters' : 'long-words';
}

function canLay(shape: Shape, cards: readonly Correspondence[], taught: Taught): boolean {
  if (shape.form === 'beats') return taught.habits.has('long-words');
  if (candidates(shape, cards).some((pile) => pile.length === 0)) return false;
  if (shape.form === 'ending') return true;
  if (shape.form !== 'one') return taught.habits.has('long-words');
  if (shape.id.startsWith('ccvc') && !CLUSTERS.some((habit) => taught.habits.has(habit))) {
    return false;
  }
  return !shape.id.endsWith('cvcc') || taught.habits.has('ending-clusters');
}

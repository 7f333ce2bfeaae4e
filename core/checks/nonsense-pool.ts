import { judgeWord } from '../boards/judge/judge.ts';
import type { JudgeContext } from '../boards/judge/judge-context.ts';
import { realNeighbors } from '../boards/judge/neighbors.ts';
import { isAwkward } from '../boards/judge/nonsense.ts';
import { candidates, type Shape } from '../boards/shapes/shapes.ts';
import { shapesFor } from '../boards/shapes/shapes-for.ts';
import { asksForHabits, cardsTaught } from '../boards/shapes/taught-cards.ts';
import type { Correspondence } from '../language/correspondence.ts';
import type { Random } from '../random.ts';
import { hardness } from '../words/hardness.ts';
import { phonotacticScore } from '../words/phonotactics.ts';
import type { CheckItem } from './check-form.ts';

/** A nonsense word that could be asked, and how hard it is likely to be. */
export interface PoolItem {
  readonly item: CheckItem;
  readonly hardness: number;
}

/** How many different words are looked for, and how many rows of cards are tried for them. */
const WANTED = 700;
const TRIES = 9000;

/**
 * Good nonsense of one syllable that can be read with what was taught, drawn by
 * chance: each vowel and each shape as often as the others, so that the pool is
 * of what was taught and not of what is plentiful. Short words first, by sounds
 * and then by cards, and the easiest of equally long ones.
 */
export function nonsensePool(context: JudgeContext, random: Random): readonly PoolItem[] {
  const shapes = shapesFor(context.taught).filter(
    (shape) => shape.form === 'one' && !asksForHabits(shape),
  );
  const layouts = shapes.flatMap((shape) => layoutsOf(shape, context));
  const pool = new Map<string, PoolItem>();
  for (let turn = 0; layouts.length > 0 && turn < TRIES && pool.size < WANTED; turn++) {
    const { shape, piles } = layouts[turn % layouts.length] as Layout;
    const cards = piles.map((pile) => (pile[random.below(pile.length)] as Correspondence).id);
    const built = judgeWord(cards, context, shape);
    if (built.kind !== 'nonsense' || pool.has(built.word)) continue;
    if (isAwkward(built, context.lexicon)) continue;
    const { word, sounds } = built;
    const item = { text: word, cards, answers: [sounds] };
    pool.set(word, { item, hardness: hardnessOf(item, context) });
  }
  const sounds = ({ item }: PoolItem): number => item.answers[0]?.length ?? 0;
  return [...pool.values()].sort(
    (one, other) =>
      sounds(one) - sounds(other) ||
      one.item.cards.length - other.item.cards.length ||
      one.hardness - other.hardness ||
      (one.item.text < other.item.text ? -1 : 1),
  );
}

/** A shape with one vowel. */
interface Layout {
  readonly shape: Shape;
  readonly piles: readonly (readonly Correspondence[])[];
}

function layoutsOf(shape: Shape, { taught }: JudgeContext): readonly Layout[] {
  const piles = candidates(shape, cardsTaught(taught));
  if (piles.some((pile) => pile.length === 0)) return [];
  const at = shape.piles.findIndex(({ role }) => role === 'vowel');
  return (piles[at] ?? []).map((vowel) => ({ shape, piles: piles.with(at, [vowel]) }));
}

/** How much the likeness to English words counts beside the parts of `hardness`; ours, no source. */
const LIKENESS = 20;

/**
 * The engine's measures together: length, clusters, later cards and neighbors
 * (hardness.ts), and how unlike English words the sounds are (phonotactics.ts).
 */
function hardnessOf({ cards, answers }: CheckItem, { lexicon }: JudgeContext): number {
  const sounds = answers[0] ?? [];
  const parts = { band: 7, cardIds: cards, syllables: 1, regular: true } as const;
  const neighbors = realNeighbors(sounds, lexicon);
  return hardness({ ...parts, neighbors }) - LIKENESS * phonotacticScore(sounds, lexicon);
}

/**
 * A form of nonsense words, as hard as every other form for the same taught set.
 *
 * Problem: choose so many words that their mean hardness is that of all words
 * there are, that every taught card comes up, and that no form is like another.
 *
 * Method: the pool, by length and then by hardness, is cut into as many layers as words are
 * wanted (stratified sampling); chance takes one of each layer, of two offered
 * the one whose cards came up less. Then words are exchanged within their layer
 * while that brings the mean nearer to the pool's. The spread between forms is
 * measured in the tests and stated in docs/checks.md. Drawing words freely was
 * left alone: means of 30 then differ by some 0.18 standard deviations.
 */
import type { JudgeContext } from '../boards/judge/judge.ts';
import { makeRandom, type Random, shuffled } from '../random.ts';
import type { MadeForm } from './check-form.ts';
import { nonsensePool, type PoolItem } from './nonsense-pool.ts';

/** How near the mean is brought to the pool's, in standard deviations of single words. */
const NEAR_ENOUGH = 0.01;

/** A form of `count` words; words in `avoid`, those of earlier forms, are asked only when there are too few others. */
export function makeNonsenseForm(
  context: JudgeContext,
  seed: number,
  count: number,
  avoid: ReadonlySet<string> = new Set(),
): MadeForm {
  const pool = nonsensePool(context, makeRandom(POOL_SEED));
  const fresh = pool.filter(({ item }) => !avoid.has(item.text));
  const usable = fresh.length >= count ? fresh : pool;
  const { mean, deviation } = momentsOf(pool);
  const random = makeRandom(seed);
  const layers = layersOf(usable, Math.min(count, usable.length));
  const chosen = settle(layers, draw(layers, random), mean, deviation * NEAR_ENOUGH, random);
  const hardness = momentsOf(chosen).mean;
  return {
    form: {
      kind: 'nonsense-words',
      seed,
      items: shuffled(chosen, random).map(({ item }) => item),
      hardness,
      offBy: deviation > 0 ? (hardness - mean) / deviation : 0,
    },
    shortfall: chosen.length === count ? null : shortfallOf(chosen.length, count),
  };
}

/** One pool for all seeds, so that forms are compared with the same. */
const POOL_SEED = 20_240_101;

type Layer = readonly PoolItem[];

function layersOf(pool: readonly PoolItem[], count: number): readonly Layer[] {
  return Array.from({ length: count }, (_, layer) =>
    pool.slice(
      Math.floor((layer * pool.length) / count),
      Math.floor(((layer + 1) * pool.length) / count),
    ),
  );
}

function draw(layers: readonly Layer[], random: Random): PoolItem[] {
  const times = new Map<string, number>();
  const worn = ({ item }: PoolItem): number =>
    Math.max(...item.cards.map((id) => times.get(id) ?? 0)) +
    item.cards.reduce((sum, id) => sum + (times.get(id) ?? 0), 0) / item.cards.length;
  const chosen: PoolItem[] = new Array(layers.length);
  for (const at of shuffled([...layers.keys()], random)) {
    const layer = layers[at] as Layer;
    const offered = Array.from(
      { length: OFFERED },
      () => layer[random.below(layer.length)] as PoolItem,
    );
    const taken = offered.reduce((best, other) => (worn(other) < worn(best) ? other : best));
    for (const id of taken.item.cards) times.set(id, (times.get(id) ?? 0) + 1);
    chosen[at] = taken;
  }
  return chosen;
}

/** Of so many words of a layer the one whose cards came up least is taken. */
const OFFERED = 4;
const EXCHANGES = 400;

/** Exchanges words within their layers until the mean is near enough, or for so many tries. */
function settle(
  layers: readonly Layer[],
  chosen: readonly PoolItem[],
  mean: number,
  near: number,
  random: Random,
): readonly PoolItem[] {
  const now = [...chosen];
  let off = now.reduce((sum, { hardness }) => sum + hardness - mean, 0);
  for (let turn = 0; turn < EXCHANGES && Math.abs(off) > near * now.length; turn++) {
    const at = random.below(now.length);
    const layer = layers[at] as Layer;
    const other = layer[random.below(layer.length)] as PoolItem;
    const moved = off + other.hardness - (now[at] as PoolItem).hardness;
    if (Math.abs(moved) >= Math.abs(off)) continue;
    now[at] = other;
    off = moved;
  }
  return now;
}

function momentsOf(items: readonly PoolItem[]): {
  readonly mean: number;
  readonly deviation: number;
} {
  const count = Math.max(1, items.length);
  const mean = items.reduce((sum, { hardness }) => sum + hardness, 0) / count;
  const square = items.reduce((sum, { hardness }) => sum + (hardness - mean) ** 2, 0) / count;
  return { mean, deviation: Math.sqrt(square) };
}

function shortfallOf(had: number, wanted: number): MadeForm['shortfall'] {
  if (had === 0) {
    return {
      code: 'few-words',
      message:
        'These cards make no nonsense words yet. Check letter sounds, and nonsense words once some vowels and endings were taught.',
    };
  }
  return {
    code: 'few-words',
    message: `These cards make ${had} good nonsense words, not ${wanted}. They are all here.`,
  };
}

/**
 * A form of nonsense words, as hard as every other form for the same taught set.
 *
 * Problem: choose so many words that every form asks for each card as often as
 * every other form, and that their mean hardness is that of all words there are.
 * Cards differ in how hard they are for these children, more than any measure of
 * hardness knows: what makes two forms differ is how often they ask for each.
 *
 * Method: the pool, by length and then by hardness, is cut into as many layers as
 * words are wanted (stratified sampling); one word of each, drawn with the same
 * chance for every form, says how often each card is to come. A form is drawn
 * likewise, and then exchanges words for others of as many cards and sounds while
 * that brings the counts of its cards nearer to those, or its mean hardness to the
 * pool's. The spread between forms is measured in the tests and stated in
 * docs/checks.md. Matching hardness alone was left: forms then differed by some
 * 0.4 to 0.7 words of 30.
 */
import type { JudgeContext } from '../boards/judge/judge-context.ts';
import { makeRandom, type Random, shuffled } from '../random.ts';
import type { MadeForm } from './check-form.ts';
import { nonsensePool, type PoolItem } from './nonsense-pool.ts';
import { withOtherReadings } from './other-readings.ts';

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
  const wanted = Math.min(count, usable.length);
  const targets = countCards(draw(layersOf(pool, wanted), makeRandom(POOL_SEED)));
  const random = makeRandom(seed);
  const drawn = draw(layersOf(usable, wanted), random);
  const chosen = settle(drawn, usable, { targets, mean, deviation }, random);
  const hardness = momentsOf(chosen).mean;
  return {
    form: {
      kind: 'nonsense-words',
      seed,
      items: shuffled(chosen, random).map(({ item }) => withOtherReadings(item, context)),
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

/** What a form is brought near to: how often each card comes, and the hardness of the pool. */
interface Aim {
  /** A card that is not here should not come. */
  readonly targets: ReadonlyMap<string, number>;
  readonly mean: number;
  readonly deviation: number;
}

/** So many exchanges are tried: enough in all places of the order that were looked at. */
const EXCHANGES = 60_000;
/** How readily a worse form is taken at first; less and less of it (simulated annealing). */
const WARMTH = 0.25;
/** A mean so far from the pool's, in deviations of single words, is as bad as a card once too often. */
const FAR = 0.01;
/** How much worse a card is that is off to the side to which no form may be off. */
const WRONG_SIDE = 4;

/** Of words of nothing but cards that should come there must be so many for each that is wanted, or all words count. */
const ROOM = 5;

/**
 * Exchanges words for others as long, of cards that should come. A form is the worse, the more its cards are
 * off what they should count, and its mean off the pool's. Each card may be off to
 * one side only, the same in all forms, so that no two forms differ by two.
 */
function settle(
  drawn: readonly PoolItem[],
  pool: readonly PoolItem[],
  { targets, mean, deviation }: Aim,
  random: Random,
): readonly PoolItem[] {
  const now = [...drawn];
  const there = new Set(now.map(({ item }) => item.text));
  const aimed = pool.filter(({ item }) => item.cards.every((card) => targets.has(card)));
  const byLength = wordsByLength(aimed.length < ROOM * now.length ? pool : aimed);
  const over = overBy(now, pool, targets);
  const far = Math.max(Number.MIN_VALUE, FAR * deviation * now.length);
  let off = now.reduce((sum, { hardness }) => sum + hardness - mean, 0);
  for (let turn = 0; turn < EXCHANGES && now.length > 0; turn++) {
    const at = random.below(now.length);
    const goes = now[at] as PoolItem;
    const alike = byLength.get(lengthOf(goes)) ?? [goes];
    const comes = alike[random.below(alike.length)] as PoolItem;
    if (there.has(comes.item.text)) continue;
    const moved = off + comes.hardness - goes.hardness;
    const farther = (moved / far) ** 2 - (off / far) ** 2;
    const worse = shift(over, goes, -1) + shift(over, comes, 1) + farther;
    const warmth = WARMTH * (1 - turn / EXCHANGES);
    if (worse > 0 && random.fraction() >= Math.exp(-worse / warmth)) {
      shift(over, comes, -1);
      shift(over, goes, 1);
      continue;
    }
    there.delete(goes.item.text);
    there.add(comes.item.text);
    now[at] = comes;
    off = moved;
  }
  return now;
}

/** A card of a form: how often it comes above what it should, and the side, 1 or −1, to which it may be off. */
interface Over {
  by: number;
  readonly side: 1 | -1;
}

/** Every card of the pool as it stands in these words. Half of those that should come may be off below. */
function overBy(
  words: readonly PoolItem[],
  pool: readonly PoolItem[],
  targets: ReadonlyMap<string, number>,
): ReadonlyMap<string, Over> {
  const counts = countCards(words);
  const cards = [...new Set(pool.flatMap(({ item }) => item.cards))].sort();
  return new Map(
    cards.map((card, at) => {
      const target = targets.get(card) ?? 0;
      return [
        card,
        { by: (counts.get(card) ?? 0) - target, side: target > 0 && at % 2 === 0 ? -1 : 1 },
      ];
    }),
  );
}

/** Counts the cards of a word in or out; by how much the form gets worse. */
function shift(over: ReadonlyMap<string, Over>, { item }: PoolItem, step: 1 | -1): number {
  let worse = 0;
  for (const card of item.cards) {
    const one = over.get(card) as Over;
    worse -= badness(one);
    one.by += step;
    worse += badness(one);
  }
  return worse;
}

function badness({ by, side }: Over): number {
  return by * by * (by * side < 0 ? WRONG_SIDE : 1);
}

function wordsByLength(pool: readonly PoolItem[]): ReadonlyMap<string, readonly PoolItem[]> {
  const byLength = new Map<string, PoolItem[]>();
  for (const one of pool) {
    const length = lengthOf(one);
    const alike = byLength.get(length);
    if (alike) alike.push(one);
    else byLength.set(length, [one]);
  }
  return byLength;
}

/** Words of as many sounds and cards take each other's place. */
function lengthOf({ item }: PoolItem): string {
  return `${item.answers[0]?.length ?? 0} ${item.cards.length}`;
}

/** How often each card comes in some words. */
function countCards(words: readonly PoolItem[]): Map<string, number> {
  const times = new Map<string, number>();
  for (const { item } of words) {
    for (const card of item.cards) times.set(card, (times.get(card) ?? 0) + 1);
  }
  return times;
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

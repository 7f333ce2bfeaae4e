/**
 * The cards a board is searched among: for each pile those that are wanted, and a
 * random handful of the others, so that no two days are alike.
 */
import type { Shape } from '../boards/shapes/shapes.ts';
import type { Correspondence } from '../language/correspondence.ts';
import type { Random } from '../random.ts';

/** Chance, and how much more likely one card is to be drawn than another. */
export interface DrawChance {
  readonly random: Random;
  readonly weight: (card: Correspondence) => number;
}

/**
 * The wanted cards of a pile in their order, then others by chance, no grapheme
 * twice. A card of many common words is likelier to come (weighted sampling
 * without replacement by Efraimidis & Spirakis 2006: the largest of uʷ⁻¹).
 */
export function drawPile(
  cards: readonly Correspondence[],
  wanted: readonly string[],
  most: number,
  { random, weight }: DrawChance,
): readonly Correspondence[] {
  const fresh = wanted.flatMap((id) => cards.find((card) => card.id === id) ?? []);
  const others = cards
    .filter(({ id }) => !wanted.includes(id) && !NARROW.has(id))
    .map((card) => ({ card, key: Math.log(random.fraction() + 1e-9) / weight(card) }))
    .sort((one, other) => other.key - one.key)
    .map(({ card }) => card);
  const graphemes = new Set<string>();
  const drawn: Correspondence[] = [];
  for (const card of [...fresh, ...others]) {
    if (graphemes.has(card.grapheme) || drawn.length >= most) continue;
    graphemes.add(card.grapheme);
    drawn.push(card);
  }
  return drawn;
}

/** The vowels: those wanted, two short ones that every ending knows, and others by chance. */
export function drawVowels(
  cards: readonly Correspondence[],
  wanted: readonly string[],
  most: number,
  chance: DrawChance,
): readonly Correspondence[] {
  const drawn = drawPile(cards, wanted, most, chance);
  const short = drawn.filter(({ kind }) => kind === 'short-vowel').length;
  const spare = drawn.filter(({ id, kind }) => kind !== 'short-vowel' && !wanted.includes(id));
  const more = drawPile(
    cards.filter((card) => card.kind === 'short-vowel' && !drawn.includes(card)),
    [],
    Math.min(Math.max(0, 2 - short), spare.length + most - drawn.length),
    chance,
  );
  const out = new Set(spare.slice(Math.max(0, spare.length + most - drawn.length - more.length)));
  return [...drawn.filter((card) => !out.has(card)), ...more];
}

/** Pile sizes that let every card be seen in so many flips, with some to spare unless `wide`. */
export function pileSizes(
  flips: number,
  { piles }: Shape,
  vowels: readonly number[],
  wide: boolean,
): readonly number[] {
  const all = Math.max(7, Math.floor(flips * (wide ? 1 : 0.8)) + 1);
  const others = piles.filter(({ role }) => role !== 'vowel').length;
  const vowelsInAll = vowels.reduce((sum, count) => sum + count, 0);
  const side = Math.max(3, Math.floor((all - vowelsInAll) / others));
  const largest = others === 1 ? 28 : 12;
  return piles.map(({ role }, at) =>
    role === 'vowel' ? (vowels[at] as number) : Math.min(largest, side),
  );
}

/** Cards that live on one or two neighbors only: drawn when they are wanted, not otherwise. */
export const NARROW: ReadonlySet<string> = new Set([
  'a=AA',
  'a=AO',
  'al=AO',
  'al=AA',
  'ar=AO+R',
  'or=ER',
  'o=OW',
  'i=AY',
  'augh=AO',
  'ough=AO',
  'eigh=EY',
  'th=DH',
]);

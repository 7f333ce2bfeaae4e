import { hardness } from '../../core/words/hardness.ts';
import type { Lexicon } from '../../core/words/lexicon.ts';

const known = new WeakMap<Lexicon, Map<number, number>>();
const neighborhoods = new WeakMap<Lexicon, ReadonlyMap<string, number>>();

/** The rarest band whose words count as familiar. */
const FAMILIAR = 4;

/** How hard a word of the list is likely to be for a young reader; see the core's `hardness`. */
export function hardnessOf(index: number, lexicon: Lexicon): number {
  let all = known.get(lexicon);
  if (!all) {
    all = new Map();
    known.set(lexicon, all);
  }
  let value = all.get(index);
  if (value === undefined) {
    const cardIds = lexicon.cardIds(index);
    value = hardness({
      band: lexicon.band(index),
      cardIds,
      syllables: lexicon.syllableCount(index),
      regular: lexicon.isRegular(index),
      neighbors: neighborsOf(index, cardIds, lexicon),
    });
    all.set(index, value);
  }
  return value;
}

/** Entries of one or two words, the easiest first; equals stay in their order. */
export function easiestFirst(
  entries: readonly (readonly number[])[],
  lexicon: Lexicon,
): readonly (readonly number[])[] {
  const hardest = (entry: readonly number[]) =>
    Math.max(...entry.map((index) => hardnessOf(index, lexicon)));
  return entries
    .map((entry) => ({ entry, value: hardest(entry) }))
    .sort((left, right) => left.value - right.value)
    .map(({ entry }) => entry);
}

/** Familiar words that differ from this one in one card. */
function neighborsOf(index: number, cardIds: readonly string[], lexicon: Lexicon): number {
  let counts = neighborhoods.get(lexicon);
  if (!counts) {
    counts = countFamiliar(lexicon);
    neighborhoods.set(lexicon, counts);
  }
  const itself = lexicon.band(index) <= FAMILIAR ? 1 : 0;
  return gapsOf(cardIds).reduce((sum, gap) => sum + (counts.get(gap) ?? itself) - itself, 0);
}

function countFamiliar(lexicon: Lexicon): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (let index = 0; index < lexicon.size; index++) {
    if (lexicon.band(index) > FAMILIAR) continue;
    for (const gap of gapsOf(lexicon.cardIds(index))) counts.set(gap, (counts.get(gap) ?? 0) + 1);
  }
  return counts;
}

/** A word's cards with each in turn left open. */
function gapsOf(cardIds: readonly string[]): readonly string[] {
  return cardIds.map((_, at) => cardIds.with(at, '·').join(' '));
}

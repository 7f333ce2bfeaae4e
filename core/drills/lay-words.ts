import type { Shape } from '../boards/shapes/shapes.ts';
import { wordsInShape } from '../boards/shapes/words-in-shape.ts';
import type { CardId } from '../language/card-id.ts';
import { type Random, shuffled } from '../random.ts';
import { type DrillEngine, type DrillSpec, wantedCards } from './drill-spec.ts';

/**
 * Two syllables seldom make a word by chance: the cards of some real words, drawn
 * at random, those with a wanted card first, stand before what was drawn, as far
 * as the limits hold. Each pile is as long as it was.
 */
export function layWords(
  piles: readonly (readonly CardId[])[],
  limits: readonly number[],
  shape: Shape,
  spec: DrillSpec,
  { lexicon }: DrillEngine,
  random: Random,
): readonly (readonly CardId[])[] {
  const words = shuffled(wordsInShape(shape, spec.taught, lexicon), random);
  const wanted = new Set(wantedCards(spec));
  words.sort(
    (a, b) => Number(b.some((id) => wanted.has(id))) - Number(a.some((id) => wanted.has(id))),
  );
  const laid = piles.map(() => new Set<CardId>());
  for (const ids of words) {
    const fits = ids.every(
      (id, at) => laid[at]?.has(id) || (laid[at]?.size ?? 0) < (limits[at] as number),
    );
    if (!fits) continue;
    for (const [at, id] of ids.entries()) laid[at]?.add(id);
  }
  return piles.map((pile, at) =>
    [...new Set([...(laid[at] ?? []), ...pile])].slice(0, pile.length),
  );
}

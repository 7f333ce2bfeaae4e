import { cardsAt, makeWordTable, mayShow } from '../boards/judge/word-table.ts';
import { candidates, type Shape } from '../boards/shapes/shapes.ts';
import { cardsTaught } from '../boards/shapes/taught-cards.ts';
import { wordsInShape } from '../boards/shapes/words-in-shape.ts';
import type { Correspondence } from '../language/correspondence.ts';
import { correspondenceById } from '../language/correspondences.ts';
import { partsOf } from '../language/laid-syllable.ts';
import { commonnessIn } from './commonness.ts';
import { type DrillEngine, type DrillSpec, wantedCards } from './drill-spec.ts';

/**
 * How much more likely one card is to be drawn for a board than another: common
 * cards are liked more, and those that make words with the wanted ones.
 */
export function likingFor(
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
): (card: Correspondence) => number {
  if (shape.piles.length > 3) return likingInWords(shape, spec, engine);
  const commonness = commonnessIn(engine.lexicon);
  const partners = partnersOfWanted(shape, spec, engine);
  return (card) => {
    const common = Math.min(...partsOf(card).map(({ id }) => commonness(id)));
    const together = 1 + (partners.get(card.id) ?? 0);
    return Math.sqrt(((common + 1) * together) / card.phonemes.length);
  };
}

/** The cards taught; -ing and -est, which are several, only behind a base and in a shape that was asked for. */
export function cardsFor({ taught, shape }: DrillSpec, { form }: Shape): readonly Correspondence[] {
  if (shape !== undefined || form === 'ending') return cardsTaught(taught);
  return [...taught.correspondences].flatMap((id) => correspondenceById.get(id) ?? []);
}

/** Of many piles: cards that lie in real words of the shape, those with a wanted card above all. */
function likingInWords(
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
): (card: Correspondence) => number {
  const wanted = new Set(wantedCards(spec));
  const counts = new Map<string, number>();
  for (const ids of wordsInShape(shape, spec.taught, engine.lexicon)) {
    const worth = ids.some((id) => wanted.has(id)) ? 6 : 1;
    for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + worth);
  }
  return ({ id }) => (counts.get(id) ?? 0) + 0.1;
}

/** For each card how many words it makes with the wanted ones, looking at a few of these. */
function partnersOfWanted(
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
): ReadonlyMap<string, number> {
  const piles = candidates(shape, cardsFor(spec, shape)).map((pile) => pile.map(({ id }) => id));
  const counts = new Map<string, number>();
  for (const id of wantedCards(spec).slice(0, LOOKED_AT)) {
    piles.forEach((pile, at) => {
      if (!pile.includes(id)) return;
      const own = piles.map((others, other) => (other === at ? [id] : others));
      const table = makeWordTable(shape, own, { taught: spec.taught, ...engine });
      table.words.forEach((_, index) => {
        if (!mayShow(table, index)) return;
        for (const other of cardsAt(table, index)) counts.set(other, (counts.get(other) ?? 0) + 1);
      });
    });
  }
  return counts;
}

const LOOKED_AT = 3;

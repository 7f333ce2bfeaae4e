import { syllablePiles } from '../../../core/boards/search/syllable-piles.ts';
import { candidates, type Shape } from '../../../core/boards/shapes/shapes.ts';
import { cardsTaught } from '../../../core/boards/shapes/taught-cards.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import type { Taught } from '../../../core/language/taught.ts';
import type { Engine } from '../../state/engine.ts';

/** Of syllables so many rows' worth lie beside the table: some thirty for each pile. */
const SYLLABLE_ROWS = 1200;

/** The taught cards that may lie in each pile of a shape, the newest first; of syllables those of most words. */
export function fittingCards(
  shape: Shape,
  taught: Taught,
  { lexicon, screen }: Engine,
): readonly (readonly CardId[])[] {
  if (shape.form === 'beats') {
    return syllablePiles(shape, {}, { taught, lexicon, screen }, SYLLABLE_ROWS);
  }
  const cards = cardsTaught(taught).toReversed();
  return candidates(shape, cards).map((pile) => pile.map(({ id }) => id));
}

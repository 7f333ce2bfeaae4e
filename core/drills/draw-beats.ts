/** Today's board of syllables: some of those that make most words, by chance; of these the search takes the best. */
import { makeWordTable } from '../boards/judge/word-table.ts';
import type { FoundBoard } from '../boards/search/best-board.ts';
import { searchTable } from '../boards/search/best-board.ts';
import { syllablePiles, wishesInSyllables } from '../boards/search/syllable-piles.ts';
import type { Shape } from '../boards/shapes/shapes.ts';
import type { Random } from '../random.ts';
import { boardWishesOf, DRILL_DEFAULTS, type DrillEngine, type DrillSpec } from './drill-spec.ts';

/** So large a share of the syllables is drawn, so that no two days are alike. */
const DRAWN = 0.8;
/** A pile of not much more than lies on the board is kept whole: few prefixes make few words. */
const WHOLE = 2;
/** So many rows are judged: less than half a second. */
const ROWS = 3600;

/** Draws a board of syllable cards; null where no longer word of the shape can be read. */
export function drawBeats(
  shape: Shape,
  spec: DrillSpec,
  engine: DrillEngine,
  random: Random,
): FoundBoard | null {
  const context = { taught: spec.taught, ...engine };
  const wishes = boardWishesOf(spec);
  const whole = syllablePiles(shape, wishes, context, ROWS);
  const side = Math.max(4, Math.min(12, Math.round((spec.flips ?? DRILL_DEFAULTS.flips) * 0.4)));
  const asked = wishesInSyllables(whole, { ...wishes, limits: shape.piles.map(() => side) });
  const wanted = new Set(asked.wanted);
  const piles = whole.map((pile) =>
    pile.length <= WHOLE * side
      ? pile
      : pile.filter((id) => wanted.has(id) || random.fraction() < DRAWN),
  );
  if (piles.some((pile) => pile.length === 0)) return null;
  const found = searchTable(makeWordTable(shape, piles, context), { ...asked, nodeLimit: 60 });
  return found.kind === 'found' ? found : null;
}

import { makeWordTable } from '../../core/boards/judge/word-table.ts';
import { countOutcomes, type OutcomeCounts } from '../../core/boards/search/best-board.ts';
import type { Board } from '../../core/boards/shapes/board.ts';
import { shapeById } from '../../core/boards/shapes/shape-list.ts';
import type { Taught } from '../../core/language/taught.ts';
import type { Engine } from './engine.ts';

/** How all combinations of a board count; null for a board without cards. */
export function surveyOf(
  board: Board,
  taught: Taught,
  { lexicon, screen }: Pick<Engine, 'lexicon' | 'screen'>,
): OutcomeCounts | null {
  const shape = shapeById.get(board.shape);
  if (!shape || board.piles.some((pile) => pile.length === 0)) return null;
  return countOutcomes(makeWordTable(shape, board.piles, { taught, lexicon, screen }));
}

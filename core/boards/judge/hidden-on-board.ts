import { type HiddenWord, hiddenWords } from '../../words/screen-report.ts';
import type { Board } from '../shapes/board.ts';
import { shapeById } from '../shapes/shape-list.ts';
import { judgeWord } from './judge.ts';
import type { JudgeContext } from './judge-context.ts';
import { cardsAt, makeWordTable, outcomeAt } from './word-table.ts';

/**
 * The words of a board that the screen keeps from the class, each once and with
 * its reason in general words; those the teacher may decide about come first.
 * Empty for a board of an unknown shape or with an empty pile.
 */
export function hiddenOnBoard(board: Board, context: JudgeContext): readonly HiddenWord[] {
  const shape = shapeById.get(board.shape);
  if (!shape || board.piles.some((pile) => pile.length === 0)) return [];
  const table = makeWordTable(shape, board.piles, context);
  const hidden = table.words.flatMap((_, index) => {
    if (outcomeAt(table, index) !== 'screened') return [];
    const built = judgeWord(cardsAt(table, index), context, shape);
    if (built.kind !== 'stopped' || built.reason.code !== 'screened') return [];
    return [{ word: built.word, sounds: built.sounds, screened: built.reason.screened }];
  });
  return hiddenWords(hidden);
}

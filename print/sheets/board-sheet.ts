/** A board on paper: which card goes in which pile, and the words it makes. */

import { easyToHard } from '../../core/boards/judge/nonsense.ts';
import { mayShow, outcomeAt, type WordTable } from '../../core/boards/judge/word-table.ts';
import { flipOf } from '../../core/boards/runs/run.ts';
import type { Board } from '../../core/boards/shapes/board.ts';
import { pileNames } from '../../core/boards/shapes/pile-names.ts';
import { shapeById } from '../../core/boards/shapes/shape-list.ts';
import type { CardId } from '../../core/language/card-id.ts';
import { twinsIn } from '../../core/language/twins.ts';
import type { Lexicon } from '../../core/words/lexicon.ts';
import type { Page } from '../page.ts';
import {
  columnsFor,
  grid,
  headed,
  heading,
  lineUp,
  paragraph,
  space,
  titleBlock,
} from './blocks.ts';
import { fitPages } from './fit.ts';
import { type Block, blockWidth } from './flow.ts';
import { BODY, type SheetLook } from './sheet-look.ts';
import { notedCard } from './small-card.ts';
import { wordCell } from './word-cell.ts';

/** A board with the words it may show. */
export interface BoardSheetSpec {
  readonly board: Board;
  readonly real: readonly string[];
  readonly nonsense: readonly string[];
  /** How many combinations the word screen keeps from the class. */
  readonly stopped: number;
}

/** What a judged board makes: each word once, real ones as they come, nonsense from easy to hard. */
export function boardWords(table: WordTable, lexicon: Lexicon): BoardSheetSpec {
  const all = table.words.map((_, at) => at);
  const shown = all.filter((at) => mayShow(table, at));
  const nonsense = shown.filter((at) => outcomeAt(table, at) === 'nonsense');
  const real = shown.filter((at) => outcomeAt(table, at) !== 'nonsense');
  const stops = ['screened', 'untaught'];
  return {
    board: { shape: table.shape.id, piles: table.piles },
    real: [...new Set(real.map((at) => table.words[at] as string))],
    nonsense: [
      ...new Set(
        easyToHard(
          nonsense.map((at) => flipOf(table, at)),
          lexicon,
        ).map(({ word }) => word),
      ),
    ],
    stopped: all.filter((at) => stops.includes(outcomeAt(table, at))).length,
  };
}

/** The pages of a board. */
export function boardSheet(spec: BoardSheetSpec, look: SheetLook): readonly Page[] {
  const { board, real, nonsense, stopped } = spec;
  const shape = shapeById.get(board.shape);
  const title = `Board: ${shape?.title ?? board.shape}`;
  const names = shape ? pileNames(shape) : [];
  const cards = board.piles.flat().length;
  const blocks = (look: SheetLook): readonly Block[] => [
    ...titleBlock(
      title,
      `${counted(cards, 'card')} in ${counted(board.piles.length, 'pile')}, from left to right. They make ${counted(real.length, 'real word')} and ${nonsense.length} nonsense.`,
      look,
    ),
    paragraph(fitness(stopped), look, { weight: stopped > 0 ? 'bold' : 'regular' }),
    space(3),
    ...board.piles.flatMap((ids, at) => pileBlocks(names[at] ?? `Pile ${at + 1}`, ids, look)),
    ...wordBlocks('Real words', real, look),
    ...wordBlocks('Nonsense words, easier ones first', nonsense, look),
  ];
  return fitPages(blocks, { foot: title }, look);
}

/** Whether the cards may lie on a table, where nothing can be skipped. */
function fitness(stopped: number): string {
  if (stopped === 0) return 'Clean: these cards make no word that the word screen stops.';
  const how = stopped === 1 ? 'One combination is' : `${stopped} combinations are`;
  return `For the screen only: ${how} stopped there, and cards on a table cannot skip. Ask for a clean board before you lay it.`;
}

function pileBlocks(name: string, ids: readonly CardId[], look: SheetLook): readonly Block[] {
  const twins = twinsIn(ids);
  const laid = lineUp(
    ids.map((id) => notedCard(id, 15, look, twins)),
    blockWidth(look),
    2.4,
  );
  return [heading(`${name}: ${counted(ids.length, 'card')}`, look), ...grid([laid], 1, look, 3)];
}

function wordBlocks(name: string, words: readonly string[], look: SheetLook): readonly Block[] {
  if (words.length === 0) return [];
  const cells = words.map((word) => wordCell(word, BODY * 1.15, look));
  const widest = Math.max(...cells.map(({ width }) => width)) + 5;
  return [
    space(2),
    ...headed(`${name}: ${words.length}`, grid(cells, columnsFor(widest, 8, look), look), look),
  ];
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}

/** A dictation on paper: her page with the words and sentences, and a page of lines for each child. */
import type { Dictation } from '../../core/dictation/dictation.ts';
import { line, type Page } from '../page.ts';
import { points } from '../paper.ts';
import { blanks, type Cell, grid, headed, paragraph, space, titleBlock } from './blocks.ts';
import { fitPages } from './fit.ts';
import { type Block, blockWidth, flowPages } from './flow.ts';
import { BODY, type SheetLook } from './sheet-look.ts';

/** What is dictated, and which familiar words are heard like one of its words here (core/dictation/heard-also.ts). */
export interface DictationOnPaper extends Pick<Dictation, 'words' | 'sentences'> {
  readonly heardAlso: (word: string) => readonly string[];
}

/** Her page, and after it the children’s. */
export function dictationSheet(
  { words, sentences, heardAlso }: DictationOnPaper,
  below: string,
  look: SheetLook,
): readonly Page[] {
  const hers = (look: SheetLook): readonly Block[] => [
    ...titleBlock('Dictation', below, look),
    paragraph(
      'Say it once, use it in a sentence, say it again. The children repeat it, tap its sounds, write it, and read what they wrote. Check together, one by one. A star marks what is new.',
      look,
    ),
    ...part('Words', words, look, heardAlso),
    ...part('Sentences', sentences, look),
  ];
  return [
    ...fitPages(hers, { foot: 'Dictation: the teacher’s page' }, look),
    ...writingPages(words.length, sentences.length, look),
  ];
}

function part(
  name: string,
  all: Dictation['words'],
  look: SheetLook,
  heardAlso: DictationOnPaper['heardAlso'] = () => [],
): readonly Block[] {
  if (all.length === 0) return [];
  return [
    space(2),
    ...headed(
      name,
      all.flatMap(({ text, isNew }, at) => {
        const others = heardAlso(text);
        return [
          paragraph(`${at + 1}.  ${text}${isNew ? ' *' : ''}`, look, { size: points(15) }),
          ...(others.length === 0
            ? []
            : [paragraph(`Sounds like ${others.join(' and ')}: say it in a sentence.`, look)]),
          space(1),
        ];
      }),
      look,
    ),
  ];
}

/** Between the lines that letters stand on, in mm: room for the hand of a young writer (common practice, no source). */
const ROW = 14;

function writingPages(words: number, sentences: number, look: SheetLook): readonly Page[] {
  const width = blockWidth(look);
  const half = (width - 8) / 2;
  const wordCells = Array.from({ length: words }, (_, at) => lineCell(at + 1, half, 1, look));
  const sentenceCells = Array.from({ length: sentences }, (_, at) =>
    lineCell(at + 1, width, 2, look),
  );
  const blocks: Block[] = [
    blanks([['Name', 0.62] as const, ['Date', 0.38] as const], look),
    space(5),
    ...grid(wordCells, 2, look, 3),
    space(5),
    ...grid(sentenceCells, 1, look, 4),
  ];
  return flowPages(blocks, 'Dictation', look).pages;
}

/** Numbered lines to write on, each with a fine line at the height of small letters. */
function lineCell(number: number, width: number, rows: number, { inks }: SheetLook): Cell {
  return {
    width,
    height: rows * ROW,
    marks: (x, y) => [
      {
        kind: 'text',
        text: `${number}`,
        x: x + 5,
        y: y + ROW,
        size: BODY,
        ink: inks.soft,
        align: 'right',
      },
      ...Array.from({ length: rows }, (_, row) => y + (row + 1) * ROW).flatMap((base) => [
        line([x + 8, base], [x + width, base], { stroke: inks.soft, line: 0.3 }),
        line([x + 8, base - ROW * 0.36], [x + width, base - ROW * 0.36], {
          stroke: inks.rule,
          line: 0.2,
          dash: [1.2, 1.2],
        }),
      ]),
    ],
  };
}

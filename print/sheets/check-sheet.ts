/** A short check of one child: the page the child reads, and the page she scores on. */

import {
  type CheckForm,
  type CheckItem,
  type CheckKind,
  PER_ROW,
} from '../../core/checks/check-form.ts';
import { graphemeShown, lettersShown } from '../../core/language/card-id.ts';
import { line, type Page, type PageMark } from '../page.ts';
import { points } from '../paper.ts';
import { blanks, type Cell, grid, paragraph, space, titleBlock } from './blocks.ts';
import { fitPages } from './fit.ts';
import { type Block, blockWidth } from './flow.ts';
import { printable, said } from './said.ts';
import { childLeast, type SheetLook, SMALL } from './sheet-look.ts';
import { sizeFor, wordCell } from './word-cell.ts';

/** What a child reads in a check, if the words allow it: large and far apart (common practice, no source). */
const ITEM = points(30);
/** Room between the items of a row, of all together. */
const APART = 55;

const names: Readonly<Record<CheckKind, string>> = {
  'letter-sounds': 'Letter sounds',
  'nonsense-words': 'Nonsense words',
  'sight-words': 'Words by sight',
};

/** What a form is called on both pages, its seed when left out, and who reads it, for her page alone. */
export interface FormNames {
  readonly form?: string;
  readonly reader?: string;
}

/** The child’s pages and then hers. */
export function checkSheet(
  { kind, seed, items }: CheckForm,
  look: SheetLook,
  { form = `${seed}`, reader = '' }: FormNames = {},
): readonly Page[] {
  const name = `${names[kind]}, form ${form}`;
  // On both pages alike, so that she finds her place.
  const perRow = PER_ROW[kind];
  return [
    ...fitPages((zoomed) => childBlocks(items, perRow, zoomed), { foot: name }, look),
    ...fitPages(
      (zoomed) => scoringBlocks(name, reader, items, perRow, zoomed),
      { foot: `${name}: scoring page` },
      look,
    ),
  ];
}

function childBlocks(
  items: readonly CheckItem[],
  perRow: number,
  look: SheetLook,
): readonly Block[] {
  const column = (blockWidth(look) - APART) / perRow;
  const texts = items.map(({ text }) => graphemeShown(text));
  const size = sizeFor(texts, column, [childLeast(look), ITEM], look);
  const cells = texts.map((text) => wordCell(text, size, look));
  return [space(8), ...grid(cells, perRow, look, size * 0.7)];
}

function scoringBlocks(
  name: string,
  reader: string,
  items: readonly CheckItem[],
  perRow: number,
  look: SheetLook,
): readonly Block[] {
  const width = blockWidth(look) / perRow;
  return [
    ...titleBlock(reader === '' ? name : `${name}: ${reader}`, '', look),
    blanks(
      [
        ...(reader === '' ? [['Child', 0.5] as const] : []),
        ['Date', 0.25] as const,
        ['Seconds', 0.25] as const,
      ],
      look,
    ),
    space(1),
    paragraph(
      'Cross out a sound that was wrong and write what you heard above it. A dash: left out. H, for helped: no answer in three seconds, so you said it. A plus: the child fixed it alone, which counts as right. Draw a line after the last one read.',
      look,
    ),
    space(3),
    ...grid(
      items.map((item) => scoreCell(item, width - 4, look)),
      perRow,
      look,
      2.4,
    ),
    { ...space(2), withNext: true },
    {
      ...blanks(
        [
          ['Items read', 0.25] as const,
          ['right', 0.25] as const,
          ['sounds right', 0.25] as const,
          ['a minute', 0.25] as const,
        ],
        look,
      ),
      withNext: true,
    },
    paragraph(
      'This is practice monitoring, not a diagnosis: it says what to practice next. For anything more, your school’s licensed specialist and your local rules decide.',
      look,
      { soft: true },
    ),
  ];
}

/** An item on her page: its letters apart, a line under each card, and the answers below. */
function scoreCell({ text, cards, answers }: CheckItem, width: number, look: SheetLook): Cell {
  const { typeface, inks } = look;
  const parts = cards.length > 1 ? cards.map(lettersShown) : [graphemeShown(text)];
  const natural = parts.reduce((sum, part) => sum + typeface.lay(part, 1).width, 0);
  const gap = 2;
  const size = Math.min(points(15), (width - gap * (parts.length - 1)) / natural);
  const right = answers
    .map((sounds) => said(sounds, look))
    .join(answers.length > 2 ? ', ' : ' or ');
  const answer = printable(right, () => '', typeface);
  const small = Math.min(SMALL, (SMALL * width) / Math.max(0.1, typeface.lay(answer, SMALL).width));
  return {
    width,
    height: 16,
    says: `${parts.join('')}: ${answer}`,
    marks: (x, y) => {
      let left = x;
      const marks = parts.flatMap((part): PageMark[] => {
        const wide = typeface.lay(part, size).width;
        const at = left;
        left += wide + gap;
        return [
          { kind: 'text', text: part, x: at, y: y + 9, size, ink: inks.ink },
          line([at, y + 11], [at + wide, y + 11], { stroke: inks.rule, line: 0.3 }),
        ];
      });
      return [...marks, { kind: 'text', text: answer, x, y: y + 15, size: small, ink: inks.soft }];
    },
  };
}

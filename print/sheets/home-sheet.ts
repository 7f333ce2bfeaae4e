/** Home practice: a page for a child and whoever reads along, of taught sounds and words alone. */
import { type CardId, lettersShown } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { asParagraph } from '../as-part.ts';
import type { Page } from '../page.ts';
import {
  blanks,
  type Cell,
  grid,
  heading,
  lineUp,
  paragraph,
  space,
  titleBlock,
} from './blocks.ts';
import { fitPages } from './fit.ts';
import { type Block, blockWidth } from './flow.ts';
import { HOME_WORDS, type HomeLanguage } from './home-words.ts';
import { BODY, childLeast, type SheetLook } from './sheet-look.ts';
import { smallCard } from './small-card.ts';
import { wordRows } from './words-sheet.ts';

/** What a child takes home. */
export interface HomeSheetSpec {
  /** Cards to say, the newest first. */
  readonly cards: readonly CardId[];
  readonly words: readonly string[];
  readonly sentences: readonly string[];
  /** Whose page it is; left out, the line is for a pen. */
  readonly reader?: string;
  /** The language of all but what is read; English when left out. */
  readonly language?: HomeLanguage;
}

/** The pages of home practice. */
export function homeSheet(
  { cards, words, sentences, reader, language = 'english' }: HomeSheetSpec,
  look: SheetLook,
) {
  const said = HOME_WORDS[language];
  const blocks = (look: SheetLook): readonly Block[] => [
    ...titleBlock(said.title, '', look),
    blanks(
      [
        [reader ? `${said.whose} ${reader}` : said.whose, 0.62] as const,
        [said.week, 0.38] as const,
      ],
      look,
    ),
    space(2),
    paragraph(said.lead, look),
    space(3),
    ...(cards.length === 0 ? [] : [heading(said.say, look), ...cardRows(cards, look)]),
    ...(words.length === 0
      ? []
      : [heading(said.read, look), space(1), ...wordRows(words, 4, look)]),
    ...(sentences.length === 0 ? [] : sentenceBlocks(sentences, said.sentences, look)),
    space(3),
    days(said.days, look),
    ...(said.machineMade === '' ? [] : [space(2), paragraph(said.machineMade, look)]),
  ];
  return fitPages(blocks, { foot: said.foot }, look) satisfies readonly Page[];
}

function cardRows(ids: readonly CardId[], look: SheetLook): readonly Block[] {
  const cells = ids.map((id): Cell => {
    const card = smallCard(id, 21, look);
    const keyword = correspondenceById.get(id)?.keyword ?? '';
    const width = Math.max(card.width, look.typeface.lay(keyword, BODY).width);
    return {
      width,
      height: 28,
      says: keyword === '' ? lettersShown(id) : `${lettersShown(id)}, ${keyword}`,
      marks: (x, y) => [
        ...card.marks(x + (width - card.width) / 2, y),
        {
          kind: 'text',
          text: keyword,
          x: x + width / 2,
          y: y + 26,
          size: BODY,
          ink: look.inks.soft,
          align: 'center',
        },
      ],
    };
  });
  return [space(1), ...grid([lineUp(cells, blockWidth(look), 6)], 1, look, 2)];
}

function sentenceBlocks(
  sentences: readonly string[],
  title: string,
  look: SheetLook,
): readonly Block[] {
  return [
    space(2),
    heading(title, look),
    ...sentences.flatMap((text) => [paragraph(text, look, { size: childLeast(look) }), space(2)]),
  ];
}

/** A box for each day. */
function days(names: readonly string[], look: SheetLook): Block {
  return {
    height: 9,
    marks: (left, top) => {
      const marks = names.flatMap((day, at) => {
        const x = left + at * 35;
        return [
          {
            kind: 'shape' as const,
            path: `M${x} ${top + 2}h4.5v4.5h-4.5Z`,
            stroke: look.inks.ink,
            line: 0.3,
          },
          {
            kind: 'text' as const,
            text: day,
            x: x + 7,
            y: top + 5.8,
            size: BODY,
            ink: look.inks.ink,
          },
        ];
      });
      return asParagraph(marks);
    },
  };
}

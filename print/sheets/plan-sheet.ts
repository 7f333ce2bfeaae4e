/**
 * Today's warm-up on paper, for her or for a substitute who has never run one:
 * three parts with what to do and say, the flips with real words marked, how a
 * wrong answer is put right, and blank marks to write in.
 */

import type { Flip } from '../../core/boards/shapes/board.ts';
import { pileNames } from '../../core/boards/shapes/pile-names.ts';
import { shapeById } from '../../core/boards/shapes/shape-list.ts';
import type { AuditorySound, Drill } from '../../core/drills/drill.ts';
import { sightIn } from '../../core/drills/sight.ts';
import { whatTheySay } from '../../core/drills/what-they-say.ts';
import { type CardId, isSightId, lettersShown } from '../../core/language/card-id.ts';
import { correspondenceById } from '../../core/language/correspondences.ts';
import { twinsIn } from '../../core/language/twins.ts';
import { asParagraph } from '../as-part.ts';
import { line, type Page, type PageMark } from '../page.ts';
import { points } from '../paper.ts';
import {
  type Cell,
  columnsFor,
  grid,
  heading,
  lineUp,
  paragraph,
  space,
  tickBox,
  titleBlock,
  writingLines,
} from './blocks.ts';
import { fitPages } from './fit.ts';
import { type Block, blockWidth } from './flow.ts';
import { printable, said } from './said.ts';
import { BODY, type SheetLook, SMALL } from './sheet-look.ts';
import { notedCard, smallCard } from './small-card.ts';
import { wordCell } from './word-cell.ts';

/** What a plan is printed for. */
export interface PlanSheetSpec {
  readonly drill: Drill;
  /** The ids of all taught cards, so that every taught sound of a card is named. */
  readonly taught: ReadonlySet<CardId>;
  /** For whom: `the whole class`. */
  readonly whom: string;
  /** The day in words; empty for a plan of any day. */
  readonly day: string;
}

/** A plan becomes so small at most to fit one page: its small print is 5.7 pt then, what she says 7 pt. */
const SMALLEST = 0.67;

/** The pages of a plan. */
export function planSheet(spec: PlanSheetSpec, look: SheetLook): readonly Page[] {
  const { drill, whom, day } = spec;
  const blocks = (look: SheetLook): readonly Block[] => [
    ...titleBlock(
      `Warm-up for ${whom}`,
      `${day === '' ? '' : `${day}. `}Up to ten minutes, quick and friendly. All of it was taught: leave out what you like, add nothing. Check the box where something broke, and write beside it what you heard.`,
      look,
    ),
    ...(drill.visual.length > 0 ? visualBlocks(spec, look) : []),
    ...(drill.auditory.length > 0 ? auditoryBlocks(drill.auditory, look) : []),
    ...(drill.run.length > 0 ? blendingBlocks(drill, look) : []),
    ...correction(look),
    heading('For their teacher: what broke, what you heard, who needs more', look),
    ...writingLines((look.zoom ?? 1) < 0.75 ? 2 : 3, 9, look),
  ];
  return fitPages(blocks, { foot: `Warm-up for ${whom}`, onePage: SMALLEST }, look);
}

function visualBlocks({ drill, taught }: PlanSheetSpec, look: SheetLook): readonly Block[] {
  const cells = drill.visual.map((id): Cell => {
    const card = smallCard(id, 11.5, look);
    const sayings = whatTheySay(id, taught, look.style).map(({ sound, keyword }) => ({
      sound: printable(sound, () => soundInClass(id, taught), look.typeface),
      keyword: keyword ?? '',
    }));
    const height = Math.max(card.height, sayings.length * BODY * 1.3);
    const heard = sayings.map(({ sound, keyword }) => `${sound} ${keyword}`.trim());
    return {
      width: 0,
      height,
      says: `${lettersShown(id)}: ${heard.join(', ')}`,
      marks: (x, y) => [
        tickBox(x, y + card.height / 2 - 2, look),
        ...card.marks(x + 6.5, y),
        ...sayings.flatMap(({ sound, keyword }, at): PageMark[] => {
          const left = x + 6.5 + card.width + 2.5;
          const middle = y + Math.max(0, card.height - sayings.length * BODY * 1.3) / 2;
          const base = middle + BODY * (1 + at * 1.3);
          return [
            text(sound, left, base, BODY, look, 'bold'),
            text(
              keyword,
              left + look.typeface.lay(`${sound} `, BODY, 'bold').width,
              base,
              BODY,
              look,
            ),
          ];
        }),
      ],
    };
  });
  return [
    heading('Visual drill', look, 1),
    {
      ...paragraph(
        `Show a card and say nothing. The children say the name of its letters, then the sound.${
          drill.visual.some(isSightId)
            ? ' A word with a thick left edge is read at once, then spelled aloud.'
            : ''
        }`,
        look,
      ),
      withNext: true,
    },
    { ...space(2), withNext: true },
    ...grid(cells, (look.zoom ?? 1) < 0.9 ? 4 : 3, look, 3),
  ];
}

function soundInClass(id: CardId, taught: ReadonlySet<CardId>): string {
  return whatTheySay(id, taught, 'classroom')[0]?.sound ?? '';
}

function auditoryBlocks(sounds: readonly AuditorySound[], look: SheetLook): readonly Block[] {
  const width = blockWidth(look) / 2 - 5;
  const before = 6.5;
  const named = sounds.map((asked) => {
    const word = sightIn(asked);
    const sound = word === null ? said(asked.phonemes, look) : `“${lettersShown(word)}”`;
    const keyword =
      asked.spellings.map((id) => correspondenceById.get(id)?.keyword).find(Boolean) ?? '';
    const wide = look.typeface.lay(`${sound}  `, BODY * 1.1, 'bold').width;
    return { sound, keyword, wide, end: wide + look.typeface.lay(keyword, BODY).width };
  });
  const start = before + Math.max(0, ...named.map(({ end }) => end)) + 4;
  const rows = sounds.map(({ spellings }, at): Cell => {
    const { sound, keyword, wide } = named[at]!;
    const small = spellings.map((id) => smallCard(id, 8.5, look));
    const cards = lineUp(small, width - start, 1.6);
    const used = small.reduce((sum, card) => sum + card.width + 1.6, start + 3);
    return {
      width,
      height: cards.height + 3,
      marks: (x, y) => [
        tickBox(x, y + 2.2, look),
        text(sound, x + before, y + 5.6, BODY * 1.1, look, 'bold'),
        text(keyword, x + before + wide, y + 5.6, BODY, look),
        ...cards.marks(x + start, y),
        ...(used + 8 > width
          ? []
          : [
              line([x + used, y + 8], [x + width, y + 8], {
                stroke: look.inks.rule,
                line: 0.25,
              }),
            ]),
      ],
    };
  });
  return [
    space(2),
    heading('Auditory drill', look, 2),
    {
      ...paragraph(
        `Say the sound and show nothing. The children repeat it and write every spelling they have learned. ${
          sounds.some((sound) => sightIn(sound) !== null)
            ? 'Say a word in quotation marks: they repeat it, spell it aloud and write it. '
            : ''
        }Then show these:`,
        look,
      ),
      withNext: true,
    },
    { ...space(2), withNext: true },
    ...grid(rows, 2, look),
  ];
}

function blendingBlocks({ board, run }: Drill, look: SheetLook): readonly Block[] {
  const twins = twinsIn(board.piles.flat());
  const width = blockWidth(look);
  const shape = shapeById.get(board.shape);
  const names = shape ? pileNames(shape) : [];
  const room = width / Math.max(1, board.piles.length) - 5;
  const piles = board.piles.map((ids, at): Cell => {
    const cards = lineUp(
      ids.map((id) => notedCard(id, 8.5, look, twins)),
      room,
      1.4,
    );
    return {
      width: room,
      height: cards.height + 5,
      marks: (x, y) => [text(names[at] ?? '', x, y + 3, SMALL, look), ...cards.marks(x, y + 4.6)],
    };
  });
  const size = points(15);
  const cells = run.map((flip, at) => flipCell(flip, at + 1, size, look));
  const widest = Math.max(...cells.map((cell) => cell.width));
  return [
    space(2),
    heading('Blending drill', look, 3),
    {
      ...paragraph(
        'Point to each card; the children say its sound. Sweep your finger under the row; they read it. Then turn one card. Thumbs up for a real word: those stand on a line.',
        look,
      ),
      withNext: true,
    },
    { ...space(2), withNext: true },
    ...grid(piles, board.piles.length, look, 3).map((block) => ({ ...block, withNext: true })),
    ...grid(cells, columnsFor(widest + 3, 6, look), look, 1.2),
  ];
}

/** A flip: its number, a box to tick, the word; under a nonsense word how it is said. */
function flipCell(flip: Flip, number: number, size: number, look: SheetLook): Cell {
  const real = flip.kind === 'real';
  const word = wordCell(flip.word, size, look, { marked: real });
  const sound = real ? '' : said(flip.sounds, look);
  const under = look.typeface.lay(sound, SMALL).width;
  return {
    width: 11.5 + Math.max(word.width, under),
    height: size * 1.9,
    says: `${number} ${flip.word}, ${real ? 'a real word' : sound}`,
    marks: (x, y) => [
      { ...text(`${number}`, x + 4.6, y + size * 1.02, SMALL, look), align: 'right' as const },
      tickBox(x + 5.8, y + size * 0.4, look, 3.6),
      ...word.marks(x + 11.5, y),
      ...(sound === '' ? [] : [text(sound, x + 11.5, y + size * 1.78, SMALL, look)]),
    ],
  };
}

/** How a wrong answer is put right, at once. */
function correction(look: SheetLook): readonly Block[] {
  const turns: readonly (readonly [string, string])[] = [
    ['My turn', 'You say it alone: touch each card, say its sound, sweep, read.'],
    ['Our turn', 'You and the children say it together, in the same way.'],
    ['Your turn', 'The children say it alone. Go on, and come back to it four words later.'],
  ];
  return [
    space(2),
    heading('When something breaks, stop and put it right at once', look),
    ...turns.map(
      ([name, what], at): Block => ({
        height: 6,
        withNext: at < turns.length - 1,
        marks: (left, top) =>
          asParagraph([
            text(name, left, top + 4.2, BODY, look, 'bold'),
            text(what, left + 24, top + 4.2, BODY, look),
          ]),
      }),
    ),
    space(2),
  ];
}

function text(
  words: string,
  x: number,
  y: number,
  size: number,
  { inks }: SheetLook,
  weight: 'regular' | 'bold' = 'regular',
) {
  const ink = size === SMALL ? inks.soft : inks.ink;
  return { kind: 'text' as const, text: words, x, y, size, ink, weight };
}

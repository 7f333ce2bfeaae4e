/**
 * The sheets and slides of the screens, made from the same values as on the
 * page. Fetched when a file is first asked for; the paper and the colours are
 * those chosen for cards.
 */

import type { WordTable } from '../../../core/boards/judge/word-table.ts';
import type { Dictation } from '../../../core/dictation/dictation.ts';
import type { Drill } from '../../../core/drills/drill.ts';
import type { CardId } from '../../../core/language/card-id.ts';
import { rareMeanings } from '../../../core/words/meanings.ts';
import { makePdf } from '../../../print/document.ts';
import { readLetters } from '../../../print/glyphs.ts';
import { inks } from '../../../print/ink.ts';
import type { Page } from '../../../print/page.ts';
import { boardSheet, boardWords } from '../../../print/sheets/board-sheet.ts';
import { dictationSheet } from '../../../print/sheets/dictation-sheet.ts';
import { planSheet } from '../../../print/sheets/plan-sheet.ts';
import type { SheetLook } from '../../../print/sheets/sheet-look.ts';
import { wordsSheet } from '../../../print/sheets/words-sheet.ts';
import { runSlides } from '../../../print/slides.ts';
import { type Engine, loadMeanings } from '../engine.ts';
import { settings } from '../settings.ts';
import { fetchKit, kit } from './kit.ts';
import type { MadeFile } from './made-file.ts';
import { choices } from './print-choices.ts';
import { printed } from './printed.ts';
import { slidesMade } from './slides-made.ts';

/** Today's plan as a PDF. `whom` and `day` are in words. */
export async function planFile(
  drill: Drill,
  taught: ReadonlySet<CardId>,
  whom: string,
  day: string,
): Promise<MadeFile> {
  const look = await sheetLook();
  const named = printed(whom, look.typeface) || 'the class';
  return pdf('plan', planSheet({ drill, taught, whom: named, day }, look), look);
}

/** The board on the table as a PDF. */
export async function boardFile(table: WordTable, { lexicon }: Engine): Promise<MadeFile> {
  const look = await sheetLook();
  return pdf('board', boardSheet(boardWords(table, lexicon), look), look);
}

/** A list of words as a PDF. */
export async function wordsFile(title: string, words: readonly string[]): Promise<MadeFile> {
  const look = await sheetLook();
  return pdf('words', wordsSheet({ title, below: '', words }, look), look);
}

/** A dictation as a PDF. */
export async function dictationFile(dictation: Dictation): Promise<MadeFile> {
  const look = await sheetLook();
  return pdf('dictation', dictationSheet(dictation, '', look), look);
}

/** The run of a drill as slides, the way rows are blended on the stage. */
export async function slidesFile(drill: Drill, { lexicon }: Engine): Promise<MadeFile> {
  const { typeface } = await sheetLook();
  const meanings = await loadMeanings().catch(() => ({ meaningOf: () => null }));
  const { blending, notation } = settings.peek();
  const slides = runSlides(
    {
      run: drill.run,
      piles: drill.board.piles.length,
      blending: blending === 'whole' ? 'whole' : 'by-sound',
      style: notation,
      meaningOf: rareMeanings(meanings, lexicon),
    },
    readLetters(typeface.files.regular),
  );
  return slidesMade(slides);
}

async function sheetLook(): Promise<SheetLook> {
  await fetchKit();
  const tools = kit.peek();
  if (tools === null || tools === 'failed') throw new Error('The letters did not arrive.');
  const { paper, grey } = choices.peek();
  const style = settings.peek().notation;
  return { paper, inks: inks(grey), typeface: tools.typeface, style };
}

async function pdf(
  name: string,
  pages: readonly Page[],
  { typeface }: SheetLook,
): Promise<MadeFile> {
  const bytes = await makePdf({ title: name, pages }, typeface);
  return { name: `${name}.pdf`, type: 'application/pdf', bytes };
}

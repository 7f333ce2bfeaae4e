import { makeWordTable } from '../../../core/boards/judge/word-table.ts';
import type { Board } from '../../../core/boards/shapes/board.ts';
import { shapeById } from '../../../core/boards/shapes/shape-list.ts';
import type { MadeForm } from '../../../core/checks/check-form.ts';
import type { Dictation, DictationSources } from '../../../core/dictation/dictation.ts';
import { homePractice, type Practised } from '../../../core/dictation/home-practice.ts';
import type { Drill } from '../../../core/drills/drill.ts';
import type { Taught } from '../../../core/language/taught.ts';
import { asWritten } from '../../../core/words/as-written.ts';
import { boardSheet, boardWords } from '../../../print/sheets/board-sheet.ts';
import { checkSheet } from '../../../print/sheets/check-sheet.ts';
import { dictationSheet } from '../../../print/sheets/dictation-sheet.ts';
import { homeSheet } from '../../../print/sheets/home-sheet.ts';
import { planSheet } from '../../../print/sheets/plan-sheet.ts';
import type { SheetLook } from '../../../print/sheets/sheet-look.ts';
import { wordsSheet } from '../../../print/sheets/words-sheet.ts';
import { find } from '../../state/find.ts';
import { isFitEntry } from '../../state/fit-entries.ts';
import type { Choices } from '../../state/paper/print-choices.ts';
import type { SheetKind } from '../../state/paper/print-things.ts';
import type { Wish } from '../../state/wish.ts';
import type { Chosen } from './chosen.ts';

/** What sheets are made of, each part asked only when it is wanted. */
export interface SheetStock {
  /** What the group was taught. */
  readonly taught: Taught;
  /** Today's plan; null where there is none. */
  readonly drill: Drill | null;
  /** Today's board, and the one on the table; null where there is none. */
  readonly today: Board | null;
  readonly table: Board | null;
  /** For whom a plan is, and which day, in words that can be printed. */
  readonly whom: string;
  readonly day: string;
  /** What she looked for among the words last, and what the list is called. */
  readonly wish: Wish;
  readonly listTitle: string;
  readonly dictation: () => Dictation | null;
  /** What is practised, by the reader or the group, and what chooses its words. */
  readonly practised: () => Practised;
  readonly seed: number;
  /** The form to read, its name, and who reads it; empty for anyone. */
  readonly form: () => MadeForm & { readonly name: string };
  readonly reader: string;
  readonly sources: DictationSources;
}

/** The pages of a sheet. */
export function chosenSheet(
  kind: SheetKind,
  choices: Choices,
  stock: SheetStock,
  look: SheetLook,
): Chosen {
  return makers[kind](choices, stock, look);
}

type Maker = (choices: Choices, stock: SheetStock, look: SheetLook) => Chosen;

const makers: Readonly<Record<SheetKind, Maker>> = { board, plan, dictation, words, home, check };

function nothing(...notes: readonly string[]): Chosen {
  return { pages: [], count: 0, notes };
}

function plan(_: Choices, { drill, taught, whom, day }: SheetStock, look: SheetLook): Chosen {
  if (!drill || drill.visual.length + drill.auditory.length + drill.run.length === 0) {
    return nothing();
  }
  const spec = { drill, taught: taught.correspondences, whom, day };
  return { pages: planSheet(spec, look), count: drill.run.length, notes: [] };
}

function board(
  { source }: Choices,
  { today, table, taught, sources }: SheetStock,
  look: SheetLook,
): Chosen {
  const lying = source === 'table' ? table : today;
  const shape = shapeById.get(lying?.shape ?? '');
  if (!lying || !shape) return nothing('There is no board here yet.');
  if (lying.piles.some((pile) => pile.length === 0)) {
    return nothing('This board has an empty pile. Put cards on it first.');
  }
  const judged = makeWordTable(shape, lying.piles, { ...sources, taught });
  const pages = boardSheet(boardWords(judged, sources.lexicon), look);
  return { pages, count: lying.piles.flat().length, notes: [] };
}

function words({ list, length }: Choices, stock: SheetStock, look: SheetLook): Chosen {
  const { practised, seed, listTitle, sources } = stock;
  const isFound = list === 'found';
  const texts = isFound
    ? wordsFound(length, stock)
    : homePractice(practised(), { seed, words: length, sentences: 0 }, sources).words.map(
        ({ text }) => text,
      );
  if (texts.length === 0) return nothing();
  const title = isFound ? listTitle : 'Words to read';
  const pages = wordsSheet({ title, below: '', words: texts }, look);
  return { pages, count: texts.length, notes: [] };
}

/** The first words or pairs of what she looked for that the word screen clears. */
function wordsFound(most: number, { wish, taught, sources }: SheetStock): readonly string[] {
  const texts: string[] = [];
  for (const entry of find(wish, taught, sources)) {
    if (texts.length === most) break;
    if (!isFitEntry(entry, wish.asked, sources)) continue;
    texts.push(entry.map((index) => asWritten(sources.lexicon.word(index))).join(' / '));
  }
  return texts;
}

function dictation(_: Choices, stock: SheetStock, look: SheetLook): Chosen {
  const made = stock.dictation();
  const count = made ? made.words.length + made.sentences.length : 0;
  if (!made || count === 0) return nothing();
  return { pages: dictationSheet(made, '', look), count, notes: noted(made.shortfall) };
}

/** How much home practice stands on a page: five minutes of it (common practice, no source). */
const HOME = { cards: 6, words: 12, sentences: 3 };

function home(_: Choices, { practised, seed, reader, sources }: SheetStock, look: SheetLook) {
  const known = practised();
  const { words, sentences } = homePractice(known, { ...HOME, seed }, sources);
  if (words.length === 0) return nothing(...noted(reader === '' ? null : notSure(reader)));
  const texts = (all: typeof words) => all.map(({ text }) => text);
  const spec = {
    cards: known.cards.slice(0, HOME.cards),
    words: texts(words),
    sentences: texts(sentences),
  };
  return { pages: homeSheet(spec, look), count: words.length, notes: [] };
}

function notSure(name: string): string {
  return `The sounds that ${name} is sure of, by what was noted, do not make words yet. A short check of letter sounds tells more; until then, print what the group practices.`;
}

function check(_: Choices, stock: SheetStock, look: SheetLook): Chosen {
  const { form, shortfall, name } = stock.form();
  const notes = noted(shortfall?.message ?? null);
  if (form.items.length === 0) return nothing(...notes);
  const pages = checkSheet(form, look, { form: name, reader: stock.reader });
  return { pages, count: form.items.length, notes };
}

function noted(text: string | null): readonly string[] {
  return text === null ? [] : [text];
}

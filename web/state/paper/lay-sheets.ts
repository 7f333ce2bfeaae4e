import { makeWordTable } from '../../../core/boards/judge/word-table.ts';
import { shapeById } from '../../../core/boards/shapes/shape-list.ts';
import { heardAlso } from '../../../core/dictation/heard-also.ts';
import { homePractice, type Practiced } from '../../../core/dictation/home-practice.ts';
import { boardSheet, boardWords } from '../../../print/sheets/board-sheet.ts';
import { checkSheet } from '../../../print/sheets/check-sheet.ts';
import { dictationSheet } from '../../../print/sheets/dictation-sheet.ts';
import { homeSheet } from '../../../print/sheets/home-sheet.ts';
import { planSheet } from '../../../print/sheets/plan-sheet.ts';
import type { SheetLook } from '../../../print/sheets/sheet-look.ts';
import { wordsSheet } from '../../../print/sheets/words-sheet.ts';
import { type LaidPaper, laidPages, nothingLaid } from './laid.ts';
import type { Choices } from './print-choices.ts';
import type { SheetKind } from './print-things.ts';
import type { Stock } from './stock.ts';

/** What each sheet is made of. */
interface Needed {
  readonly board: 'today' | 'table' | 'taught' | 'sources';
  readonly plan: 'drill' | 'taught' | 'whom' | 'day';
  readonly dictation: 'dictation' | 'sources';
  readonly words: 'toRead';
  readonly home: 'practiced' | 'each' | 'seed' | 'reader' | 'sources';
  readonly check: 'form' | 'reader';
}

/** What a sheet is made of. */
export type SheetStock<Kind extends SheetKind = SheetKind> = Pick<Stock, Needed[Kind]>;

/** The pages of a sheet. */
export function laySheet<Kind extends SheetKind>(
  kind: Kind,
  choices: Choices,
  stock: SheetStock<Kind>,
  look: SheetLook,
): LaidPaper {
  const lay: Layer<Kind> = layers[kind];
  return lay(choices, stock, look);
}

type Layer<Kind extends SheetKind> = (
  choices: Choices,
  stock: SheetStock<Kind>,
  look: SheetLook,
) => LaidPaper;

const layers: { readonly [Kind in SheetKind]: Layer<Kind> } = {
  board,
  plan,
  dictation,
  words,
  home,
  check,
};

function plan(
  _: Choices,
  { drill, taught, whom, day }: SheetStock<'plan'>,
  look: SheetLook,
): LaidPaper {
  if (!drill || drill.visual.length + drill.auditory.length + drill.run.length === 0) {
    return nothingLaid();
  }
  const named = printed(whom, look.typeface) || 'the class';
  const spec = { drill, taught: taught.correspondences, whom: named, day };
  return laidPages(planSheet(spec, look), drill.run.length);
}

function board(
  { source }: Choices,
  { today, table, taught, sources }: SheetStock<'board'>,
  look: SheetLook,
): LaidPaper {
  const lying = source === 'table' ? table : today;
  const shape = shapeById.get(lying?.shape ?? '');
  if (!lying || !shape) return nothingLaid('There is no board here yet.');
  if (lying.piles.some((pile) => pile.length === 0)) {
    return nothingLaid('This board has an empty pile. Put cards on it first.');
  }
  const judged = makeWordTable(shape, lying.piles, { ...sources, taught });
  const pages = boardSheet(boardWords(judged, sources.lexicon), look);
  return laidPages(pages, lying.piles.flat().length);
}

function words(choices: Choices, { toRead }: SheetStock<'words'>, look: SheetLook): LaidPaper {
  const { title, words } = toRead(choices);
  if (words.length === 0) return nothingLaid();
  return laidPages(wordsSheet({ title, below: '', words }, look), words.length);
}

function dictation(_: Choices, stock: SheetStock<'dictation'>, look: SheetLook): LaidPaper {
  const made = stock.dictation();
  const count = made ? made.words.length + made.sentences.length : 0;
  if (!made || count === 0) return nothingLaid();
  const { lexicon } = stock.sources;
  const onPaper = { ...made, heardAlso: (word: string) => heardAlso(word, lexicon) };
  return laidPages(dictationSheet(onPaper, '', look), count, noted(made.shortfall));
}

/** How much home practice stands on a page: five minutes of it (common practice, no source). */
const HOME = { cards: 6, words: 12, sentences: 3 };

function home(
  { language }: Choices,
  { practiced, each, seed, reader, sources }: SheetStock<'home'>,
  look: SheetLook,
): LaidPaper {
  const all = each();
  if (all.length === 0) {
    const one = homeOf(practiced(), '', { seed, sources, language }, look);
    return one ?? nothingLaid(...noted(reader === '' ? null : notSure(reader)));
  }
  const laid = all.map(({ name, practiced }) => ({
    name,
    page: homeOf(practiced, printed(name, look.typeface), { seed, sources, language }, look),
  }));
  const without = laid.filter(({ page }) => page === null).map(({ name }) => name);
  return laidPages(
    laid.flatMap(({ page }) => page?.pages ?? []),
    laid.reduce((sum, { page }) => sum + (page?.count ?? 0), 0),
    noted(without.length === 0 ? null : notSure(without.join(', '))),
  );
}

/** The page of one child or of a group; null where no words can be made of what is practiced. */
function homeOf(
  known: Practiced,
  reader: string,
  { seed, sources, language }: Pick<Stock, 'seed' | 'sources'> & Pick<Choices, 'language'>,
  look: SheetLook,
): LaidPaper | null {
  const { words, sentences } = homePractice(known, { ...HOME, seed }, sources);
  if (words.length === 0) return null;
  const texts = (all: typeof words) => all.map(({ text }) => text);
  const spec = {
    cards: known.cards.slice(0, HOME.cards),
    words: texts(words),
    sentences: texts(sentences),
    reader,
    language,
  };
  return laidPages(homeSheet(spec, look), words.length);
}

function notSure(name: string): string {
  return `What was noted of ${name} does not make words yet that can be read alone. A short check of letter sounds tells more; until then, print what the group practices.`;
}

function check(_: Choices, stock: SheetStock<'check'>, look: SheetLook): LaidPaper {
  const { form, shortfall, name } = stock.form();
  const notes = noted(shortfall?.message ?? null);
  if (form.items.length === 0) return nothingLaid(...notes);
  const reader = printed(stock.reader, look.typeface);
  return laidPages(checkSheet(form, look, { form: name, reader }), form.items.length, notes);
}

function noted(text: string | null): readonly string[] {
  return text === null ? [] : [text];
}

/** Her own text without what a typeface cannot print. */
function printed(
  text: string,
  typeface: { readonly missing: (text: string) => readonly string[] },
): string {
  const missing = new Set(typeface.missing(text));
  return [...text]
    .filter((character) => !missing.has(character))
    .join('')
    .trim();
}

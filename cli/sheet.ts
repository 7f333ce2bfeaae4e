import { CHECK_KINDS } from '../core/checks/check-form.ts';
import { makeForm } from '../core/checks/make-form.ts';
import { dictationFor } from '../core/dictation/dictation.ts';
import { heardAlso } from '../core/dictation/heard-also.ts';
import { SENTENCES } from '../core/dictation/sentences.ts';
import { soundStyleFor } from '../core/language/accent/sound-style.ts';
import { textHere } from '../core/language/accent/text-here.ts';
import { asWritten } from '../core/language/as-written.ts';
import { makePdf } from '../print/document.ts';
import { inks } from '../print/ink.ts';
import type { Page } from '../print/page.ts';
import { boardSheet, boardWords } from '../print/sheets/board-sheet.ts';
import { checkSheet } from '../print/sheets/check-sheet.ts';
import { dictationSheet } from '../print/sheets/dictation-sheet.ts';
import { homeSheet } from '../print/sheets/home-sheet.ts';
import { planSheet } from '../print/sheets/plan-sheet.ts';
import type { SheetLook } from '../print/sheets/sheet-look.ts';
import { wordsSheet } from '../print/sheets/words-sheet.ts';
import { BOARD_OPTIONS, readShape, readWishes, searchFor } from './board.ts';
import { DRILL_OPTIONS, readDrill } from './drill.ts';
import { type Here, loadHere, readNewest, readTaught } from './engine.ts';
import { fail } from './failure.ts';
import { type OptionKinds, readOptions, type Typed } from './options.ts';
import { loadTypeface, readOneOf, readOut, readPaper, writeOut } from './paper.ts';
import { readWords, WORD_OPTIONS } from './words.ts';

/** One sheet: the options it takes beside the common ones, its title and its pages. */
interface Kind {
  readonly title: string;
  readonly options: OptionKinds;
  readonly pages: (typed: Typed, here: Here, look: SheetLook) => readonly Page[];
}

const DICTATION_OPTIONS: OptionKinds = {
  taught: 'text',
  seed: 'text',
  words: 'text',
  sentences: 'text',
  accent: 'text',
};

const kinds = new Map<string, Kind>([
  ['plan', { title: 'Warm-up', options: { ...DRILL_OPTIONS, for: 'text' }, pages: plan }],
  ['board', { title: 'Board', options: { ...BOARD_OPTIONS }, pages: board }],
  ['words', { title: 'Words', options: { ...WORD_OPTIONS }, pages: words }],
  [
    'dictation',
    {
      title: 'Dictation',
      options: DICTATION_OPTIONS,
      pages: dictation,
    },
  ],
  [
    'home',
    {
      title: 'Home practice',
      options: DICTATION_OPTIONS,
      pages: home,
    },
  ],
  [
    'check',
    {
      title: 'Short check',
      options: { taught: 'text', seed: 'text', items: 'text', kind: 'text', accent: 'text' },
      pages: check,
    },
  ],
]);

/** `sheet KIND --taught T -o FILE.pdf`: a sheet for a teacher, a substitute, a child or a family. */
export async function sheet(args: readonly string[]): Promise<string> {
  const [name = '', ...rest] = args;
  const kind = kinds.get(name);
  if (!kind) {
    return fail(
      `Say which sheet: ${[...kinds.keys()].join(', ')}. For example: sheet plan --taught step:24 -o plan.pdf`,
    );
  }
  const common = { paper: 'text', grey: 'flag', out: 'text' } as const;
  const typed = readOptions(rest, { ...kind.options, ...common });
  if (typed.words.length > 0)
    fail(`sheet ${name} takes options only; “${typed.words[0]}” is none.`);
  const out = readOut(typed, `${name}.pdf`);
  const paper = readPaper(typed);
  const typeface = loadTypeface();
  const here = loadHere(typed);
  const look: SheetLook = {
    paper,
    typeface,
    inks: inks(typed.flag('grey')),
    style: soundStyleFor(here.accent, 'classroom'),
  };
  const pages = kind.pages(typed, here, look);
  writeOut(out, await makePdf({ title: kind.title, pages }, typeface));
  if (typed.flag('json')) {
    return JSON.stringify({ file: out, sheet: name, paper, pages: pages.length });
  }
  return `${pages.length === 1 ? '1 page' : `${pages.length} pages`}: ${out}`;
}

function plan(typed: Typed, here: Here, look: SheetLook): readonly Page[] {
  const taught = readTaught(typed.text('taught'), here);
  const drill = readDrill(typed, taught, here);
  if (drill.visual.length === 0) fail(drill.shortfall?.message ?? 'Nothing was taught yet.');
  const whom = typed.text('for') ?? 'the class';
  checkPrintable(whom, look);
  return planSheet({ drill, taught: taught.correspondences, whom, day: '' }, look);
}

/** Unlike on a screen nothing can be skipped on paper, so that the board is clean. */
function board(typed: Typed, here: Here, look: SheetLook): readonly Page[] {
  const shape = readShape(typed.text('shape') ?? 'syllable');
  const wishes = { ...readWishes(typed, shape), clean: true };
  const { found, lexicon } = searchFor(readTaught(typed.text('taught'), here), shape, wishes, here);
  return boardSheet(boardWords(found.table, lexicon), look);
}

/** So many words at most unless `--limit` says otherwise: two pages of them. */
const USUAL_WORDS = 60;
const MOST_WORDS = 2000;

function words(typed: Typed, here: Here, look: SheetLook): readonly Page[] {
  const { lexicon } = here;
  const found = readWords(typed, here).slice(0, typed.whole('limit', USUAL_WORDS, 1, MOST_WORDS));
  if (found.length === 0) fail('No such word can be read with what was taught. Ask for less.');
  const texts = found.map((index) => asWritten(lexicon.word(index)));
  return wordsSheet({ title: 'Words to read', below: '', words: texts }, look);
}

function dictation(typed: Typed, here: Here, look: SheetLook): readonly Page[] {
  const made = readDictation(typed, here, 6, 2);
  const onPaper = { ...made, heardAlso: (word: string) => heardAlso(word, here.lexicon) };
  return dictationSheet(onPaper, made.shortfall ?? '', look);
}

function home(typed: Typed, here: Here, look: SheetLook): readonly Page[] {
  const { words, sentences } = readDictation(typed, here, 12, 3);
  const taught = readTaught(typed.text('taught'), here);
  const newest = readNewest(typed.text('taught'));
  const drill = readDrill(typed, taught, here);
  const cards = [...new Set([...newest, ...drill.visual])].slice(0, HOME_CARDS);
  const texts = (all: typeof words) => all.map(({ text }) => text);
  return homeSheet({ cards, words: texts(words), sentences: texts(sentences) }, look);
}

/** Cards in one row of home practice. */
const HOME_CARDS = 6;

function readDictation(typed: Typed, here: Here, wordCount: number, sentenceCount: number) {
  const { accent, lexicon, screen } = here;
  const made = dictationFor(
    {
      taught: readTaught(typed.text('taught'), here),
      newest: readNewest(typed.text('taught')).map((id) => ({ kind: 'card', id })),
      seed: typed.whole('seed', 1, 0, Number.MAX_SAFE_INTEGER),
      words: typed.whole('words', wordCount, 0, 40),
      sentences: typed.whole('sentences', sentenceCount, 0, 16),
    },
    { lexicon, screen, sentences: SENTENCES.map((text) => textHere(text, accent)) },
  );
  if (made.words.length + made.sentences.length === 0) {
    fail('Too little was taught for words yet: about ten letters are enough.');
  }
  return made;
}

function check(typed: Typed, here: Here, look: SheetLook): readonly Page[] {
  const taught = readTaught(typed.text('taught'), here);
  const seed = typed.whole('seed', 1, 0, Number.MAX_SAFE_INTEGER);
  const kind = readOneOf(typed, 'kind', CHECK_KINDS, 'nonsense-words');
  const count = typed.whole('items', kind === 'nonsense-words' ? 30 : 60, 1, 300);
  const { form, shortfall } = makeForm(kind, { taught, ...here }, seed, count);
  if (form.items.length === 0) fail(shortfall?.message ?? 'Nothing was taught yet.');
  return checkSheet(form, look);
}

/** Ends the command when the typeface has no letter for a part of her own text. */
function checkPrintable(text: string, { typeface }: SheetLook): void {
  const [missing] = typeface.missing(text);
  if (missing) fail(`The letters on paper have no “${missing}”. Leave it out of “${text}”.`);
}

/**
 * Sheets and slides bypass the word screen no more than screens do: whatever was
 * taught, blocked or borne as a name, each word in letters that children read is
 * one that the class's own screen clears. The words are taken from the laid out
 * pages and slides, not from what these were made of.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findBoard } from '../core/boards/search/find-board.ts';
import { shapeById } from '../core/boards/shapes/shape-list.ts';
import type { Shape } from '../core/boards/shapes/shapes.ts';
import { cardsTaught } from '../core/boards/shapes/taught-cards.ts';
import { makeNonsenseForm } from '../core/checks/nonsense-form.ts';
import { dictationFor } from '../core/dictation/dictation.ts';
import { SENTENCES } from '../core/dictation/sentences.ts';
import { buildDrill } from '../core/drills/build-drill.ts';
import { guessReading } from '../core/language/guess.ts';
import type { Phoneme } from '../core/language/phonemes.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { soundedNames } from '../core/words/name-sounds.ts';
import type { WordScreen } from '../core/words/screen.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { decideWord, NO_RULES, screenForClass } from '../core/words/teacher-rules.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { readLetters } from '../print/glyphs.ts';
import { inks } from '../print/ink.ts';
import type { Page } from '../print/page.ts';
import { points } from '../print/paper.ts';
import { boardSheet, boardWords } from '../print/sheets/board-sheet.ts';
import { checkSheet } from '../print/sheets/check-sheet.ts';
import { dictationSheet } from '../print/sheets/dictation-sheet.ts';
import { homeSheet } from '../print/sheets/home-sheet.ts';
import { planSheet } from '../print/sheets/plan-sheet.ts';
import type { SheetLook } from '../print/sheets/sheet-look.ts';
import { runSlides } from '../print/slides.ts';
import { openTypeface } from '../print/typeface.ts';
import { ANDIKA } from '../print/typeface-files.ts';
import { laySheet } from '../web/state/paper/lay-sheets.ts';
import { type Choices, choices } from '../web/state/paper/print-choices.ts';
import { wordsToRead } from '../web/state/paper/words-to-read.ts';
import { ANY_WORD } from '../web/state/wish.ts';
import { builtLexicon as lexicon } from './built-lexicon.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const letters = readLetters(typeface.files.regular);
const look: SheetLook = { paper: 'letter', typeface, inks: inks(false), style: 'classroom' };
const plain = createWordScreen(SCREEN_DATA);

const steps = fc.integer({ min: 16, max: SEQUENCE.steps.length });
const seeds = fc.nat(2 ** 31 - 1);
const common = ['ran', 'sit', 'top', 'net', 'rip', 'lot', 'sad', 'man', 'bed', 'lip', 'rat', 'tin'];
const classes = fc
  .tuple(fc.subarray(common), fc.subarray([...common, 'Sid', 'Nan', 'Tess', 'Rob']))
  .map(([blocked, names]): WordScreen => {
    const rules = blocked.reduce((all, word) => decideWord(all, 'block', word), NO_RULES);
    return screenForClass(plain, rules, soundedNames(names, lexicon));
  });

/** Every way a printed word may be said: as listed, else as given, else by its letters. */
function waysToSay(word: string, given: ReadonlyMap<string, readonly Phoneme[]>) {
  const index = lexicon.indexOf(word);
  if (index >= 0) return lexicon.readings(index).map(({ sounds }) => sounds);
  return [given.get(word) ?? guessReading(word)?.sounds ?? []];
}

/** Words in letters of at least `least` mm, those of sentences one by one; headings are not for children. */
function wordsOn(pages: readonly Page[], least: number): readonly string[] {
  return pages.flatMap(({ marks }) =>
    marks.flatMap((mark) =>
      mark.kind === 'text' && mark.weight !== 'bold' && mark.size > least - 0.001
        ? (mark.text.toLowerCase().match(/[a-z]{2,}(?:['’][a-z]+)*/g) ?? [])
        : [],
    ),
  );
}

function expectClear(
  words: readonly string[],
  screen: WordScreen,
  given: ReadonlyMap<string, readonly Phoneme[]> = new Map(),
): number {
  for (const word of words) {
    for (const sounds of waysToSay(word, given)) {
      expect([word, screen.judge(word, sounds).verdict]).toEqual([word, 'clear']);
    }
  }
  return words.length;
}

test('a plan, its slides and their notes', () => {
  let shown = 0;
  fc.assert(
    fc.property(steps, classes, seeds, (step, screen, seed) => {
      const taught = taughtUpTo(SEQUENCE, step);
      const drill = buildDrill({ taught, seed, flips: 12 }, { lexicon, screen });
      const given = new Map(drill.run.map(({ word, sounds }) => [word, sounds]));
      const spec = { drill, taught: taught.correspondences, whom: 'all', day: '' };
      shown += expectClear(wordsOn(planSheet(spec, look), points(15)), screen, given);
      const { slides } = runSlides(
        {
          run: drill.run,
          piles: drill.board.piles.length,
          blending: 'whole',
          clicks: 'line',
          format: '16:9',
          style: 'classroom',
          meaningOf: () => null,
        },
        letters,
      );
      const noted = slides.flatMap(({ notes }) =>
        [...notes.matchAll(/: ([a-z]+): (?:real|nonsense) word/g)].map(
          ([, word]) => word as string,
        ),
      );
      expect(noted.length).toBeGreaterThanOrEqual(drill.run.length);
      const titles = slides.map(({ title }) => title.match(/^\d+ of \d+: (\w+)$/)?.[1]);
      expect(titles.filter(Boolean)).toEqual(drill.run.map(({ word }) => word));
      shown += expectClear(noted, screen, given);
    }),
    { numRuns: 12 },
  );
  expect(shown).toBeGreaterThan(300);
});

test('a board for paper', () => {
  let shown = 0;
  const shape = shapeById.get('closed') as Shape;
  fc.assert(
    fc.property(steps, classes, (step, screen) => {
      const taught = taughtUpTo(SEQUENCE, step);
      const context = { taught, lexicon, screen };
      const cards = cardsTaught(taught).filter((_, at) => at % 3 !== step % 3);
      const found = findBoard(shape, cards, { limits: [5, 3, 5], clean: true }, context);
      if (found.kind !== 'found') return;
      const pages = boardSheet(boardWords(found.table, lexicon), look);
      shown += expectClear(wordsOn(pages, points(12)), screen);
      expect(boardWords(found.table, lexicon).stopped).toBe(0);
    }),
    { numRuns: 8 },
  );
  expect(shown).toBeGreaterThan(200);
});

test('dictation, home practice and checks', () => {
  let shown = 0;
  fc.assert(
    fc.property(steps, classes, seeds, (step, screen, seed) => {
      const taught = taughtUpTo(SEQUENCE, step);
      const engine = { lexicon, screen };
      const spec = { taught, newest: [], seed, words: 10, sentences: 2 };
      const made = dictationFor(spec, { ...engine, sentences: SENTENCES });
      shown += expectClear(
        wordsOn(dictationSheet({ ...made, heardAlso: () => [] }, '', look), points(15)),
        screen,
      );
      const texts = (all: typeof made.words) => all.map(({ text }) => text);
      const home = { cards: [], words: texts(made.words), sentences: texts(made.sentences) };
      shown += expectClear(wordsOn(homeSheet(home, look), points(18)), screen);
      const { form } = makeNonsenseForm({ taught, ...engine }, seed, 10);
      const given = new Map(form.items.map(({ text, answers }) => [text, answers[0] ?? []]));
      shown += expectClear(wordsOn(checkSheet(form, look), points(18)), screen, given);
    }),
    { numRuns: 8 },
  );
  expect(shown).toBeGreaterThan(300);
});

test('word lists and home practice of the print screen', () => {
  let shown = 0;
  fc.assert(
    fc.property(steps, classes, seeds, (step, screen, seed) => {
      const taught = taughtUpTo(SEQUENCE, step);
      const practiced = () => ({ cards: [], alone: taught, together: taught, newest: [] });
      const sources = { lexicon, screen, sentences: SENTENCES };
      const parts = { taught, practiced, seed, wish: ANY_WORD, listTitle: 'Words', sources };
      const toRead = (choices: Choices) => wordsToRead(choices, parts);
      const stock = { toRead, practiced, each: () => [], seed, reader: '', sources };
      for (const [kind, list] of [
        ['words', 'new'],
        ['words', 'found'],
        ['home', 'new'],
      ] as const) {
        const { pages } = laySheet(kind, { ...choices.peek(), list }, stock, look);
        shown += expectClear(wordsOn(pages, points(18)), screen);
      }
    }),
    { numRuns: 8 },
  );
  expect(shown).toBeGreaterThan(300);
});

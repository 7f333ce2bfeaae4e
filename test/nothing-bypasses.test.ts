/**
 * Nothing shown to children bypasses the word screen: whatever was taught,
 * whatever the shape, the seed, the teacher's decisions and the children's
 * names, each surface of the engine shows only words that the class's own screen
 * clears. The judge here is the screen as the teacher's rules have it, asked
 * again from outside about every way a shown word may be said.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { board as boardCommand } from '../cli/board.ts';
import { drill as drillCommand } from '../cli/drill.ts';
import { words as wordsCommand } from '../cli/words.ts';
import { judgeWord } from '../core/boards/judge/judge.ts';
import { cardsAt } from '../core/boards/judge/word-table.ts';
import { findBoard } from '../core/boards/search/find-board.ts';
import { SHAPES } from '../core/boards/shapes/shape-list.ts';
import { shapesFor } from '../core/boards/shapes/shapes-for.ts';
import { cardsTaught } from '../core/boards/shapes/taught-cards.ts';
import { nextForm } from '../core/checks/next-form.ts';
import { dictationFor, fitDictation } from '../core/dictation/dictation.ts';
import { SENTENCES } from '../core/dictation/sentences.ts';
import { buildDrill } from '../core/drills/build-drill.ts';
import { flipChoices, reshuffleRun } from '../core/drills/edit-drill.ts';
import { mendRun } from '../core/drills/mend-run.ts';
import { isVowelCard } from '../core/language/correspondence.ts';
import type { Phoneme } from '../core/language/phonemes.ts';
import type { Taught } from '../core/language/taught.ts';
import { SEQUENCE } from '../core/sequence/built-in.ts';
import { taughtUpTo } from '../core/sequence/teach.ts';
import { soundedNames } from '../core/words/name-sounds.ts';
import type { WordScreen } from '../core/words/screen.ts';
import { SCREEN_DATA } from '../core/words/screen-data.ts';
import { decideSounds, decideWord, NO_RULES, screenForClass } from '../core/words/teacher-rules.ts';
import { createWordScreen } from '../core/words/word-screen.ts';
import { builtLexicon as lexicon } from './built-lexicon.ts';

const plain = createWordScreen(SCREEN_DATA);
const last = SEQUENCE.steps.length;

/** A place in the order with some cards taken out again. */
const taughts = fc
  .tuple(fc.integer({ min: 8, max: last }), fc.array(fc.nat(400), { maxLength: 6 }))
  .map(([step, drops]): Taught => {
    const taught = taughtUpTo(SEQUENCE, step);
    const ids = [...taught.correspondences];
    const out = new Set(drops.map((drop) => ids[drop % ids.length]));
    return { ...taught, correspondences: new Set(ids.filter((id) => !out.has(id))) };
  });

/** Words that boards make often: blocked, allowed, and borne as names, at random. */
const common = ['ran', 'sit', 'top', 'net', 'rip', 'lot', 'sad', 'man', 'bed', 'lip', 'rat', 'tin'];
const classes = fc
  .record({
    blocked: fc.subarray(common, { maxLength: 4 }),
    allowed: fc.subarray(['gun', 'fat', 'hell', 'kiss', 'dam'], { maxLength: 2 }),
    names: fc.subarray([...common, 'Sid', 'Nan', 'Tess', 'Rob'], { maxLength: 4 }),
    sound: fc.constantFrom<readonly Phoneme[]>(
      ['M', 'AE', 'T'],
      ['S', 'IH', 'P'],
      ['N', 'EH', 'T'],
    ),
  })
  .map(({ blocked, allowed, names, sound }): WordScreen => {
    const words = [
      ...blocked.map((word) => ['block', word] as const),
      ...allowed.map((word) => ['allow', word] as const),
    ];
    const rules = words.reduce((all, [choice, word]) => decideWord(all, choice, word), NO_RULES);
    return screenForClass(plain, decideSounds(rules, 'block', sound), soundedNames(names, lexicon));
  });
const seeds = fc.nat(2 ** 31 - 1);

function expectClear(
  shown: readonly { readonly word: string; readonly sounds: readonly Phoneme[] }[],
  screen: WordScreen,
): void {
  for (const { word, sounds } of shown) {
    expect(screen.judge(word, sounds).verdict, `${word} ${sounds.join(' ')}`).toBe('clear');
  }
}

/** Every way the word list says these words. */
function asListed(words: readonly string[]) {
  return words.flatMap((word) => {
    const index = lexicon.indexOf(word);
    return index < 0 ? [] : lexicon.readings(index).map(({ sounds }) => ({ word, sounds }));
  });
}

describe('nothing bypasses the word screen', () => {
  test('a drill of any shape, and every change to it', () => {
    let flips = 0;
    fc.assert(
      fc.property(taughts, classes, seeds, fc.nat(20), (taught, screen, seed, which) => {
        const engine = { lexicon, screen };
        const shapes = [undefined, ...shapesFor(taught)];
        const shape = shapes[which % shapes.length];
        const spec = { taught, seed, ...(shape ? { shape: shape.id } : {}) };
        const made = buildDrill(spec, engine);
        expectClear(made.run, screen);
        flips += made.run.length;
        const place = which % Math.max(1, made.run.length);
        expectClear(flipChoices(made, place, taught, engine), screen);
        const edited = reshuffleRun(made, taught, engine, { seed });
        if (edited.kind === 'changed') expectClear(edited.drill.run, screen);
        const early = buildDrill(spec, { lexicon, screen: plain });
        expectClear(mendRun(early, taught, engine).run, screen);
      }),
      { numRuns: 16 },
    );
    expect(flips).toBeGreaterThan(200);
  });

  test('a clean board: not one of its combinations', () => {
    let combinations = 0;
    fc.assert(
      fc.property(taughts, classes, fc.nat(SHAPES.length - 1), (taught, screen, which) => {
        const shapes = shapesFor(taught);
        const shape = shapes[which % Math.max(1, shapes.length)];
        if (!shape) return;
        const context = { taught, lexicon, screen };
        const limits = shape.piles.map(({ role }) => (role === 'vowel' ? 3 : 5));
        const all = cardsTaught(taught);
        const every = Math.max(1, Math.round(all.length / 40));
        const found = findBoard(
          shape,
          all.filter(
            (card, at) =>
              (shape.piles.length < 4 && isVowelCard(card)) || at % every === which % every,
          ),
          { limits, clean: true, nodeLimit: 20 },
          context,
        );
        if (found.kind !== 'found') return;
        found.table.words.forEach((_, index) => {
          const built = judgeWord(cardsAt(found.table, index), context, shape);
          expectClear([built], screen);
          combinations++;
        });
      }),
      { numRuns: 16 },
    );
    expect(combinations).toBeGreaterThan(200);
  });

  test('a dictation, its words and each word of its sentences', () => {
    let dictated = 0;
    fc.assert(
      fc.property(taughts, classes, seeds, (taught, screen, seed) => {
        const spec = { taught, newest: [], seed, words: 12, sentences: 4 };
        const made = dictationFor(spec, { lexicon, screen, sentences: SENTENCES });
        const early = dictationFor(spec, { lexicon, screen: plain, sentences: SENTENCES });
        const kept = fitDictation(early, { lexicon, screen });
        for (const { words, sentences } of [made, kept]) {
          const texts = [...words, ...sentences].map(({ text }) => text.toLowerCase());
          const shown = asListed(
            texts.flatMap((text) => text.match(/[a-z]+(?:['’][a-z]+)*/g) ?? []),
          );
          expectClear(shown, screen);
          dictated += shown.length;
        }
      }),
      { numRuns: 40 },
    );
    expect(dictated).toBeGreaterThan(800);
  });

  test('a short check of nonsense words, the first and the next', () => {
    let asked = 0;
    fc.assert(
      fc.property(taughts, classes, seeds, (taught, screen, seed) => {
        const context = { taught, lexicon, screen };
        const spec = { kind: 'nonsense-words', count: 20, child: `child ${seed}` } as const;
        const { form: first } = nextForm({ ...spec, own: [], all: [] }, context);
        const { form: next } = nextForm({ ...spec, own: [first], all: [first] }, context);
        const shown = [...first.items, ...next.items].flatMap(({ text, answers }) =>
          answers.map((sounds) => ({ word: text, sounds })),
        );
        expectClear(shown, screen);
        asked += shown.length;
      }),
      { numRuns: 6 },
    );
    expect(asked).toBeGreaterThan(100);
  });

  test('the terminal: words, drills and clean boards', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: last }), seeds, (step, seed) => {
        const taught = ['--taught', `step:${step}`];
        const found: readonly { word: string }[] = JSON.parse(
          wordsCommand([...taught, '--irregular', '--json']),
        );
        expectClear(asListed(found.map(({ word }) => word)), plain);
        const made = JSON.parse(drillCommand([...taught, '--seed', `${seed}`, '--json']));
        const run: readonly { word: string; sounds: string }[] = made.run;
        const shown = run.map(({ word, sounds }) => ({
          word,
          sounds: sounds.split(' ') as Phoneme[],
        }));
        expectClear(shown, plain);
        const limits = ['--begin', '6', '--end', '6', '--middle', '4', '--clean'];
        const best = JSON.parse(
          boardCommand([...taught, '--shape', 'closed', ...limits, '--json']),
        );
        expect(best.stopped).toBe(0);
      }),
      { numRuns: 6 },
    );
  });

  test('only words that the screen asks about come with --asked, and none that it stops', () => {
    const list = (more: readonly string[]): readonly string[] =>
      JSON.parse(
        wordsCommand(['--taught', `step:${SEQUENCE.steps.length}`, '--json', ...more]),
      ).map(({ word }: { word: string }) => word);
    const clear = new Set(list([]));
    const more = list(['--asked']).filter((word) => !clear.has(word));
    expect(more).toContain('gun');
    for (const word of more) {
      const verdicts = asListed([word]).map(({ sounds }) => plain.judge(word, sounds).verdict);
      expect(verdicts).toContain('ask');
      expect(verdicts).not.toContain('stop');
    }
  });
});
